import type { ChangeMailServer, MailServerView, MailSetUp } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Store, Tables } from '../ports/store';
import type { KeptMailServer } from '../ports/mail-server-store';
import { ABOUT_MAIL_SERVER, mailInForce, namedServer, type MailSource } from './mail-in-force';

type SettlingMail = MailSource & { readonly store: Pick<Store, 'mailServer' | 'transaction'> };

/** The mail server as it is settled, and what the environment says instead; the password is told to nobody. */
export function viewMailServer(source: MailSource): Promise<MailServerView> {
  return viewOf(source.store, source);
}

/** Whether e-mails can be sent now, through which server and from whom. */
export async function viewMailSetUp(source: MailSource): Promise<MailSetUp> {
  const server = await mailInForce(source);
  return { server: server && namedServer(server), from: server?.from ?? null };
}

/**
 * Settles the mail server, or takes it away. A password that is left out stays, as long as it goes to the same host:
 * whoever may not read it shall not have it sent to a host of their own.
 */
export async function settleMailServer(
  source: SettlingMail,
  { server, version }: ChangeMailServer & { readonly version: number },
): Promise<Outcome<MailServerView>> {
  return source.store.transaction(async (tx) => {
    const { server: kept } = await tx.mailServer.read();
    if (server !== null && staysElsewhere(server, kept))
      return refused('bad-input', `server.password: type it anew for ${server.host}; it was kept for ${kept!.host}.`, {
        field: 'server.password',
      });
    if (!(await tx.mailServer.write(server && sealedServer(server, kept, source), version)))
      return refused('stale', 'The mail server was settled otherwise meanwhile; look again.', {
        current: await viewOf(tx, source),
      });
    return done(await viewOf(tx, source));
  });
}

type Wanted = NonNullable<ChangeMailServer['server']>;

/** Whether a kept password would go to another host than the one it was typed for. */
const staysElsewhere = ({ host, login, password }: Wanted, kept: KeptMailServer | null): boolean =>
  login !== '' && password === undefined && kept !== null && kept.sealed !== null && kept.host !== host;

function sealedServer(
  { password, ...wanted }: Wanted,
  kept: KeptMailServer | null,
  { seals }: MailSource,
): KeptMailServer {
  if (wanted.login === '') return { ...wanted, sealed: null };
  return {
    ...wanted,
    sealed: password === undefined ? (kept?.sealed ?? null) : seals.seal(password, ABOUT_MAIL_SERVER),
  };
}

async function viewOf(
  { mailServer }: Pick<Tables, 'mailServer'>,
  { seals, environment }: MailSource,
): Promise<MailServerView> {
  const { server, version } = await mailServer.read();
  const told = environment ? { server: namedServer(environment), from: environment.from } : null;
  if (server === null) return { server: null, environment: told, version };
  const { sealed, ...rest } = server;
  const opens = sealed !== null && seals.open(sealed, ABOUT_MAIL_SERVER) !== null;
  return {
    server: { ...rest, password: sealed === null ? 'none' : opens ? 'kept' : 'lost' },
    environment: told,
    version,
  };
}
