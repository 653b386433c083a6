import type { ChangePerson, PersonView } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { PersonRecord, Tables } from '../ports/index';
import type { Ports } from '../run';
import { strangeLocation } from './add-person';
import { personView } from './list-people';

type Input = ChangePerson & { readonly id: number; readonly version: number };

/**
 * Changes name, role, location, or whether somebody works here. Who stops working here is signed out everywhere in the
 * same transaction. The last administrator can neither stop nor become anything else: nobody could undo it.
 */
export async function changePerson(
  { store, clock }: Ports,
  _actor: Actor,
  { id, version, ...patch }: Input,
): Promise<Outcome<PersonView>> {
  return store.transaction(async (tx) => {
    await tx.people.alone();
    const person = await tx.people.byId(id);
    if (!person) return refused('not-found', `There is no person ${id}.`);
    const refusal = await whyNot(tx, person, patch);
    if (refusal) return refusal;
    if (!(await tx.people.change(id, version, patch))) {
      const current = personView(person, clock.now());
      return refused('stale', `${person.name} was changed by somebody else meanwhile; look again.`, { current });
    }
    if (patch.active === false) await tx.people.endSessions(id, null);
    return done(personView((await tx.people.byId(id))!, clock.now()));
  });
}

async function whyNot(tx: Tables, person: PersonRecord, patch: ChangePerson): Promise<Outcome<never> | null> {
  if (patch.locationId !== undefined) {
    const strange = await strangeLocation(tx, patch.locationId);
    if (strange) return strange;
  }
  const stays = (patch.active ?? person.active) && (patch.role ?? person.role) === 'administrator';
  if (stays || !isAdministrator(person)) return null;
  const others = (await tx.people.list()).filter((one) => one.id !== person.id && isAdministrator(one));
  if (others.length > 0) return null;
  return refused('conflict', `${person.name} is the last administrator; make somebody else one first.`);
}

/** One who has yet to set a password does not count: the link may be lost. */
function isAdministrator({ active, role, passwordHash }: PersonRecord): boolean {
  return active && role === 'administrator' && passwordHash !== null;
}
