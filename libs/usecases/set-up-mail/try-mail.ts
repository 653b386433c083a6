import { randomUUID } from 'node:crypto';
import type { MailTrial, MailTrialSent } from '../../contracts';
import { trialMail } from '../../papers';
import { done, refused, type Outcome } from '../outcome';
import type { OpenMailer } from '../ports/mail';
import type { Tables } from '../ports/store';
import { printSettingsOf } from '../print-papers';
import { mailInForce, namedServer, type MailSource } from './mail-in-force';

type TryingMail = MailSource & {
  readonly store: Pick<Tables, 'mailServer' | 'settings'>;
  readonly openMailer: OpenMailer;
};

/** Sends one letter through the server in force and answers what came of it; it is kept nowhere. */
export async function tryMail(source: TryingMail, { to }: MailTrial): Promise<Outcome<MailTrialSent>> {
  const server = await mailInForce(source);
  if (server === null) return refused('conflict', NO_MAIL_SERVER);
  const mailer = source.openMailer(server);
  try {
    const letter = trialMail(to, await printSettingsOf(source.store));
    const answer = await mailer.send({ ...letter, id: `trial-${randomUUID()}` });
    if (answer.kind === 'sent') return done({ to, from: server.from, server: namedServer(server) });
    return refused('conflict', answer.why);
  } finally {
    mailer.close();
  }
}

export const NO_MAIL_SERVER =
  'No mail server is set up: an administrator sets one up among the settings of the shop, or SMTP_URL and MAIL_FROM are set.';
