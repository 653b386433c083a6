import { formatDay } from '../../day';
import type { RecheckScope } from '../../contracts';
import type { InstallChoice } from '../../usecases';
import { Prisma } from '../generated/client';

/**
 * The scope's areas as a table `area(line_id, position_id, since, upto)`: positions of lines, and the closed-open span
 * of build days an install's envelope must meet.
 */
export function areaTable({ areas }: RecheckScope): Prisma.Sql {
  return Prisma.sql`area AS MATERIALIZED (
    SELECT p.line_id, p.id AS position_id, COALESCE(a."from", -2147483648) AS since, COALESCE(a."to", 2147483647) AS upto
    FROM jsonb_to_recordset(${JSON.stringify(areas)}::jsonb) AS a(line text, positions text[], "from" int, "to" int)
    JOIN product_line l ON l.code = a.line
    JOIN position p ON p.line_id = l.id AND (cardinality(a.positions) = 0 OR p.code = ANY(a.positions))
  )`;
}

/** Install `i` lies in an area. */
export const IN_AREA = Prisma.sql`i.line_id = area.line_id AND i.position_id = area.position_id
  AND i.built_from < area.upto AND i.built_to > area.since`;

/**
 * Install `i` is still looked at: its unit is in the shop or waits for a call, or the ticket that recorded it closed
 * within the look-back window (`lookBackFrom` null: no window).
 */
export function inReach(lookBackFrom: number | null): Prisma.Sql {
  if (lookBackFrom === null) return Prisma.sql`TRUE`;
  return Prisma.sql`(
    EXISTS (SELECT 1 FROM ticket r WHERE r.id = i.ticket_id
            AND (r.closed_at IS NULL OR r.closed_at >= ${formatDay(lookBackFrom)}::date::timestamp AT TIME ZONE 'UTC'))
    OR EXISTS (SELECT 1 FROM ticket o WHERE o.unit_id = i.unit_id AND o.closed_at IS NULL)
    OR EXISTS (SELECT 1 FROM callback c WHERE c.unit_id = i.unit_id AND c.state IN ('open', 'booked'))
  )`;
}

/** The tables and the condition that choose installs `i`. */
export function chosen(choice: InstallChoice): { readonly tables: Prisma.Sql; readonly where: Prisma.Sql } {
  if ('unitIds' in choice) {
    return { tables: Prisma.sql`WITH `, where: Prisma.sql`i.unit_id = ANY(${[...choice.unitIds]}::int[])` };
  }
  const { scope, fromUnit, toUnit, lookBackFrom } = choice;
  const range = Prisma.sql`i.unit_id BETWEEN ${fromUnit} AND ${toUnit} AND ${inReach(lookBackFrom)}`;
  return scope.everything
    ? { tables: Prisma.sql`WITH `, where: range }
    : {
        tables: Prisma.sql`WITH ${areaTable(scope)}, `,
        where: Prisma.sql`${range} AND EXISTS (SELECT 1 FROM area WHERE ${IN_AREA})`,
      };
}
