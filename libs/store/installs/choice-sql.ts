import { formatDay } from '../../day';
import type { RecheckScope } from '../../contracts';
import type { InstallChoice, PlaceOfUnit } from '../../usecases';
import { arrayText } from '../array-text';
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
 * within the look-back window (`lookBackFrom` null: no window). Days are those of the shop's time zone. Each is looked up
 * for itself, behind a fence: else every ticket of the shop would be put into a table first, for each chunk anew.
 */
export function inReach(lookBackFrom: number | null, zone: string): Prisma.Sql {
  if (lookBackFrom === null) return Prisma.sql`TRUE`;
  return Prisma.sql`(
    EXISTS (SELECT 1 FROM ticket r WHERE r.id = i.ticket_id
            AND (r.closed_at IS NULL OR r.closed_at >= ${formatDay(lookBackFrom)}::date::timestamp AT TIME ZONE ${zone}::text) OFFSET 0)
    OR EXISTS (SELECT 1 FROM ticket o WHERE o.unit_id = i.unit_id AND o.closed_at IS NULL OFFSET 0)
    OR EXISTS (SELECT 1 FROM callback c WHERE c.unit_id = i.unit_id AND c.state IN ('open', 'booked') OFFSET 0)
  )`;
}

/** How installs are chosen: tables to begin with, then what `i` is selected from, and on which condition. */
export interface Chosen {
  readonly tables: Prisma.Sql;
  readonly from: Prisma.Sql;
  readonly where: Prisma.Sql;
}

/** Chooses installs `i`. */
export function chosen(choice: InstallChoice, zone: string): Chosen {
  if ('places' in choice) return { ...atPlaces(choice.places), where: Prisma.sql`TRUE` };
  const from = Prisma.sql`install i`;
  if ('unitIds' in choice) {
    const ids = arrayText(choice.unitIds);
    return { tables: Prisma.sql`WITH `, from, where: Prisma.sql`i.unit_id = ANY(${ids}::text::int[])` };
  }
  const { scope, fromUnit, toUnit, units = [], lookBackFrom } = choice;
  const ids =
    units.length > 0
      ? Prisma.sql`i.unit_id = ANY(${[...units]}::int[])`
      : Prisma.sql`i.unit_id BETWEEN ${fromUnit}::int AND ${toUnit}::int`;
  const range = Prisma.sql`${ids} AND ${inReach(lookBackFrom, zone)}`;
  return scope.everything
    ? { tables: Prisma.sql`WITH `, from, where: range }
    : {
        from,
        tables: Prisma.sql`WITH ${areaTable(scope)}, `,
        where: Prisma.sql`${range} AND EXISTS (SELECT 1 FROM area WHERE ${IN_AREA})`,
      };
}

/**
 * Each place looked up by its key, behind a fence: how many there are is not known beforehand, and the whole table would
 * be read for some thousands.
 */
function atPlaces(places: readonly PlaceOfUnit[]): { readonly tables: Prisma.Sql; readonly from: Prisma.Sql } {
  const column = (name: keyof PlaceOfUnit) => arrayText(places.map((one) => one[name]));
  return {
    tables: Prisma.sql`WITH place_of AS MATERIALIZED (
      SELECT * FROM unnest(${column('unitId')}::text::int[], ${column('positionId')}::text::int[],
                           ${column('place')}::text::int[]) AS p(unit_id, position_id, place)), `,
    from: Prisma.sql`place_of o JOIN LATERAL (
      SELECT * FROM install h WHERE h.unit_id = o.unit_id AND h.position_id = o.position_id AND h.place = o.place OFFSET 0
    ) i ON TRUE`,
  };
}
