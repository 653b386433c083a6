import { formatDay } from '../../day';
import type { DemoShop } from '../../demo';
import type { Db } from '../db';
import { idsFor, insertRows } from './insert-rows';
import type { SeededIds } from './seed-tickets';

const ITEM_COLUMNS = {
  id: 'int',
  location_id: 'int',
  part_id: 'int',
  bin: 'text',
  reorder_point: 'int',
  order_quantity: 'int',
  supplier: 'text',
  pack_size: 'int',
};
const MOVEMENT_COLUMNS = {
  item_id: 'int',
  location_id: 'int',
  kind: 'text',
  pieces: 'int',
  packs: 'int',
  pack_size: 'int',
  reason: 'text',
  at: 'timestamptz',
  person_id: 'int',
};
/** The shelf was counted for the first time so many days ago; what came in since came ten days later. */
const COUNTED_DAYS_AGO = 40;

/** The shelves with their opening counts and some receipts, what open tickets took from them, and two orders. */
export async function seedShelf(db: Db, shop: DemoShop, { house, catalogue }: Omit<SeededIds, 'units'>): Promise<void> {
  const keyOf = ({ location, part }: DemoShop['shelf'][number]) => `${location} ${part}`;
  const ids = await idsFor(db, 'shelf_item', shop.shelf.map(keyOf));
  const at = (daysAgo: number) => `${formatDay(shop.today - daysAgo)}T08:00:00Z`;
  const items = shop.shelf.map((item) => ({
    id: ids.of(keyOf(item)),
    location_id: house.location.of(item.location),
    part_id: catalogue.part.of(item.part),
    bin: item.bin,
    reorder_point: item.reorderPoint,
    order_quantity: item.orderQuantity,
    supplier: item.supplier,
    pack_size: item.packSize,
  }));
  await insertRows(db, 'shelf_item', ITEM_COLUMNS, items);
  const movements = shop.shelf.flatMap((item, n) => {
    const about = { item_id: items[n]!.id, location_id: items[n]!.location_id, person_id: house.person.of('rosa') };
    const opening = {
      ...about,
      kind: 'opening',
      pieces: item.opening - item.received,
      reason: '',
      at: at(COUNTED_DAYS_AGO),
    };
    const packs = item.packSize > 1 ? { packs: item.received / item.packSize, pack_size: item.packSize } : {};
    const receipt = {
      ...about,
      kind: 'receive',
      pieces: item.received,
      ...packs,
      reason: '',
      at: at(COUNTED_DAYS_AGO - 10),
    };
    return item.received > 0 ? [opening, receipt] : [opening];
  });
  await insertRows(db, 'shelf_movement', MOVEMENT_COLUMNS, movements);
  await takeForOpenTickets(db);
  await orderTwo(db, house.person.of('rosa'), formatDay(shop.today + 4));
}

/** What open tickets picked is reserved; what of it is fitted already is gone. */
async function takeForOpenTickets(db: Db): Promise<void> {
  await db.$executeRaw`
    INSERT INTO shelf_movement (item_id, location_id, kind, pieces, reserved, ticket_id, pick_id, person_id, at)
    SELECT i.id, i.location_id, m.kind, m.pieces * k.quantity, m.reserved * k.quantity, t.id, k.id, k.picked_by, k.picked_at
    FROM ticket t
    JOIN pick k ON k.ticket_id = t.id AND k.state IN ('picked', 'fitted')
    JOIN shelf_item i ON i.location_id = t.location_id AND i.part_id = k.part_id
    CROSS JOIN (VALUES ('pick', 0, 1, 1), ('fit', -1, -1, 2)) m(kind, pieces, reserved, n)
    WHERE t.closed_at IS NULL AND (m.kind = 'pick' OR k.state = 'fitted')
    ORDER BY k.id, m.n`;
}

/** The two items that lack most are on their way. */
async function orderTwo(db: Db, personId: number, expectedOn: string): Promise<void> {
  await db.$executeRaw`
    INSERT INTO shelf_order (item_id, location_id, supplier, pieces, expected_on, ordered_by)
    SELECT id, location_id, supplier, order_quantity, ${expectedOn}::date, ${personId}
    FROM shelf_item WHERE on_hand - reserved <= reorder_point
    ORDER BY on_hand - reserved - reorder_point, id LIMIT 2`;
}
