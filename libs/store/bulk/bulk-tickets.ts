import type { BulkStore, BulkTicket } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { takeIds } from '../take-ids';
import { refreshMany } from '../units/refresh-installs';
import { withIds } from './bulk-owners';

export function ticketActions(
  db: Db,
  zone: string,
): Pick<BulkStore, 'ticketsByNumbers' | 'insertTickets' | 'pageOfTickets'> {
  return {
    ticketsByNumbers: (numbers) => readTickets(db, zone, Prisma.sql`t.number = ANY(${[...numbers]}::text[])`, null),
    pageOfTickets: (afterId, limit, locationId) =>
      readTickets(
        db,
        zone,
        Prisma.sql`t.closed_at IS NOT NULL AND t.id > ${afterId}::int
          AND (${locationId}::int IS NULL OR t.location_id = ${locationId}::int)`,
        limit,
      ),
    async insertTickets(rows, personId) {
      if (rows.length === 0) return;
      const ids = await takeIds(db, 'ticket', rows.length);
      const text = withIds(rows, ids);
      await db.$executeRaw`
        INSERT INTO ticket (id, number, location_id, unit_id, owner_id, stage, complaint, opened_at, closed_at,
                            handed_over, cancel_reason)
        SELECT r.id, r.number, o.location_id, u.id, o.id, 'handover', r.complaint, ${noon('opened', zone)},
               ${noon('closed', zone)}, r.cancelled IS NULL, r.cancelled
        FROM jsonb_to_recordset(${text}::jsonb)
          AS r(id int, number text, "unitId" int, opened date, closed date, complaint text, cancelled text)
        JOIN unit u ON u.id = r."unitId" JOIN owner o ON o.id = u.owner_id`;
      await insertRecords(db, text, zone);
      await db.$executeRaw`
        INSERT INTO ticket_event (ticket_id, at, person_id, kind, data)
        SELECT r.id, now(), ${personId}::int, 'brought-in', jsonb_build_object('opened', r.opened, 'closed', r.closed)
        FROM jsonb_to_recordset(${text}::jsonb) AS r(id int, opened date, closed date)`;
      await refreshMany(db, [...new Set(rows.map(({ unitId }) => unitId))], zone);
    },
  };
}

/** A day stands for its noon at the shop: the same day in whatever zone it is looked at from nearby. */
const noon = (column: 'opened' | 'closed', zone: string) =>
  Prisma.sql`(${Prisma.raw(`r.${column}`)} + TIME '12:00') AT TIME ZONE ${zone}`;

async function insertRecords(db: Db, text: string, zone: string): Promise<void> {
  await db.$executeRaw`
    INSERT INTO place_record (ticket_id, unit_id, position_id, place, side, part_id, part_text, pack, candidates, told,
                              condition, fitted_on, left_out_why, recorded_at)
    SELECT r.id, u.id, p.id, c.place, c.side, part.id, c."partText", c.pack,
           coalesce((SELECT array_agg(k.id ORDER BY k.id) FROM part k
                     WHERE k.key IN (SELECT jsonb_array_elements_text(c.candidates))), '{}'),
           c.told, c.condition, c."fittedOn", c."leftOut", ${noon('closed', zone)}
    FROM jsonb_to_recordset(${text}::jsonb) AS r(id int, "unitId" int, closed date, records jsonb)
    JOIN unit u ON u.id = r."unitId"
    CROSS JOIN LATERAL jsonb_to_recordset(r.records)
      AS c(position text, place int, side text, part text, "partText" text, pack int, candidates jsonb, told text,
           condition text, "fittedOn" date, "leftOut" text)
    JOIN position p ON p.line_id = u.line_id AND p.code = c.position
    LEFT JOIN part ON part.key = c.part`;
}

async function readTickets(db: Db, zone: string, where: Prisma.Sql, limit: number | null): Promise<BulkTicket[]> {
  return db.$queryRaw<BulkTicket[]>`
    SELECT t.id, t.number, t.unit_id AS "unitId", l.code AS line, u.serial, t.complaint, t.cancel_reason AS cancelled,
           (t.opened_at AT TIME ZONE ${zone})::date::text AS opened,
           coalesce((t.closed_at AT TIME ZONE ${zone})::date::text, '') AS closed, t.closed_at IS NOT NULL AS "isClosed",
           coalesce((SELECT jsonb_agg(jsonb_build_object('position', p.code, 'place', r.place, 'side', r.side,
               'part', part.key, 'partText', coalesce(r.part_text, part.number), 'pack', r.pack, 'told', r.told,
               'condition', r.condition, 'fittedOn', r.fitted_on, 'leftOut', r.left_out_why, 'candidates',
               coalesce((SELECT jsonb_agg(k.key ORDER BY k.key) FROM part k WHERE k.id = ANY(r.candidates)), '[]'::jsonb))
             ORDER BY p.sort_order, p.id, r.place, r.side)
             FROM place_record r JOIN position p ON p.id = r.position_id LEFT JOIN part ON part.id = r.part_id
             WHERE r.ticket_id = t.id), '[]'::jsonb) AS records
    FROM ticket t JOIN unit u ON u.id = t.unit_id LEFT JOIN product_line l ON l.id = u.line_id
    WHERE ${where} ORDER BY t.id LIMIT ${limit}::int`;
}
