import type { NewOwner, Owner, UnitRow } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

type Reading = Pick<Ports, 'store'>;

/** Changes what is known of an owner: address, phone, consent to be called. */
export async function changeOwner(
  { store }: Reading,
  actor: Actor,
  { id, version, ...patch }: { id: number; version: number } & Partial<NewOwner>,
): Promise<Outcome<Owner>> {
  return store.transaction(async (tx) => {
    const before = await tx.owners.byId(id, actor.locationId);
    if (!before) return noSuchOwner(id);
    if (await tx.owners.isErased(id)) return refused('conflict', sayErasedStays(id), { current: before });
    const changed = await tx.owners.change(id, version, patch);
    const owner = (await tx.owners.byId(id, actor.locationId)) ?? before;
    if (changed) return done(owner);
    return refused('stale', 'The owner was changed by somebody else meanwhile; look again.', { current: owner });
  });
}

/** The units of one owner, as the counter tells them apart. */
export async function unitsOfOwner({ store }: Reading, actor: Actor, id: number): Promise<Outcome<UnitRow[]>> {
  return store.transaction(async (tx) => {
    if (!(await tx.owners.byId(id, actor.locationId))) return noSuchOwner(id);
    return done([...(await tx.owners.unitsOf(id))]);
  });
}

/** An erased owner is filled with nobody's data again: the next visit is of a new owner. */
export const sayErasedStays = (id: number): string =>
  `What was known of owner ${id} was erased and is not written anew; take the person on as a new owner.`;

const noSuchOwner = (id: number) => refused('not-found', `There is no owner ${id} at this location.`);
