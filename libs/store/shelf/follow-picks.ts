import type { Db } from '../db';

/**
 * One statement for whatever became of the ticket's picks: for each that took something from the shelf, the difference
 * between what its movements add up to and what its state asks for, as one movement. Asking twice moves nothing.
 */
export async function followPicks(db: Db, ticketId: number, personId: number | null): Promise<number[]> {
  const rows = await db.$queryRaw<{ partId: number }[]>`
    WITH so_far AS (
      SELECT m.pick_id, m.item_id, m.location_id, sum(m.pieces)::int AS pieces, sum(m.reserved)::int AS reserved
      FROM shelf_movement m WHERE m.ticket_id = ${ticketId} AND m.pick_id IS NOT NULL GROUP BY 1, 2, 3
    ),
    wanted AS (
      SELECT s.*, k.part_id, k.state,
             CASE WHEN k.state IN ('fitted', 'given') THEN -k.quantity ELSE 0 END AS pieces_now,
             CASE WHEN k.state = 'picked' THEN k.quantity ELSE 0 END AS reserved_now
      FROM so_far s JOIN pick k ON k.id = s.pick_id
    ),
    moved AS (
      INSERT INTO shelf_movement (item_id, location_id, kind, pieces, reserved, ticket_id, pick_id, person_id)
      SELECT item_id, location_id,
             CASE state WHEN 'fitted' THEN 'fit' WHEN 'given' THEN 'give' WHEN 'returned' THEN 'return' ELSE 'take-out' END,
             pieces_now - pieces, reserved_now - reserved, ${ticketId}, pick_id, ${personId}::int
      FROM wanted WHERE (pieces_now, reserved_now) <> (pieces, reserved)
      -- Items are held in one order by everybody, so that no two can wait for each other.
      ORDER BY item_id, pick_id
      RETURNING item_id, pieces - reserved AS freed
    )
    SELECT i.part_id AS "partId" FROM moved m JOIN shelf_item i ON i.id = m.item_id
    GROUP BY 1 HAVING sum(m.freed) > 0`;
  return rows.map(({ partId }) => partId);
}
