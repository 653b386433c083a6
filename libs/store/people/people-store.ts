import type { PeopleStore, PersonRecord, PersonRow } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { SECOND_FACTOR } from './second-factor-column';

type Columns = Omit<PersonRecord, 'linkUntil'> & { linkUntil: Date | null };

export function peopleStore(db: Db): PeopleStore {
  const read = async (where: Prisma.Sql): Promise<PersonRecord[]> => {
    const rows = await db.$queryRaw<Columns[]>`
      SELECT p.id, p.login, p.name, p.role, p.active, p.password_hash AS "passwordHash", p.version, ${SECOND_FACTOR}, p.reading AS "ownReading",
             (SELECT json_build_object('email', o.email, 'bound', o.subject IS NOT NULL)
              FROM outside_identity o WHERE o.person_id = p.id) AS elsewhere,
             i.expires_at AS "linkUntil", json_build_object('id', l.id, 'code', l.code, 'name', l.name) AS location
      FROM person p JOIN location l ON l.id = p.location_id LEFT JOIN invitation i ON i.person_id = p.id
      WHERE ${where} ORDER BY p.login`;
    return rows.map((row) => ({ ...row, linkUntil: row.linkUntil?.getTime() ?? null }));
  };
  return {
    alone: async () => void (await db.$executeRaw`SELECT pg_advisory_xact_lock(${PEOPLE_LOCK}::bigint)`),
    list: () => read(Prisma.sql`TRUE`),
    byId: async (id) => (await read(Prisma.sql`p.id = ${id}::int`))[0] ?? null,
    locations: () => db.$queryRaw<PersonRow['location'][]>`SELECT id, code, name FROM location ORDER BY code`,
    async addLocation(code, name) {
      const [row] = await db.$queryRaw<[{ id: number }]>`
        INSERT INTO location (code, name) VALUES (${code}, ${name}) RETURNING id`;
      return row.id;
    },
    async insert({ login, name, role, locationId }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO person (login, name, role, location_id) VALUES (${login}, ${name}, ${role}, ${locationId}::int)
        ON CONFLICT (login) DO NOTHING RETURNING id`;
      return rows[0]?.id ?? null;
    },
    async change(id, version, { name = null, role = null, locationId = null, active = null }) {
      const changed = await db.$executeRaw`
        UPDATE person SET name = coalesce(${name}::text, name), role = coalesce(${role}::text, role),
               location_id = coalesce(${locationId}::int, location_id), active = coalesce(${active}::boolean, active),
               version = version + 1
        WHERE id = ${id}::int AND version = ${version}::int`;
      return changed === 1;
    },
    async setPassword(id, hash) {
      await db.$executeRaw`
        UPDATE person SET password_hash = ${hash}, version = version + 1 WHERE id = ${id}::int`;
    },
    ...invitations(db),
    async endSessions(id, saveTokenHash) {
      await db.$executeRaw`
        WITH steps AS (DELETE FROM sign_in_step WHERE person_id = ${id}::int)
        DELETE FROM session WHERE person_id = ${id}::int AND token_hash IS DISTINCT FROM ${saveTokenHash}`;
    },
  };
}

function invitations(db: Db): Pick<PeopleStore, 'invite' | 'invitedBy' | 'takeInvitation'> {
  return {
    async invite(id, tokenHash, expiresAt) {
      await db.$executeRaw`
        INSERT INTO invitation (person_id, token_hash, expires_at)
        VALUES (${id}::int, ${tokenHash}, ${new Date(expiresAt)})
        ON CONFLICT (person_id) DO UPDATE SET token_hash = EXCLUDED.token_hash, expires_at = EXCLUDED.expires_at`;
    },
    async invitedBy(tokenHash, now) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT person_id AS id FROM invitation WHERE token_hash = ${tokenHash} AND expires_at > ${new Date(now)}`;
      return rows[0]?.id ?? null;
    },
    async takeInvitation(tokenHash, now) {
      const rows = await db.$queryRaw<{ id: number; expiresAt: Date }[]>`
        DELETE FROM invitation WHERE token_hash = ${tokenHash} RETURNING person_id AS id, expires_at AS "expiresAt"`;
      return rows[0] && rows[0].expiresAt.getTime() > now ? rows[0].id : null;
    },
  };
}

/** Any fixed number of its own. */
const PEOPLE_LOCK = 4_780_004;
