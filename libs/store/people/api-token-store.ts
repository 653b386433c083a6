import type { ApiTokenRow, ApiTokenStore, PersonRow } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { PERSON } from './session-store';

interface Columns extends PersonRow {
  tokenId: number;
  tokenName: string;
  prefix: string;
  scopes: ApiTokenRow['scopes'];
  createdAt: Date;
  expiresAt: Date;
  lastUsedAt: Date | null;
  revokedAt: Date | null;
}

const TOKEN = Prisma.sql`
  SELECT a.id AS "tokenId", a.name AS "tokenName", a.prefix, a.scopes, a.created_at AS "createdAt",
         a.expires_at AS "expiresAt", a.last_used_at AS "lastUsedAt", a.revoked_at AS "revokedAt", ${PERSON}
  FROM api_token a JOIN person p ON p.id = a.person_id JOIN location l ON l.id = p.location_id`;

export function apiTokenStore(db: Db): ApiTokenStore {
  return {
    async list(personId) {
      const rows = await db.$queryRaw<Columns[]>`
        ${TOKEN} WHERE ${personId}::int IS NULL OR a.person_id = ${personId}::int ORDER BY a.id DESC`;
      return rows.map(rowOf);
    },
    async byId(id) {
      const rows = await db.$queryRaw<Columns[]>`${TOKEN} WHERE a.id = ${id}::int`;
      return rows[0] ? rowOf(rows[0]) : null;
    },
    async byHash(tokenHash) {
      const rows = await db.$queryRaw<Columns[]>`${TOKEN} WHERE a.token_hash = ${tokenHash}`;
      return rows[0] ? rowOf(rows[0]) : null;
    },
    async insert({ name, prefix, tokenHash, scopes, personId, at, expiresAt }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO api_token (name, prefix, token_hash, scopes, person_id, created_at, expires_at)
        VALUES (${name}, ${prefix}, ${tokenHash}, ${[...scopes]}::text[], ${personId}::int, ${new Date(at)},
                ${new Date(expiresAt)})
        RETURNING id`;
      return rows[0]!.id;
    },
    async touch(id, at) {
      await db.$executeRaw`UPDATE api_token SET last_used_at = ${new Date(at)} WHERE id = ${id}::int`;
    },
    async revoke(id, at) {
      const revoked = await db.$executeRaw`
        UPDATE api_token SET revoked_at = ${new Date(at)} WHERE id = ${id}::int AND revoked_at IS NULL`;
      return revoked === 1;
    },
  };
}

function rowOf(columns: Columns): ApiTokenRow {
  const { tokenId, tokenName, prefix, scopes, createdAt, expiresAt, lastUsedAt, revokedAt, ...person } = columns;
  return {
    id: tokenId,
    name: tokenName,
    prefix,
    scopes,
    person,
    createdAt: createdAt.getTime(),
    expiresAt: expiresAt.getTime(),
    lastUsedAt: lastUsedAt?.getTime() ?? null,
    revokedAt: revokedAt?.getTime() ?? null,
  };
}
