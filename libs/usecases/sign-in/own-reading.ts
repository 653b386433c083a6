import type { Me, Reading } from '../../contracts';
import type { PersonRow } from '../ports/index';
import type { Ports } from '../run';
import { meOf } from './me-of';

/** Keeps how the person reads days, numbers, torques and lengths; null reads as the shop does. */
export async function chooseReading(
  { store }: Pick<Ports, 'store'>,
  person: PersonRow,
  ownReading: Reading | null,
): Promise<Me> {
  await store.transaction((tx) => tx.sessions.setReading(person.id, ownReading));
  return meOf({ store }, { ...person, ownReading });
}
