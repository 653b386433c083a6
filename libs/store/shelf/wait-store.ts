import type { PartWaitView, ShelfHolder } from '../../contracts';
import type { WaitStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from '../tickets/iso';
import { PART } from './item-columns';

/** What a ticket waits for. */
export const waitsOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
  SELECT w.id, ${PART} AS part, o.code AS position, w.pieces, ${iso('w.since')} AS since, ${iso('w.woken_at')} AS "wokenAt"
  FROM part_wait w JOIN part p ON p.id = w.part_id LEFT JOIN position o ON o.id = w.position_id
  WHERE w.ticket_id = ${ticketId} AND w.ended_at IS NULL ORDER BY w.id`;

export function waitStore(db: Db): WaitStore {
  return {
    ofTicket: (ticketId) => db.$queryRaw<PartWaitView[]>(waitsOf(ticketId)),
    ofItem: (itemId) => db.$queryRaw<(ShelfHolder & { since: string; wokenAt: string | null })[]>`
      SELECT t.id AS "ticketId", t.number AS ticket, w.pieces, ${iso('w.since')} AS since, ${iso('w.woken_at')} AS "wokenAt"
      FROM shelf_item i
      JOIN part_wait w ON w.location_id = i.location_id AND w.part_id = i.part_id AND w.ended_at IS NULL
      JOIN ticket t ON t.id = w.ticket_id
      WHERE i.id = ${itemId} ORDER BY w.since, w.id`,
    async put(ticketId, { locationId, partId, positionId, pieces }, personId) {
      await db.$executeRaw`
        INSERT INTO part_wait (ticket_id, location_id, part_id, position_id, pieces, asked_by)
        VALUES (${ticketId}, ${locationId}, ${partId}, ${positionId}::int, ${pieces}, ${personId})
        ON CONFLICT (ticket_id, part_id) WHERE ended_at IS NULL
        DO UPDATE SET pieces = EXCLUDED.pieces, position_id = EXCLUDED.position_id, woken_at = NULL`;
    },
    async end(ticketId, id) {
      const count = await db.$executeRaw`
        UPDATE part_wait SET ended_at = now() WHERE id = ${id} AND ticket_id = ${ticketId} AND ended_at IS NULL`;
      return count === 1;
    },
    async endFor(ticketId, partIds) {
      const which = partIds === null ? Prisma.sql`TRUE` : Prisma.sql`part_id = ANY(${[...partIds]}::int[])`;
      await db.$executeRaw`
        UPDATE part_wait SET ended_at = now() WHERE ticket_id = ${ticketId} AND ended_at IS NULL AND ${which}`;
    },
    wake: wake(db),
  };
}

/** Pieces that somebody was woken for already are not promised a second time. */
const wake =
  (db: Db): WaitStore['wake'] =>
  (locationId, partIds) => db.$queryRaw`
    WITH asleep AS (
      SELECT w.id, i.bin, p.number AS part, t.number AS ticket,
             sum(w.pieces) OVER (PARTITION BY w.part_id ORDER BY w.since, w.id)
               <= i.on_hand - i.reserved - COALESCE((
                    SELECT sum(o.pieces) FROM part_wait o
                    WHERE o.location_id = w.location_id AND o.part_id = w.part_id AND o.ended_at IS NULL
                      AND o.woken_at IS NOT NULL), 0) AS enough
      FROM part_wait w
      JOIN shelf_item i ON i.location_id = w.location_id AND i.part_id = w.part_id
      JOIN part p ON p.id = w.part_id
      JOIN ticket t ON t.id = w.ticket_id
      WHERE w.location_id = ${locationId} AND w.part_id = ANY(${[...partIds]}::int[])
        AND w.ended_at IS NULL AND w.woken_at IS NULL
    )
    UPDATE part_wait w SET woken_at = now() FROM asleep a WHERE w.id = a.id AND a.enough
    RETURNING w.ticket_id AS "ticketId", a.ticket, a.part, w.pieces, a.bin`;
