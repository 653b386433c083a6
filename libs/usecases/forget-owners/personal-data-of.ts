import type { PersonalData } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Everything that is kept of one person, to be handed over on request. */
export async function personalDataOf(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  ownerId: number,
): Promise<Outcome<PersonalData>> {
  const found = await store.transaction((tx) => tx.personal.of(ownerId, sightOf(actor)));
  return found ? done(found) : refused('not-found', `There is no owner ${ownerId}.`);
}
