import type { PersonRow } from '../ports/index';
import type { Ports } from '../run';
import type { SessionRules } from './session-rules';
import { hashOfToken } from './session-token';

/** Not every request is worth a write; the idle time is kept to this grain. */
const GRAIN_MS = 60_000;

/** The person a token stands for now, or null: unknown, idle too long, ended, or the person has left. */
export async function findSession(
  { store, clock, rules }: Ports & { rules: SessionRules },
  token: string,
): Promise<PersonRow | null> {
  const hash = hashOfToken(token);
  const session = await store.sessions.find(hash);
  if (!session) return null;
  const now = clock.now();
  if (now >= session.expiresAt || now - session.lastSeenAt >= rules.idleMs || !session.person.active) {
    await store.sessions.remove(hash);
    return null;
  }
  if (now - session.lastSeenAt >= Math.min(GRAIN_MS, rules.idleMs / 4)) await store.sessions.touch(hash, now);
  return session.person;
}

/** Ends a sign-in, and forgets what its person has begun to type; a token that stands for nobody is no mistake. */
export async function signOut({ store }: Pick<Ports, 'store'>, token: string): Promise<void> {
  const hash = hashOfToken(token);
  const session = await store.sessions.find(hash);
  if (session) await store.intakeDrafts.forget(session.person.id);
  await store.sessions.remove(hash);
}
