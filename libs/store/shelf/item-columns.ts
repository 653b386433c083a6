import { Prisma } from '../generated/client';

/** A part as `{ key, number, name }`, from table `p`. */
export const PART = Prisma.sql`jsonb_build_object('key', p.key, 'number', p.number, 'name', p.name)`;

/**
 * Tickets that hold pieces of item `i`: picked from the shelf and neither fitted nor returned. Only what lies on the
 * benches is read, not every movement there ever was.
 */
export const HOLDERS = Prisma.sql`COALESCE((
  SELECT jsonb_agg(jsonb_build_object('ticketId', h.id, 'ticket', h.number, 'pieces', h.pieces) ORDER BY h.id)
  FROM (SELECT t.id, t.number, sum(k.quantity)::int AS pieces
        FROM pick k JOIN ticket t ON t.id = k.ticket_id
        WHERE k.part_id = i.part_id AND k.state = 'picked' AND k.came_from = 'shelf' AND t.location_id = i.location_id
          AND EXISTS (SELECT FROM shelf_movement m WHERE m.ticket_id = k.ticket_id AND m.pick_id = k.id)
        GROUP BY t.id) h), '[]'::jsonb)`;

/** Pieces of item `i` that are ordered and not here yet. */
export const COMING = Prisma.sql`COALESCE((
  SELECT sum(greatest(r.pieces - r.received, 0))::int FROM shelf_order r WHERE r.item_id = i.id AND r.state = 'open'), 0)`;

export const EXPECTED_ON = Prisma.sql`(
  SELECT min(r.expected_on)::text FROM shelf_order r WHERE r.item_id = i.id AND r.state = 'open')`;

/** Bulletins about item `i` that nobody has seen to yet. */
export const TO_PULL = Prisma.sql`(
  SELECT count(*)::int FROM part_notice n JOIN source s ON s.id = n.source_id AND s.state = 'published'
  WHERE n.part_id = i.part_id AND i.on_hand > 0
    AND NOT EXISTS (SELECT FROM shelf_pull d WHERE d.notice_id = n.id AND d.item_id = i.id))`;

/** The columns of an item, and the tables they come from (i, p). */
export const ITEM = Prisma.sql`
  i.id, ${PART} AS part, i.bin, i.on_hand AS "onHand", i.reserved, i.on_hand - i.reserved AS free,
  i.reorder_point AS "reorderPoint", i.order_quantity AS "orderQuantity", i.supplier, i.pack_size AS "packSize",
  ${COMING} AS coming, ${EXPECTED_ON} AS "expectedOn",
  (SELECT count(*)::int FROM part_wait w
   WHERE w.location_id = i.location_id AND w.part_id = i.part_id AND w.ended_at IS NULL) AS waiting,
  ${TO_PULL} AS "toPull", i.version`;
export const ITEM_TABLES = Prisma.sql`shelf_item i JOIN part p ON p.id = i.part_id`;
