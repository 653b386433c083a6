import type { RecoveryCodes, SecondFactorBegun, SecondFactorView } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { Passwords, PersonRow, Seals, Tables } from '../ports/index';
import type { Ports } from '../run';
import { isRequiredOf } from './requirement';
import { hashOfToken } from '../sign-in/session-token';
import { addressFor, newSecret, stepOf } from './one-time-code';
import { hashOfRecovery, newRecoveryCodes } from './recovery-codes';
import { aboutSecondFactor, takeCode } from './take-code';

type All = Ports & { readonly seals: Seals };
type WithPasswords = All & { readonly passwords: Passwords };

/** How one's own second factor stands. */
export async function viewSecondFactor({ store }: Pick<Ports, 'store'>, person: PersonRow): Promise<SecondFactorView> {
  const on = person.secondFactor === 'on';
  return {
    on,
    required: await isRequiredOf(store, person.role),
    recoveryLeft: on ? await store.secondFactors.recoveryLeft(person.id) : 0,
    hasPassword: person.passwordHash !== null,
  };
}

/** Makes a secret for an app, which counts for nothing until {@link turnOnSecondFactor} has seen a code of it. */
export async function beginSecondFactor(
  { store, seals, passwords }: WithPasswords,
  person: PersonRow,
  password: string,
): Promise<Outcome<SecondFactorBegun>> {
  if (!(await isOwnPassword(passwords, person, password))) return wrongPassword();
  const secret = newSecret();
  const begun = await store.secondFactors.begin(person.id, seals.seal(secret, aboutSecondFactor(person.id)));
  if (!begun)
    return refused('already-done', 'Your second factor is on already; turn it off before you set up another.');
  return done({ secret, address: addressFor(secret, person.login) });
}

/** Turns the second factor on with a first code, ends every other sign-in, and answers the recovery codes, once. */
export async function turnOnSecondFactor(
  { store, seals, clock }: All,
  person: PersonRow,
  { code, token }: { readonly code: string; readonly token: string },
): Promise<Outcome<RecoveryCodes>> {
  return store.transaction(async (tx) => {
    const factor = await tx.secondFactors.find(person.id);
    if (!factor) return refused('conflict', 'Nothing is set up yet that a code could turn on; begin again.');
    if (factor.on) return refused('already-done', 'Your second factor is on already.');
    const secret = seals.open(factor.sealed, aboutSecondFactor(person.id));
    if (secret === null) return refused('conflict', 'The key of this shop has changed meanwhile; begin again.');
    const step = stepOf(secret, code.replaceAll(/\s/g, ''), clock.now());
    if (step === null) return wrongCode();
    await tx.secondFactors.turnOn(person.id, step, clock.now());
    await tx.people.endSessions(person.id, hashOfToken(token));
    return done(await freshRecovery(tx, person.id));
  });
}

/** Makes new recovery codes in place of the old. */
export async function renewRecovery(
  { store, seals, clock }: All,
  person: PersonRow,
  code: string,
): Promise<Outcome<RecoveryCodes>> {
  if (!(await takeCode({ store, seals, now: clock.now() }, person, code))) return wrongCode();
  return done(await store.transaction((tx) => freshRecovery(tx, person.id)));
}

/** Turns one's own second factor off, with password and code; not where the shop requires one. */
export async function turnOffSecondFactor(
  { store, seals, passwords, clock }: WithPasswords,
  person: PersonRow,
  { password, code, token }: { readonly password: string; readonly code: string; readonly token: string },
): Promise<Outcome<null>> {
  if (await isRequiredOf(store, person.role))
    return refused('conflict', `This shop requires a second factor of a ${person.role}; it stays on.`);
  if (!(await isOwnPassword(passwords, person, password))) return wrongPassword();
  if (!(await takeCode({ store, seals, now: clock.now() }, person, code))) return wrongCode();
  await store.transaction(async (tx) => {
    await tx.secondFactors.remove(person.id);
    await tx.people.endSessions(person.id, hashOfToken(token));
  });
  return done(null);
}

/** Who signs in elsewhere may have no password here. */
async function isOwnPassword(passwords: Passwords, person: PersonRow, password: string): Promise<boolean> {
  return person.passwordHash === null || passwords.verify(person.passwordHash, password);
}

async function freshRecovery(tx: Tables, personId: number): Promise<RecoveryCodes> {
  const codes = newRecoveryCodes();
  await tx.secondFactors.setRecovery(personId, codes.map(hashOfRecovery));
  return { codes };
}

const wrongPassword = () => refused('bad-input', 'The password is not right.', { field: 'password' });
const wrongCode = () =>
  refused('bad-input', 'The code is not right, or was used already; wait for the next one.', { field: 'code' });
