import {
  may,
  scopesOf,
  type ApiTokenList,
  type ApiTokenMade,
  type ApiTokenView,
  type NewApiToken,
} from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { ApiTokenRow } from '../ports/index';
import type { Ports } from '../run';
import { hashOfToken, newToken } from '../sign-in/session-token';
import { stateOf } from './find-token';

const DAY_MS = 24 * 3_600_000;
/** Tells a token of this program from other secrets, where somebody looks for such in files. */
const MARK = 'rvr_';
/** So many characters stay visible: enough to tell two apart, and more than 200 bits of the rest stay unknown. */
const VISIBLE = MARK.length + 8;

/** A manager's own tokens, an administrator's all, with the scopes the asker may give. */
export async function listTokens({ store, clock }: Ports, actor: Actor): Promise<ApiTokenList> {
  const tokens = await store.apiTokens.list(may(actor.role, 'manage-all-tokens') ? null : actor.id);
  return { tokens: tokens.map((token) => viewOf(token, clock.now())), scopes: [...scopesOf(actor.role)] };
}

/** Makes a token that asks in the maker's name. Refused are scopes of which the maker may do nothing. */
export async function makeToken(
  { store, clock }: Ports,
  actor: Actor,
  { name, scopes, days }: NewApiToken,
): Promise<Outcome<ApiTokenMade>> {
  const mine = scopesOf(actor.role);
  const strange = scopes.find((scope) => !mine.includes(scope));
  if (strange) {
    const words = `scopes: ${actor.role}s can do nothing of '${strange}'; expected some of ${mine.join(', ')}.`;
    return refused('bad-input', words, { field: 'scopes' });
  }
  const token = MARK + newToken();
  const kept = { name, prefix: token.slice(0, VISIBLE), tokenHash: hashOfToken(token), scopes, personId: actor.id };
  return store.transaction(async (tx) => {
    const at = clock.now();
    const id = await tx.apiTokens.insert({ ...kept, at, expiresAt: at + days * DAY_MS });
    return done({ made: viewOf((await tx.apiTokens.byId(id))!, at), token });
  });
}

/** Revokes a token: from the next request on it opens nothing. A manager can revoke only those that manager made. */
export async function revokeToken({ store, clock }: Ports, actor: Actor, id: number): Promise<Outcome<ApiTokenView>> {
  return store.transaction(async (tx) => {
    const token = await tx.apiTokens.byId(id);
    if (!token || (!may(actor.role, 'manage-all-tokens') && token.person.id !== actor.id))
      return refused('not-found', `There is no token ${id} of yours.`);
    const at = clock.now();
    if (!(await tx.apiTokens.revoke(id, at)))
      return refused('already-done', `The token '${token.name}' is revoked already.`);
    return done(viewOf((await tx.apiTokens.byId(id))!, at));
  });
}

const text = (ms: number): string => new Date(ms).toISOString();

function viewOf(token: ApiTokenRow, now: number): ApiTokenView {
  const { id, name, prefix, scopes, person, createdAt, expiresAt, lastUsedAt } = token;
  return {
    id,
    name,
    prefix,
    scopes: [...scopes],
    madeBy: { id: person.id, name: person.name },
    createdAt: text(createdAt),
    expiresAt: text(expiresAt),
    lastUsedAt: lastUsedAt === null ? null : text(lastUsedAt),
    state: stateOf(token, now),
  };
}
