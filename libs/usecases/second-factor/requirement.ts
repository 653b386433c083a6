import type { Role, SettledSignInRules, SignInRules } from '../../contracts';
import { ROLES_WITH_SECOND_FACTOR } from '../../contracts';
import type { Actor } from '../actor';
import { personAsSeen, raiseVersion, type OnPerson } from '../manage-people/person-as-seen';
import { done, refused, type Outcome } from '../outcome';
import { SECOND_FACTOR_REQUIRED, type PersonRow, type Tables } from '../ports/index';
import type { Ports } from '../run';
import { settled } from '../settled';

/** True when this shop asks a second factor of the role. */
export async function isRequiredOf(store: Pick<Tables, 'settings'>, role: Role): Promise<boolean> {
  return ROLES_WITH_SECOND_FACTOR.includes(role) && (await store.settings.read(SECOND_FACTOR_REQUIRED)) === true;
}

/** What the shop asks of a sign-in. */
export function viewSignInRules({ store }: Pick<Ports, 'store'>): Promise<SettledSignInRules> {
  return settledRules(store);
}

/**
 * Asks a second factor of managers and administrators, or no longer. Who asks it of others has one: whoever has none
 * can do nothing but add one from the next request on.
 */
export async function changeSignInRules(
  { store }: Ports,
  actor: Actor,
  person: PersonRow,
  { version, secondFactorRequired }: SignInRules & { readonly version: number },
): Promise<Outcome<SettledSignInRules>> {
  if (secondFactorRequired && person.secondFactor !== 'on')
    return refused('conflict', 'Turn on your own second factor first, under My sign-in.');
  return store.transaction(async (tx) => {
    if (!(await tx.settings.claim([SECOND_FACTOR_REQUIRED], version)))
      return refused('stale', 'What a sign-in needs was changed by somebody else meanwhile; look again.', {
        current: await settledRules(tx),
      });
    await tx.settings.write(SECOND_FACTOR_REQUIRED, secondFactorRequired, actor.id);
    return done(await settledRules(tx));
  });
}

function settledRules(tables: Pick<Tables, 'settings'>): Promise<SettledSignInRules> {
  return settled(tables, [SECOND_FACTOR_REQUIRED], async () => ({
    secondFactorRequired: (await tables.settings.read(SECOND_FACTOR_REQUIRED)) === true,
  }));
}

/** Takes away the second factor of somebody who lost app and recovery codes, and ends that person's sign-ins. */
export async function resetSecondFactor(
  { store, clock }: Ports,
  actor: Actor,
  { id, version }: OnPerson,
): Promise<Outcome<null>> {
  if (id === actor.id) return refused('conflict', 'Your own is turned off under My sign-in, with a code.');
  return store.transaction(async (tx) => {
    const seen = await personAsSeen(tx, { id, version }, clock.now());
    if (!seen.ok) return seen;
    const { name } = seen.value;
    if (!(await tx.secondFactors.remove(id))) return refused('already-done', `${name} has no second factor.`);
    await tx.people.endSessions(id, null);
    await raiseVersion(tx, { id, version });
    return done(null);
  });
}
