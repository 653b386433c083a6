import type { KeptMailServer, MailServerStore } from '../../usecases';
import type { Db } from '../db';

/** The one row is there from the first settling on; while no server is settled its host is null. */
export function mailServerStore(db: Db): MailServerStore {
  return {
    async read() {
      const rows = await db.$queryRaw<(Omit<KeptMailServer, 'host'> & { host: string | null; version: number })[]>`
        SELECT host, port, security, login, sealed, sender_name AS "senderName", sender_address AS "senderAddress", version
        FROM mail_server`;
      if (!rows[0]) return { server: null, version: 1 };
      const { version, host, ...rest } = rows[0];
      return { server: host === null ? null : { host, ...rest }, version };
    },
    async write(server, version) {
      const { host = null, port = 25, security = 'none', login = '' } = server ?? {};
      const { sealed = null, senderName = '', senderAddress = '' } = server ?? {};
      const written = await db.$executeRaw`
        INSERT INTO mail_server (host, port, security, login, sealed, sender_name, sender_address, version)
        SELECT ${host}, ${port}::int, ${security}, ${login}, ${sealed}, ${senderName}, ${senderAddress}, 2
        WHERE ${version}::int = 1 OR EXISTS (SELECT FROM mail_server)
        ON CONFLICT (id) DO UPDATE
          SET host = EXCLUDED.host, port = EXCLUDED.port, security = EXCLUDED.security, login = EXCLUDED.login,
              sealed = EXCLUDED.sealed, sender_name = EXCLUDED.sender_name, sender_address = EXCLUDED.sender_address,
              version = mail_server.version + 1
          WHERE mail_server.version = ${version}::int`;
      return written === 1;
    },
    async reseal(was, sealed) {
      return (await db.$executeRaw`UPDATE mail_server SET sealed = ${sealed} WHERE sealed = ${was}`) === 1;
    },
  };
}
