import type { ChangePassword } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Passwords, PersonRow } from '../ports/index';
import type { Ports } from '../run';
import { hashOfToken } from '../sign-in/session-token';
import { passwordProblem } from './password-rules';

/** Changes one's own password and ends every other sign-in of oneself; `token` is the present one's. */
export async function changeOwnPassword(
  { store, passwords }: Ports & { passwords: Passwords },
  person: PersonRow,
  { current, next, token }: ChangePassword & { readonly token: string },
): Promise<Outcome<null>> {
  if (!(await passwords.verify(person.passwordHash, current)))
    return refused('bad-input', 'The present password is not right.', { field: 'current' });
  const problem = await passwordProblem(next, { ...person, secondFactor: false });
  if (problem) return refused('bad-input', problem, { field: 'next' });
  const hash = await passwords.hash(next);
  await store.transaction(async (tx) => {
    await tx.people.setPassword(person.id, hash);
    await tx.people.endSessions(person.id, hashOfToken(token));
  });
  return done(null);
}

/** Ends every sign-in of a person, the present one too; no browser is known to the person, nothing begun is kept any more. */
export async function signOutEverywhere({ store }: Pick<Ports, 'store'>, personId: number): Promise<void> {
  await store.people.endSessions(personId, null);
  await store.devices.forgetAll(personId);
  await store.intakeDrafts.forget(personId);
}
