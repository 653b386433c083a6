import type { PersonElsewhere, PersonView } from '../../contracts';
import { personView } from '../manage-people/list-people';
import { personAsSeen, raiseVersion, type OnPerson } from '../manage-people/person-as-seen';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/**
 * Writes down as whom a person may sign in with another provider, in place of what was bound before; null takes it
 * away. Either ends the sign-ins of that person.
 */
export async function setElsewhere(
  { store, clock }: Ports,
  { id, version, email }: PersonElsewhere & OnPerson,
): Promise<Outcome<PersonView>> {
  return store.transaction(async (tx) => {
    const seen = await personAsSeen(tx, { id, version }, clock.now());
    if (!seen.ok) return seen;
    if (email === null) await tx.outsideIdentities.remove(id);
    else if (!(await tx.outsideIdentities.put(id, email)))
      return refused('conflict', `'${email}' is written down for somebody else.`, { field: 'email' });
    await tx.people.endSessions(id, null);
    await raiseVersion(tx, { id, version });
    return done(personView((await tx.people.byId(id))!, clock.now()));
  });
}
