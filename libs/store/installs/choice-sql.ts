import { formatDay } from '../../day';
import type { RecheckScope } from '../../contracts';
import type { InstallChoice, PlaceOfUnit, ScopeChoice } from '../../usecases';
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
            AND (r.closed_at IS NULL OR r.closed_at >= ${firstMoment(lookBackFrom, zone)}) OFFSET 0)
    OR EXISTS (SELECT 1 FROM ticket o WHERE o.unit_id = i.unit_id AND o.closed_at IS NULL OFFSET 0)
    OR EXISTS (SELECT 1 FROM callback c WHERE c.unit_id = i.unit_id AND c.state IN ('open', 'booked') OFFSET 0)
  )`;
}

const firstMoment = (day: number, zone: string): Prisma.Sql =>
  Prisma.sql`${formatDay(day)}::date::timestamp AT TIME ZONE ${zone}::text`;

/**
 * The same as `inReach`, to be looked up in two tables that are made once: `recent(id)`, the tickets whose installs are
 * looked at, and `about(unit_id)`, the units of which everything is. Where most units of a run are asked after, that takes
 * a third of the time. `within` says of which units, by a condition on `unit_id`.
 */
export function reachOfUnits(lookBackFrom: number, zone: string, within: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`recent AS MATERIALIZED (
    SELECT id FROM ticket WHERE ${within} AND (closed_at IS NULL OR closed_at >= ${firstMoment(lookBackFrom, zone)})
  ),
  about AS MATERIALIZED (
    SELECT unit_id FROM ticket WHERE ${within} AND closed_at IS NULL
    UNION SELECT unit_id FROM callback WHERE ${within} AND state IN ('open', 'booked')
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
    return { tables: Prisma.sql`WITH `, from, where: Prisma.sql`i.unit_id = ANY(${ids}::int[])` };
  }
  const { tables, where } = ofUnits(choice, zone);
  return choice.scope.everything
    ? { tables: Prisma.sql`WITH ${tables}`, from, where }
    : {
        from,
        tables: Prisma.sql`WITH ${areaTable(choice.scope)}, ${tables}`,
        where: Prisma.sql`${where} AND EXISTS (SELECT 1 FROM area WHERE ${IN_AREA})`,
      };
}

/** Installs of the choice's units that are in reach: of those it names, or else of a run of ids. */
function ofUnits(choice: ScopeChoice, zone: string): Omit<Chosen, 'from'> {
  const { fromUnit, toUnit, units = [], lookBackFrom } = choice;
  if (units.length > 0) {
    const named = Prisma.sql`i.unit_id = ANY(${[...units]}::int[])`;
    return { tables: Prisma.empty, where: Prisma.sql`${named} AND ${inReach(lookBackFrom, zone)}` };
  }
  const within = Prisma.sql`unit_id BETWEEN ${fromUnit}::int AND ${toUnit}::int`;
  if (lookBackFrom === null) return { tables: Prisma.empty, where: Prisma.sql`i.${within}` };
  return {
    tables: Prisma.sql`${reachOfUnits(lookBackFrom, zone, within)}, `,
    where: Prisma.sql`i.${within}
      AND (i.ticket_id IN (SELECT id FROM recent) OR i.unit_id IN (SELECT unit_id FROM about))`,
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
      SELECT * FROM unnest(${column('unitId')}::int[], ${column('positionId')}::int[],
                           ${column('place')}::int[]) AS p(unit_id, position_id, place)), `,
    from: Prisma.sql`place_of o JOIN LATERAL (
      SELECT * FROM install h WHERE h.unit_id = o.unit_id AND h.position_id = o.position_id AND h.place = o.place OFFSET 0
    ) i ON TRUE`,
  };
}
