import type { EstimateRevision } from '../../contracts';
import type { BookedEstimate, EstimateStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from '../tickets/iso';

const REVISION = Prisma.sql`
  e.revision, ${iso('e.at')} AS at, p.name AS "by", e.lines, e.currency,
  json_build_object('name', e.tax_name, 'basisPoints', e.tax_basis_points, 'included', e.tax_included) AS tax,
  e.net_minor AS "netMinor", e.tax_minor AS "taxMinor", e.total_minor AS "totalMinor"`;

/** The estimates of a ticket that were written down, the newest first. */
export const revisionsOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
  SELECT ${REVISION} FROM estimate e LEFT JOIN person p ON p.id = e.person_id
  WHERE e.ticket_id = ${ticketId} ORDER BY e.revision DESC`;

/** Days are counted in the shop's time zone. */
export function estimateStore(db: Db, zone: string): EstimateStore {
  return {
    ofTicket: (ticketId) => db.$queryRaw<EstimateRevision[]>(revisionsOf(ticketId)),
    async add(ticketId, { revision, lines, currency, tax, netMinor, taxMinor, totalMinor }, personId) {
      await db.$executeRaw`
        INSERT INTO estimate (ticket_id, revision, person_id, lines, currency, tax_name, tax_basis_points,
                              tax_included, net_minor, tax_minor, total_minor)
        VALUES (${ticketId}, ${revision}, ${personId}, ${JSON.stringify(lines)}::jsonb, ${currency}, ${tax.name},
                ${tax.basisPoints}, ${tax.included}, ${netMinor}, ${taxMinor}, ${totalMinor})`;
    },
    handedOver: (from, to, locationId) => db.$queryRaw<BookedEstimate[]>`
      SELECT ${REVISION}, t.number AS ticket, o.name AS owner, l.code AS location,
             (t.closed_at AT TIME ZONE ${zone})::date::text AS "handedOverOn",
             (t.authorisation->>'amountMinor')::int AS "authorisedMinor",
             (t.authorisation->>'revision')::int AS "authorisedRevision"
      FROM ticket t
      JOIN owner o ON o.id = t.owner_id
      JOIN location l ON l.id = t.location_id
      JOIN LATERAL (SELECT * FROM estimate WHERE ticket_id = t.id ORDER BY revision DESC LIMIT 1) e ON TRUE
      LEFT JOIN person p ON p.id = e.person_id
      WHERE t.handed_over AND (${locationId}::int IS NULL OR t.location_id = ${locationId}::int)
        AND t.closed_at >= ${from}::date::timestamp AT TIME ZONE ${zone}
        AND t.closed_at < ${to}::date::timestamp AT TIME ZONE ${zone}
      ORDER BY t.closed_at, t.id`,
  };
}
