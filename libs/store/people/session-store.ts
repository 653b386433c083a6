import type { PersonRow, SessionStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { Together } from '../together';
import { SECOND_FACTOR } from './second-factor-column';

/** Columns of a `PersonRow`, of person `p` at location `l`. */
export const PERSON = Prisma.sql`
  p.id, p.login, p.name, p.role, p.active, p.password_hash AS "passwordHash", ${SECOND_FACTOR},
  p.reading AS "ownReading",
  json_build_object('id', l.id, 'code', l.code, 'name', l.name) AS location`;

type SessionColumns = PersonRow & { tokenHash: string; lastSeenAt: Date; expiresAt: Date };

export function sessionStore(db: Db): SessionStore {
  // Every request asks this first; those that come at once ask together.
  const sessions = new Together((hashes: readonly string[]) => findSessions(db, hashes));
  return {
    people: () => db.$queryRaw<PersonRow[]>`
      SELECT ${PERSON} FROM person p JOIN location l ON l.id = p.location_id WHERE p.active ORDER BY p.login`,
    async personByLogin(login) {
      const rows = await db.$queryRaw<PersonRow[]>`
        SELECT ${PERSON} FROM person p JOIN location l ON l.id = p.location_id WHERE p.login = ${login}`;
      return rows[0] ?? null;
    },
    async insert({ tokenHash, personId, at, expiresAt }) {
      await db.$executeRaw`
        INSERT INTO session (token_hash, person_id, created_at, last_seen_at, expires_at)
        VALUES (${tokenHash}, ${personId}, ${new Date(at)}, ${new Date(at)}, ${new Date(expiresAt)})`;
    },
    find: async (tokenHash) => (await sessions.of(tokenHash)) ?? null,
    async touch(tokenHash, at) {
      await db.$executeRaw`UPDATE session SET last_seen_at = ${new Date(at)} WHERE token_hash = ${tokenHash}`;
    },
    async remove(tokenHash) {
      await db.$executeRaw`DELETE FROM session WHERE token_hash = ${tokenHash}`;
    },
    async setReading(personId, reading) {
      const kept = reading === null ? null : JSON.stringify(reading);
      await db.$executeRaw`UPDATE person SET reading = ${kept}::jsonb WHERE id = ${personId}::int`;
    },
    async removeExpired(before) {
      await db.$executeRaw`DELETE FROM session WHERE expires_at < ${new Date(before)}`;
    },
  };
}

type Session = NonNullable<Awaited<ReturnType<SessionStore['find']>>>;

async function findSessions(db: Db, hashes: readonly string[]): Promise<ReadonlyMap<string, Session>> {
  const rows = await db.$queryRaw<SessionColumns[]>`
    SELECT ${PERSON}, s.token_hash AS "tokenHash", s.last_seen_at AS "lastSeenAt", s.expires_at AS "expiresAt"
    FROM session s JOIN person p ON p.id = s.person_id JOIN location l ON l.id = p.location_id
    WHERE s.token_hash = ANY(${[...hashes]}::text[])`;
  return new Map(
    rows.map(({ tokenHash, lastSeenAt, expiresAt, ...person }) => [
      tokenHash,
      { person, lastSeenAt: lastSeenAt.getTime(), expiresAt: expiresAt.getTime() },
    ]),
  );
}
