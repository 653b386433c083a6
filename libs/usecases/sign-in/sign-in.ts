import type { Me, SignIn } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Passwords } from '../ports/index';
import type { Ports } from '../run';
import { meOf } from './me-of';
import type { SessionRules } from './session-rules';
import { hashOfToken, newToken } from './session-token';

/**
 * Signs a person in: a new session with a new token. An unknown login, a wrong password and a person who has left
 * get the same answer after the same work.
 */
export async function signIn(
  { store, clock, passwords, rules }: Ports & { passwords: Passwords; rules: SessionRules },
  input: SignIn,
): Promise<Outcome<{ token: string; me: Me }>> {
  const person = await store.sessions.personByLogin(input.login.trim().toLowerCase());
  const matches = await passwords.verify(person?.passwordHash ?? null, input.password);
  if (!person || !matches || !person.active) {
    return refused('not-allowed', 'Login and password do not go together; check both.');
  }
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
