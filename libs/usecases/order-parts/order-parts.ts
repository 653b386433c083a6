import type { OrderList, PlaceOrders } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';
import { howMany } from './how-many';

/** What to order by supplier, and what is on its way. */
export async function viewToOrder({ store }: Ports, { locationId }: Actor): Promise<OrderList> {
  return orderList(store, locationId);
}

async function orderList(tables: Tables, locationId: number): Promise<OrderList> {
  const [lines, open] = await Promise.all([tables.orders.toOrder(locationId), tables.orders.open(locationId)]);
  return {
    lines: lines.map((line) => ({ ...line, order: howMany(line) })).filter(({ order }) => order > 0),
    open: [...open],
  };
}

/** Keeps what was ordered, so that it is not ordered twice and is expected. The order itself is placed by a person. */
export function placeOrders(
  { store }: Ports,
  { locationId, id: personId }: Actor,
  { lines, expectedOn }: PlaceOrders,
): Promise<Outcome<OrderList>> {
  return store.transaction(async (tx) => {
    const known = await Promise.all(lines.map(({ itemId }) => tx.shelf.item(locationId, itemId)));
    const missing = lines.find((_, i) => known[i] === null);
    if (missing) return refused('not-found', `There is no shelf item ${missing.itemId} at this location.`);
    await tx.orders.place(locationId, lines, expectedOn, personId);
    await tx.live.tell('shelf', null);
    return done(await orderList(tx, locationId));
  });
}

/** What was ordered will not come. */
export function cancelOrder(
  { store }: Ports,
  { locationId }: Actor,
  { id, version }: { id: number; version: number },
): Promise<Outcome<OrderList>> {
  return store.transaction(async (tx) => {
    const order = await tx.orders.find(locationId, id);
    if (!order) return refused('not-found', `There is no order ${id} at this location.`);
    if (order.state !== 'open') return refused('already-done', `Order ${id} is ${order.state} already.`);
    if (!(await tx.orders.cancel(id, version)))
      return refused('stale', `Order ${id} was changed meanwhile.`, { current: order });
    await tx.live.tell('shelf', order.itemId);
    return done(await orderList(tx, locationId));
  });
}
