import type { ApiTokenView } from '../../contracts';
import type { ApiTokenRow } from '../ports/index';
import type { Ports } from '../run';
import { hashOfToken } from '../sign-in/session-token';

/** Not every request is worth a write; when a token was last used is kept to this grain. */
const GRAIN_MS = 60_000;

/** How a token stands at an instant, in epoch milliseconds. */
export function stateOf({ revokedAt, expiresAt, person }: ApiTokenRow, now: number): ApiTokenView['state'] {
  if (revokedAt !== null) return 'revoked';
  if (now >= expiresAt) return 'expired';
  return person.active ? 'good' : 'idle';
}

/**
 * The token that a program brings and how it stands now, or null when nobody made such a one. It stands for the person
 * who made it, with that person's role and location of this moment. A good one is noted as used, once a minute at most.
 */
export async function findToken(
  { store, clock }: Ports,
  token: string,
): Promise<{ readonly token: ApiTokenRow; readonly state: ApiTokenView['state'] } | null> {
  const row = await store.apiTokens.byHash(hashOfToken(token));
  if (!row) return null;
  const now = clock.now();
  const state = stateOf(row, now);
  if (state === 'good' && (row.lastUsedAt === null || now - row.lastUsedAt >= GRAIN_MS))
    await store.apiTokens.touch(row.id, now);
  return { token: row, state };
}
