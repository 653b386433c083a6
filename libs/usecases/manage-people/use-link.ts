import type { UseLink } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Passwords } from '../ports/index';
import type { Ports } from '../run';
import type { SessionRules } from '../sign-in/session-rules';
import { hashOfToken } from '../sign-in/session-token';
import { enter, type CodeAsked, type SignedIn } from '../sign-in/sign-in';
import { passwordProblem } from './password-rules';

type All = Ports & { passwords: Passwords; rules: SessionRules };

/**
 * Sets the password of the person a one-time link was made for, ends the sign-ins that person had, and signs in, with a
 * code where the person has a second factor. A
 * password that will not do leaves the link as it was, so that another can be tried.
 */
export async function useLink(all: All, { token, password }: UseLink): Promise<Outcome<SignedIn | CodeAsked>> {
  const { store, clock, passwords } = all;
  const tokenHash = hashOfToken(token);
  const person = await invitedBy(all, tokenHash);
  if (!person) return gone();
  const problem = await passwordProblem(password, { ...person, secondFactor: false });
  if (problem) return refused('bad-input', problem, { field: 'password' });
  const hash = await passwords.hash(password);
  const taken = await store.transaction(async (tx) => {
    const id = await tx.people.takeInvitation(tokenHash, clock.now());
    if (id === null) return false;
    await tx.people.setPassword(id, hash);
    await tx.people.endSessions(id, null);
    return true;
  });
  return taken ? done(await enter(all, person)) : gone();
}

const gone = () => refused('not-allowed', 'This link was used already or its time is over; ask for a new one.');

async function invitedBy({ store, clock }: All, tokenHash: string) {
  const id = await store.people.invitedBy(tokenHash, clock.now());
  const person = id === null ? null : await store.people.byId(id);
  return person?.active ? person : null;
}
