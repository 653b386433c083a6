import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from '../tickets/iso';

/** The pieces of evidence of a unit, in the order in which they were recorded. */
export const evidenceOf = (unitId: Id): Prisma.Sql => Prisma.sql`
  SELECT e.id, e.kind, e.data,
         CASE WHEN e.set_aside_why IS NULL THEN NULL
              ELSE jsonb_build_object('why', e.set_aside_why, 'by', p.name, 'at', ${iso('e.set_aside_at')}) END AS "setAside"
  FROM evidence e LEFT JOIN person p ON p.id = e.set_aside_by
  WHERE e.unit_id = ${unitId} ORDER BY e.id`;

/** Where the unit was worked on and with which parts, newest first. */
export const touchedOf = (unitId: Id, most: number): Prisma.Sql => Prisma.sql`
  SELECT r.position_id AS "positionId", r.place, r.part_id AS "partId", t.id AS "ticketId", t.number AS ticket,
         coalesce(r.fitted_on, r.recorded_at::date)::text AS "on"
  FROM place_record r JOIN ticket t ON t.id = r.ticket_id
  WHERE r.unit_id = ${unitId} AND r.side = 'left' AND r.part_id IS NOT NULL AND t.cancel_reason IS NULL
  ORDER BY coalesce(r.fitted_on, r.recorded_at::date) DESC, r.id DESC LIMIT ${most}::int`;

/** A note with the words for its place: several places of one position are otherwise told apart by nobody. */
export const NOTE = Prisma.sql`n.id, concat_ws(', ', p.name, p.place_names[n.place]) AS "where",
  coalesce(n.detail->>'sentence', s.title) AS sentence, s.number AS source, n.opened_at::date::text AS "on"`;

/** What was noted for the unit's next visit and nobody has settled. */
export const notesOf = (unitId: Id): Prisma.Sql => Prisma.sql`
  SELECT ${NOTE} FROM unit_note n JOIN source s ON s.id = n.source_id JOIN position p ON p.id = n.position_id
  WHERE n.unit_id = ${unitId} AND n.closed_at IS NULL ORDER BY n.id`;
