import { done, refused, type Outcome } from '../outcome';
import type { PersonRecord, Tables } from '../ports/index';
import { personView } from './list-people';

/** Which person a change is made on, and the version the administrator had before their eyes. */
export interface OnPerson {
  readonly id: number;
  readonly version: number;
}

/**
 * The person, when nothing about them has changed since; a stale version answers with how the person stands. No other
 * administrator changes anybody until the transaction ends. Whoever goes on raises the version.
 */
export async function personAsSeen(
  { people }: Pick<Tables, 'people'>,
  { id, version }: OnPerson,
  now: number,
): Promise<Outcome<PersonRecord>> {
  await people.alone();
  const person = await people.byId(id);
  if (!person) return refused('not-found', `There is no person ${id}.`);
  if (person.version === version) return done(person);
  const current = personView(person, now);
  return refused('stale', `${person.name} was changed by somebody else meanwhile; look again.`, { current });
}

/** What hangs on a person has changed: whoever saw them before has seen an older state. */
export async function raiseVersion({ people }: Pick<Tables, 'people'>, { id, version }: OnPerson): Promise<void> {
  await people.change(id, version, {});
}
