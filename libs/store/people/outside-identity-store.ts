import type { OutsideIdentityStore } from '../../usecases';
import type { Db } from '../db';

export function outsideIdentityStore(db: Db): OutsideIdentityStore {
  return {
    async personOf(issuer, subject) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT person_id AS id FROM outside_identity WHERE issuer = ${issuer} AND subject = ${subject}`;
      return rows[0]?.id ?? null;
    },
    async bind({ issuer, subject, email }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        UPDATE outside_identity SET issuer = ${issuer}, subject = ${subject}
        WHERE email = ${email} AND subject IS NULL RETURNING person_id AS id`;
      return rows[0]?.id ?? null;
    },
    async put(personId, email) {
      const put = await db.$executeRaw`
        INSERT INTO outside_identity (person_id, email)
        SELECT ${personId}::int, ${email}
        WHERE NOT EXISTS (SELECT FROM outside_identity WHERE email = ${email} AND person_id <> ${personId}::int)
        ON CONFLICT (person_id) DO UPDATE SET email = EXCLUDED.email, issuer = NULL, subject = NULL`;
      return put === 1;
    },
    async remove(personId) {
      await db.$executeRaw`DELETE FROM outside_identity WHERE person_id = ${personId}::int`;
    },
  };
}
