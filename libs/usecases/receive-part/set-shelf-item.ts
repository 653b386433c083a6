import type { SetShelfItem, ShelfItemDetail } from '../../contracts';
import type { Actor } from '../actor';
import { refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { viewShelfItem } from '../view-shelf/view-shelf-item';

/** Where a part lies, when it is ordered, how many at once and from whom. How many there are is no matter of this. */
export async function setShelfItem(
  ports: Ports,
  actor: Actor,
  { id, version, ...change }: SetShelfItem & { id: number; version: number },
): Promise<Outcome<ShelfItemDetail>> {
  const item = await ports.store.shelf.item(actor.locationId, id);
  if (!item) return refused('not-found', `There is no shelf item ${id} at this location.`);
  const kept = await ports.store.transaction(async (tx) => {
    const set = await tx.shelf.set(id, version, change);
    if (set) await tx.live.tell('shelf', id);
    return set;
  });
  const present = await viewShelfItem(ports, actor, id);
  if (kept || !present.ok) return present;
  return refused('stale', `${item.part.number} was changed by somebody else meanwhile; look at it again.`, {
    current: present.value,
  });
}
