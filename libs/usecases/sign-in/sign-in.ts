import type { Me, SignIn } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Passwords, PersonRow, Seals } from '../ports/index';
import type { Ports } from '../run';
import { takeCode } from '../second-factor/take-code';
import { meOf } from './me-of';
import type { SessionRules } from './session-rules';
import { hashOfToken, newToken } from './session-token';

/** A new sign-in: the token for the cookie, and who it stands for. */
export interface SignedIn {
  readonly step: 'in';
  readonly token: string;
  readonly me: Me;
}

/** The password was right, and a code of the second factor is asked for: the token to name with it. */
export interface CodeAsked {
  readonly step: 'code';
  readonly token: string;
}

type All = Ports & { readonly rules: SessionRules };

/** How long somebody may look for the code. */
const STEP_MS = 5 * 60_000;

/**
 * Signs a person in: a new session with a new token, or the second step where the person has a second factor. An
 * unknown login, a wrong password and a person who has left get the same answer after the same work.
 */
export async function signIn(
  all: All & { readonly passwords: Passwords },
  input: SignIn,
): Promise<Outcome<SignedIn | CodeAsked>> {
  const person = await all.store.sessions.personByLogin(input.login.trim().toLowerCase());
  const matches = await all.passwords.verify(person?.passwordHash ?? null, input.password);
  if (!person || !matches || !person.active) {
    return refused('not-allowed', 'Login and password do not go together; check both.');
  }
  return done(await enter(all, person));
}

/** Lets in somebody who has proved who they are, or asks for the code where there is a second factor. */
export async function enter(all: All, person: PersonRow): Promise<SignedIn | CodeAsked> {
  if (person.secondFactor !== 'on') return openSession(all, person);
  const { store, clock } = all;
  const token = newToken();
  await store.signInSteps.removeExpired(clock.now());
  await store.signInSteps.insert({
    tokenHash: hashOfToken(token),
    personId: person.id,
    expiresAt: clock.now() + STEP_MS,
  });
  return { step: 'code', token };
}

/** Whose password was right before this second step; null when that is unknown, too long ago, or the person has left. */
export async function personAtSecondStep({ store, clock }: Ports, token: string): Promise<PersonRow | null> {
  const id = await store.signInSteps.find(hashOfToken(token), clock.now());
  const person = id === null ? null : await store.people.byId(id);
  return person?.active ? person : null;
}

/** The second step: a code of the app, or a recovery code. The first step can be used until a code was right. */
export async function signInWithCode(
  all: All & { readonly seals: Seals },
  person: PersonRow,
  { token, code }: { readonly token: string; readonly code: string },
): Promise<Outcome<SignedIn>> {
  const { store, clock, seals } = all;
  if (!(await takeCode({ store, seals, now: clock.now() }, person, code)))
    return refused('not-allowed', 'The code is not right, or was used already; wait for the next one.');
  await store.signInSteps.remove(hashOfToken(token));
  return done(await openSession(all, person));
}

async function openSession({ store, clock, rules }: All, person: PersonRow): Promise<SignedIn> {
  const token = newToken();
  const at = clock.now();
  await store.sessions.removeExpired(at);
  await store.sessions.insert({
    tokenHash: hashOfToken(token),
    personId: person.id,
    at,
    expiresAt: at + rules.absoluteMs,
  });
  return { step: 'in', token, me: await meOf({ store }, person) };
}
