import type { PersonElsewhere, PersonView } from '../../contracts';
import { personView } from '../manage-people/list-people';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/**
 * Writes down as whom a person may sign in with another provider, in place of what was bound before; null takes it
 * away. Either ends the sign-ins of that person.
 */
export async function setElsewhere(
  { store, clock }: Ports,
  id: number,
  { email }: PersonElsewhere,
): Promise<Outcome<PersonView>> {
  return store.transaction(async (tx) => {
    await tx.people.alone();
    if (!(await tx.people.byId(id))) return refused('not-found', `There is no person ${id}.`);
    if (email === null) await tx.outsideIdentities.remove(id);
    else if (!(await tx.outsideIdentities.put(id, email)))
      return refused('conflict', `'${email}' is written down for somebody else.`, { field: 'email' });
    await tx.people.endSessions(id, null);
    return done(personView((await tx.people.byId(id))!, clock.now()));
  });
}
