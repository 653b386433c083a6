import type { NewOwner, Owner, UnitRow } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

type Reading = Pick<Ports, 'store'>;

/** Changes what is known of an owner: address, phone, consent to be called. */
export async function changeOwner(
  { store }: Reading,
  _actor: Actor,
  { id, version, ...patch }: { id: number; version: number } & Partial<NewOwner>,
): Promise<Outcome<Owner>> {
  const changed = await store.transaction((tx) => tx.owners.change(id, version, patch));
  const owner = await store.owners.byId(id);
  if (!owner) return refused('not-found', `There is no owner ${id}.`);
  if (changed) return done(owner);
  return refused('stale', 'The owner was changed by somebody else meanwhile; look again.', { current: owner });
}

/** The units of one owner, as the counter tells them apart. */
export async function unitsOfOwner({ store }: Reading, id: number): Promise<Outcome<UnitRow[]>> {
  if (!(await store.owners.byId(id))) return refused('not-found', `There is no owner ${id}.`);
  return done([...(await store.owners.unitsOf(id))]);
}
