import type { Role, SignInRules } from '../../contracts';
import { ROLES_WITH_SECOND_FACTOR } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import { SECOND_FACTOR_REQUIRED, type PersonRow, type Tables } from '../ports/index';
import type { Ports } from '../run';

/** True when this shop asks a second factor of the role. */
export async function isRequiredOf(store: Pick<Tables, 'settings'>, role: Role): Promise<boolean> {
  return ROLES_WITH_SECOND_FACTOR.includes(role) && (await store.settings.read(SECOND_FACTOR_REQUIRED)) === true;
}

/** What the shop asks of a sign-in. */
export async function viewSignInRules({ store }: Pick<Ports, 'store'>): Promise<SignInRules> {
  return { secondFactorRequired: (await store.settings.read(SECOND_FACTOR_REQUIRED)) === true };
}

/**
 * Asks a second factor of managers and administrators, or no longer. Who asks it of others has one: whoever has none
 * can do nothing but add one from the next request on.
 */
export async function changeSignInRules(
  { store }: Ports,
  actor: Actor,
  person: PersonRow,
  { secondFactorRequired }: SignInRules,
): Promise<Outcome<SignInRules>> {
  if (secondFactorRequired && person.secondFactor !== 'on')
    return refused('conflict', 'Turn on your own second factor first, under My sign-in.');
  await store.transaction((tx) => tx.settings.write(SECOND_FACTOR_REQUIRED, secondFactorRequired, actor.id));
  return done({ secondFactorRequired });
}

/** Takes away the second factor of somebody who lost app and recovery codes, and ends that person's sign-ins. */
export async function resetSecondFactor({ store }: Ports, actor: Actor, id: number): Promise<Outcome<null>> {
  if (id === actor.id) return refused('conflict', 'Your own is turned off under My sign-in, with a code.');
  return store.transaction(async (tx) => {
    const person = await tx.people.byId(id);
    if (!person) return refused('not-found', `There is no person ${id}.`);
    if (!(await tx.secondFactors.remove(id))) return refused('already-done', `${person.name} has no second factor.`);
    await tx.people.endSessions(id, null);
    return done(null);
  });
}
