import type { ShelfHolder, ShelfItem, ShelfWord } from '../../contracts';
import type { HeldStock, MovementRow, SeenStock, ShelfStore } from '../../usecases';
import type { Db } from '../db';
import { iso } from '../tickets/iso';
import { followPicks } from './follow-picks';
import { COMING, EXPECTED_ON, HOLDERS, ITEM, ITEM_TABLES } from './item-columns';
import { listShelf } from './list-shelf';

export function shelfStore(db: Db): ShelfStore {
  return {
    hold: (locationId, partId) => hold(db, locationId, partId),
    stock: (locationId, partId) => readStock(db, locationId, partId),
    async holdOrMake(locationId, partId) {
      await db.$executeRaw`
        INSERT INTO shelf_item (location_id, part_id) VALUES (${locationId}, ${partId})
        ON CONFLICT (location_id, part_id) DO NOTHING`;
      return (await hold(db, locationId, partId))!;
    },
    addMovement: addMovement(db),
    followPicks: (ticketId, personId) => followPicks(db, ticketId, personId),
    holders: async (itemId) => {
      const rows = await db.$queryRaw<{ holders: ShelfHolder[] }[]>`
        SELECT ${HOLDERS} AS holders FROM shelf_item i WHERE i.id = ${itemId}`;
      return rows[0]?.holders ?? [];
    },
    list: (filter) => listShelf(db, filter),
    item: async (locationId, id) =>
      (
        await db.$queryRaw<ShelfItem[]>`
          SELECT ${ITEM} FROM ${ITEM_TABLES} WHERE i.id = ${id} AND i.location_id = ${locationId}`
      )[0] ?? null,
    itemOfPart: async (locationId, partId) =>
      (
        await db.$queryRaw<ShelfItem[]>`
          SELECT ${ITEM} FROM ${ITEM_TABLES} WHERE i.part_id = ${partId} AND i.location_id = ${locationId}`
      )[0] ?? null,
    movements: (itemId, limit) => readMovements(db, itemId, limit),
    set: setItem(db),
    words: (locationId, partKeys) => db.$queryRaw<ShelfWord[]>`
      SELECT p.key, i.on_hand - i.reserved AS free, i.on_hand AS "onHand", i.bin, ${EXPECTED_ON} AS "expectedOn",
             ${COMING} AS coming
      FROM ${ITEM_TABLES} WHERE i.location_id = ${locationId} AND p.key = ANY(${[...partKeys]}::text[])`,
  };
}

/** Whoever would take from the same item meanwhile waits, and then sees what is left. */
async function hold(db: Db, locationId: number, partId: number): Promise<HeldStock | null> {
  const rows = await db.$queryRaw<HeldStock[]>`
    SELECT id, part_id AS "partId", bin, on_hand AS "onHand", reserved, pack_size AS "packSize"
    FROM shelf_item WHERE location_id = ${locationId} AND part_id = ${partId} FOR NO KEY UPDATE`;
  return rows[0] ?? null;
}

/** Asked after the item is held, it sees the movements of whoever held it before. */
async function readStock(db: Db, locationId: number, partId: number): Promise<SeenStock | null> {
  const rows = await db.$queryRaw<SeenStock[]>`
    SELECT i.bin, i.on_hand AS "onHand", i.reserved,
           coalesce((SELECT max(m.id) FROM shelf_movement m WHERE m.item_id = i.id), 0) AS version
    FROM shelf_item i WHERE i.location_id = ${locationId} AND i.part_id = ${partId}`;
  return rows[0] ?? null;
}

const addMovement =
  (db: Db): ShelfStore['addMovement'] =>
  async ({ itemId, locationId, kind, pieces, reserved, personId, ...more }) => {
    const { packs = null, packSize = null, reason = '', ticketId = null, pickId = null, orderId = null } = more;
    await db.$executeRaw`
      INSERT INTO shelf_movement (item_id, location_id, kind, pieces, reserved, packs, pack_size, reason, ticket_id,
                                  pick_id, order_id, person_id)
      VALUES (${itemId}, ${locationId}, ${kind}, ${pieces}, ${reserved}, ${packs}::int, ${packSize}::int, ${reason},
              ${ticketId}::int, ${pickId}::int, ${orderId}::int, ${personId})`;
  };

function readMovements(db: Db, itemId: number, limit: number): Promise<MovementRow[]> {
  return db.$queryRaw<MovementRow[]>`
    SELECT m.id, ${iso('m.at')} AS at, w.name AS by, m.kind, m.pieces, m.reserved, m.packs, m.pack_size AS "packSize",
           m.reason, CASE WHEN t.id IS NOT NULL THEN jsonb_build_object('id', t.id, 'number', t.number) END AS ticket
    FROM shelf_movement m LEFT JOIN person w ON w.id = m.person_id LEFT JOIN ticket t ON t.id = m.ticket_id
    WHERE m.item_id = ${itemId} ORDER BY m.id DESC LIMIT ${limit}::int`;
}

const setItem =
  (db: Db): ShelfStore['set'] =>
  async (id, version, change) => {
    const given = JSON.stringify(change);
    const count = await db.$executeRaw`
      UPDATE shelf_item i SET
        bin = COALESCE(c.given->>'bin', i.bin),
        supplier = COALESCE(c.given->>'supplier', i.supplier),
        pack_size = COALESCE((c.given->>'packSize')::int, i.pack_size),
        reorder_point = CASE WHEN c.given ? 'reorderPoint' THEN (c.given->>'reorderPoint')::int ELSE i.reorder_point END,
        order_quantity = CASE WHEN c.given ? 'orderQuantity' THEN (c.given->>'orderQuantity')::int ELSE i.order_quantity END,
        version = i.version + 1
      FROM (SELECT ${given}::jsonb AS given) c
      WHERE i.id = ${id} AND i.version = ${version}`;
    return count === 1;
  };
