import type { RecheckArea, RecheckScope, RecomputeScope } from '../../contracts';
import type { PlanCut } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { areaTable, IN_AREA, inReach } from '../installs/choice-sql';
import { isTouched } from '../units/recompute-many';

/**
 * The chosen units and how many installs of each are to be judged, as a table `reach(unit_id, installs)`. Rows are put
 * together by unit and recording ticket first: whether a unit is still in reach is then asked once, not for each part.
 */
export function reachTable(scope: RecheckScope, lookBackFrom: number | null, zone: string): Prisma.Sql {
  if (scope.recompute) return touchedTable(scope.recompute);
  const from = scope.everything ? Prisma.sql`install i` : Prisma.sql`area JOIN install i ON ${IN_AREA}`;
  const area = scope.everything ? Prisma.empty : Prisma.sql`${areaTable(scope)}, `;
  const parts = overlap(scope.areas) ? Prisma.sql`count(DISTINCT (i.position_id, i.place))` : Prisma.sql`count(*)`;
  return Prisma.sql`${area} held AS MATERIALIZED (
    SELECT i.unit_id, i.ticket_id, ${parts}::int AS parts FROM ${from} GROUP BY i.unit_id, i.ticket_id
  ),
  reach AS MATERIALIZED (
    SELECT i.unit_id, sum(i.parts)::int AS installs FROM held i WHERE ${inReach(lookBackFrom, zone)} GROUP BY i.unit_id
  )`;
}

/** True when an install could lie in two of the areas and would be counted twice. */
function overlap(areas: RecheckScope['areas']): boolean {
  return areas.some((one, i) => areas.slice(i + 1).some((other) => meet(one, other)));
}

function meet(one: RecheckArea, other: RecheckArea): boolean {
  const samePlace =
    one.line === other.line &&
    (one.positions.length === 0 ||
      other.positions.length === 0 ||
      one.positions.some((at) => other.positions.includes(at)));
  const before = (to: number | null, from: number | null) => to !== null && from !== null && to <= from;
  return samePlace && !before(one.to, other.from) && !before(other.to, one.from);
}

/** A recheck of some units among many names them; one of everything, or of whole lines, goes by runs of ids. */
const isNarrow = (scope: RecheckScope): boolean => !scope.everything && !scope.recompute;

/** Units whose build days are worked out again; one that holds nothing yet is among them. */
function touchedTable(scope: RecomputeScope): Prisma.Sql {
  return Prisma.sql`reach AS MATERIALIZED (
    SELECT u.id AS unit_id, (SELECT count(*)::int FROM install i WHERE i.unit_id = u.id) AS installs
    FROM unit u WHERE ${isTouched(scope)}
  )`;
}

/** Cuts what is to be judged into runs of units, in order of id, and marks the recheck as running. */
export async function planRecheck(
  db: Db,
  id: number,
  scope: RecheckScope,
  { unitsAChunk, lookBackFrom, keepFirst, zone }: PlanCut & { readonly zone: string },
): Promise<void> {
  const everything = isEverything(scope, lookBackFrom);
  const planned = everything ? Prisma.sql`${await countInstalls(db)}::int` : INSTALLS_IN_REACH;
  await db.$executeRaw`
    WITH ${everything ? EVERY_UNIT : reachTable(scope, lookBackFrom, zone)},
    numbered AS (SELECT unit_id, (row_number() OVER (ORDER BY unit_id) - 1) / ${unitsAChunk}::int AS n FROM reach),
    cut AS (
      INSERT INTO recheck_chunk (recheck_id, n, from_unit, to_unit, units, leased_until)
      SELECT ${id}::int, n, min(unit_id), max(unit_id),
             CASE WHEN ${isNarrow(scope)} THEN array_agg(unit_id ORDER BY unit_id) ELSE '{}' END,
             CASE WHEN n = 0 AND ${keepFirst}::boolean THEN now() + INTERVAL '10 seconds' END
      FROM numbered GROUP BY n ON CONFLICT DO NOTHING RETURNING 1
    )
    UPDATE recheck SET state = 'running', started_at = clock_timestamp(), planned = ${planned}
    WHERE id = ${id}::int`;
}

/** Nothing is left out: then no install need be looked at to tell which units are meant. */
const isEverything = (scope: RecheckScope, lookBackFrom: number | null): boolean =>
  scope.everything && !scope.recompute && lookBackFrom === null;

/** In the order of the index: sorting them again would take longer than all else. */
const EVERY_UNIT = Prisma.sql`reach AS NOT MATERIALIZED (SELECT id AS unit_id FROM unit)`;
const INSTALLS_IN_REACH = Prisma.sql`(SELECT COALESCE(sum(installs), 0) FROM reach)`;

/** In a statement of its own: as part of one that writes, the database would count with one process alone. */
async function countInstalls(db: Db): Promise<number> {
  const rows = await db.$queryRaw<{ n: number }[]>`SELECT count(*)::int AS n FROM install`;
  return rows[0]!.n;
}
