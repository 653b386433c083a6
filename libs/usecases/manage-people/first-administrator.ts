import type { Ports } from '../run';
import { invite, type OneTimeLink } from './invite';

/** Sign-in name of the one the first start makes. */
export const FIRST_LOGIN = 'administrator';

/**
 * A shop into which nobody can sign in gets one administrator and a one-time link to set that one's password; null
 * when somebody can. Called at every start, so a link that was lost or has expired is replaced by starting again.
 */
export async function firstAdministrator({ store, clock }: Ports): Promise<OneTimeLink | null> {
  return store.transaction(async (tx) => {
    await tx.people.alone();
    const people = await tx.people.list();
    if (people.some(({ passwordHash }) => passwordHash !== null)) return null;
    const known = people.find(({ role, active }) => active && role === 'administrator');
    if (known) return invite(tx, known.id, clock.now());
    const locationId = (await tx.people.locations())[0]?.id ?? (await tx.people.addLocation('MAIN', 'Main shop'));
    const id = await tx.people.insert({
      login: FIRST_LOGIN,
      name: 'Administrator',
      role: 'administrator',
      locationId,
    });
    return id === null ? null : invite(tx, id, clock.now());
  });
}
