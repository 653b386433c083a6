import type { Me, SignIn } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Passwords, PersonRow } from '../ports/index';
import type { Ports } from '../run';
import { meOf } from './me-of';
import type { SessionRules } from './session-rules';
import { hashOfToken, newToken } from './session-token';

/** A new sign-in: the token for the cookie, and who it stands for. */
export interface SignedIn {
  readonly token: string;
  readonly me: Me;
}

/**
 * Signs a person in: a new session with a new token. An unknown login, a wrong password and a person who has left
 * get the same answer after the same work.
 */
export async function signIn(
  all: Ports & { passwords: Passwords; rules: SessionRules },
  input: SignIn,
): Promise<Outcome<SignedIn>> {
  const person = await all.store.sessions.personByLogin(input.login.trim().toLowerCase());
  const matches = await all.passwords.verify(person?.passwordHash ?? null, input.password);
  if (!person || !matches || !person.active) {
    return refused('not-allowed', 'Login and password do not go together; check both.');
  }
  return openSession(all, person);
}

/** Opens a session for somebody who has proved who they are. */
export async function openSession(
  { store, clock, rules }: Ports & { rules: SessionRules },
  person: PersonRow,
): Promise<Outcome<SignedIn>> {
  const token = newToken();
  const at = clock.now();
  await store.sessions.removeExpired(at);
  await store.sessions.insert({
    tokenHash: hashOfToken(token),
    personId: person.id,
    at,
    expiresAt: at + rules.absoluteMs,
  });
  return done({ token, me: meOf(person) });
}
