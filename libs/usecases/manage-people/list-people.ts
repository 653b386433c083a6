import type { PeopleList, PersonView } from '../../contracts';
import type { PersonRecord } from '../ports/index';
import type { Ports } from '../run';

/** Everybody who works or has worked here, and the locations they can work at. */
export async function listPeople({ store, clock }: Ports): Promise<PeopleList> {
  const [people, locations] = [await store.people.list(), await store.people.locations()];
  return { people: people.map((person) => personView(person, clock.now())), locations: [...locations] };
}

/** What an administrator sees of a person; a link whose time is over counts as none. */
export function personView(person: PersonRecord, now: number): PersonView {
  const { id, login, name, role, location, active, passwordHash, secondFactor, elsewhere, linkUntil, version } = person;
  const open = linkUntil !== null && linkUntil > now;
  return {
    id,
    login,
    name,
    role,
    location,
    active,
    hasPassword: passwordHash !== null,
    hasSecondFactor: secondFactor === 'on',
    elsewhere,
    linkUntil: open ? new Date(linkUntil).toISOString() : null,
    version,
  };
}
