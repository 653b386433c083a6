import type { ShelfItemDetail } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { pullViews } from './list-pulls';
import { sayMovement } from './say-movement';

const MOST_MOVEMENTS = 200;

/** One part on the shelf with who holds it, who waits, what is coming, what bulletins say, and its newest movements. */
export async function viewShelfItem(
  { store }: Ports,
  { locationId }: Actor,
  id: number,
): Promise<Outcome<ShelfItemDetail>> {
  const item = await store.shelf.item(locationId, id);
  if (!item) return refused('not-found', `There is no shelf item ${id} at this location.`);
  const [holders, waits, orders, pulls, movements] = await Promise.all([
    store.shelf.holders(id),
    store.waits.ofItem(id),
    store.orders.ofItem(id),
    store.notices.pulls({ locationId, itemId: id }),
    store.shelf.movements(id, MOST_MOVEMENTS),
  ]);
  return done({
    ...item,
    holders: [...holders],
    waits: [...waits],
    orders: [...orders],
    pulls: pullViews(pulls),
    movements: movements.map((row) => {
      const { id: movementId, at, by, kind, pieces, reserved, ticket } = row;
      return { id: movementId, at, by, kind, pieces, reserved, ticket, sentence: sayMovement(row) };
    }),
  });
}
