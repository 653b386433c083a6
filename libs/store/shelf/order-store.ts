import type { ShelfOrder } from '../../contracts';
import type { OrderStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { iso } from '../tickets/iso';
import { COMING, PART } from './item-columns';

const ORDER = Prisma.sql`
  SELECT r.id, r.item_id AS "itemId", ${PART} AS part, r.supplier, r.pieces, r.received,
         r.expected_on::text AS "expectedOn", r.state, ${iso('r.ordered_at')} AS "orderedAt", w.name AS "orderedBy", r.version
  FROM shelf_order r JOIN shelf_item i ON i.id = r.item_id JOIN part p ON p.id = i.part_id
  LEFT JOIN person w ON w.id = r.ordered_by`;

export function orderStore(db: Db): OrderStore {
  return {
    toOrder: (locationId) => readToOrder(db, locationId),
    ofItem: (itemId) => db.$queryRaw<ShelfOrder[]>`${ORDER} WHERE r.item_id = ${itemId} ORDER BY r.id DESC LIMIT 20`,
    open: (locationId) => db.$queryRaw<ShelfOrder[]>`
      ${ORDER} WHERE r.location_id = ${locationId} AND r.state = 'open' ORDER BY r.expected_on NULLS LAST, r.id LIMIT 500`,
    find: async (locationId, id) =>
      (await db.$queryRaw<ShelfOrder[]>`${ORDER} WHERE r.id = ${id} AND r.location_id = ${locationId}`)[0] ?? null,
    place: (locationId, orders, expectedOn, personId) => db.$executeRaw`
      INSERT INTO shelf_order (item_id, location_id, supplier, pieces, expected_on, ordered_by)
      SELECT i.id, i.location_id, i.supplier, n.pieces, ${expectedOn}::date, ${personId}
      FROM jsonb_to_recordset(${JSON.stringify(orders)}::jsonb) AS n("itemId" int, pieces int)
      JOIN shelf_item i ON i.id = n."itemId" AND i.location_id = ${locationId}`,
    receive: receive(db),
    async cancel(id, version) {
      const count = await db.$executeRaw`
        UPDATE shelf_order SET state = 'cancelled', version = version + 1
        WHERE id = ${id} AND version = ${version} AND state = 'open'`;
      return count === 1;
    },
  };
}

function readToOrder(db: Db, locationId: number): ReturnType<OrderStore['toOrder']> {
  return db.$queryRaw`
    SELECT * FROM (
      SELECT i.id AS "itemId", ${PART} AS part, i.supplier, i.bin, i.on_hand - i.reserved AS free, ${COMING} AS coming,
             i.reorder_point AS "reorderPoint", i.order_quantity AS "orderQuantity", i.pack_size AS "packSize",
             COALESCE((SELECT sum(w.pieces)::int FROM part_wait w
                       WHERE w.location_id = i.location_id AND w.part_id = i.part_id AND w.ended_at IS NULL), 0) AS waited
      FROM shelf_item i JOIN part p ON p.id = i.part_id WHERE i.location_id = ${locationId}
    ) o
    WHERE (o."reorderPoint" IS NOT NULL AND o.free + o.coming - o.waited <= o."reorderPoint")
       OR o.waited > o.free + o.coming
    ORDER BY o.supplier = '', o.supplier, o.part->>'number' LIMIT 500`;
}

/** Each order takes what it still lacks, the oldest first. */
const receive =
  (db: Db): OrderStore['receive'] =>
  async (itemId, orderId, pieces) => {
    await db.$executeRaw`
      WITH lacking AS (
        SELECT id, pieces - received AS lacks, sum(pieces - received) OVER (ORDER BY ordered_at, id) AS upto
        FROM shelf_order
        WHERE item_id = ${itemId} AND state = 'open' AND (${orderId}::int IS NULL OR id = ${orderId}::int)
      )
      UPDATE shelf_order r
      SET received = r.received + t.takes, version = r.version + 1,
          state = CASE WHEN r.received + t.takes >= r.pieces THEN 'received' ELSE 'open' END
      FROM (SELECT id, least(lacks, greatest(0, ${pieces}::int - (upto - lacks)))::int AS takes FROM lacking) t
      WHERE r.id = t.id AND t.takes > 0`;
  };
