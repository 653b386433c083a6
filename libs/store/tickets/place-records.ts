import type { TicketStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from './iso';

export const recordsOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
    SELECT r.id, r.position_id AS "positionId", r.place, r.side, r.part_id AS "partId", r.part_text AS "partText",
           r.pack, r.marks, r.candidates, r.told, r.condition, r.fitted_on::text AS "fittedOn",
           r.left_out_why AS "leftOutWhy", ${iso('r.recorded_at')} AS "recordedAt", p.name AS "recordedBy"
    FROM place_record r LEFT JOIN person p ON p.id = r.recorded_by
    WHERE r.ticket_id = ${ticketId} ORDER BY r.position_id, r.place`;

/** The newest record of each place on the unit's tickets opened before this one. */
export const recordsBefore = (unitId: Id, ticketId: Id): Prisma.Sql => Prisma.sql`
    SELECT DISTINCT ON (r.position_id, r.place) r.position_id AS "positionId", r.place, r.part_id AS "partId",
           t.number AS ticket, coalesce(t.closed_at, r.recorded_at)::date::text AS "on"
    FROM place_record r
    JOIN ticket t ON t.id = r.ticket_id
    JOIN ticket here ON here.id = ${ticketId}
    WHERE r.unit_id = ${unitId} AND (t.opened_at, t.id) < (here.opened_at, here.id) AND r.left_out_why IS NULL
    ORDER BY r.position_id, r.place, t.opened_at DESC, t.id DESC, (r.side = 'left') DESC`;

export const putRecords =
  (db: Db): TicketStore['putRecords'] =>
  async (ticketId, unitId, records, personId) => {
    await db.$executeRaw`
      INSERT INTO place_record (ticket_id, unit_id, position_id, place, side, part_id, part_text, pack, marks,
                                candidates, told, condition, fitted_on, left_out_why, recorded_by)
      SELECT ${ticketId}, ${unitId}, n."positionId", n.place, n.side, n."partId", n."partText", n.pack, n.marks,
             coalesce(n.candidates, '{}'), n.told, n.condition, n."fittedOn", n."leftOutWhy", ${personId}
      FROM jsonb_to_recordset(${JSON.stringify(records)}::jsonb) AS n(
        "positionId" int, place int, side text, "partId" int, "partText" text, pack int, marks jsonb,
        candidates int[], told text, condition text, "fittedOn" date, "leftOutWhy" text)
      ON CONFLICT (ticket_id, position_id, place, side) DO UPDATE SET
        part_id = excluded.part_id, part_text = excluded.part_text, pack = excluded.pack,
        marks = excluded.marks, candidates = excluded.candidates, told = excluded.told,
        condition = excluded.condition, fitted_on = excluded.fitted_on, left_out_why = excluded.left_out_why,
        recorded_at = now(), recorded_by = excluded.recorded_by`;
  };
