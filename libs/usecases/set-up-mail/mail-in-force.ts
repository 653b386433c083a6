import type { MailServer } from '../ports/mail';
import type { KeptMailServer } from '../ports/mail-server-store';
import type { Seals } from '../ports/seals';
import type { Tables } from '../ports/store';

/** What the password of the mail server is sealed as being about. */
export const ABOUT_MAIL_SERVER = 'mail server';

/** What is needed to know through which server e-mails go now. */
export interface MailSource {
  readonly store: Pick<Tables, 'mailServer'>;
  readonly seals: Seals;
  /** What the environment of the program says; it goes before what the shop has settled. */
  readonly environment: MailServer | undefined;
}

/**
 * The server through which e-mails go now: the environment's, else the one the shop has settled; null where there is
 * none, or where its password is under a seal that no key of today opens.
 */
export async function mailInForce({ store, seals, environment }: MailSource): Promise<MailServer | null> {
  if (environment !== undefined) return environment;
  const { server } = await store.mailServer.read();
  if (server === null) return null;
  const { host, port, security, login, sealed } = server;
  const password = sealed === null ? '' : seals.open(sealed, ABOUT_MAIL_SERVER);
  if (password === null) return null;
  return { host, port, security, login, password, from: senderOf(server) };
}

/** As a mail names its sender. */
export function senderOf({ senderName, senderAddress }: KeptMailServer): string {
  return senderName === '' ? senderAddress : `${senderName} <${senderAddress}>`;
}

/** How a server is named to people: its host, with its port; never with a name or a password. */
export function namedServer(server: MailServer): string {
  return 'url' in server ? new URL(server.url).host : `${server.host}:${server.port}`;
}
