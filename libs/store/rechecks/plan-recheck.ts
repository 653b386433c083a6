import type { RecheckScope, RecomputeScope } from '../../contracts';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { areaTable, IN_AREA, inReach } from '../installs/choice-sql';
import { isTouched } from '../units/recompute-many';

/** The chosen units and how many installs of each are to be judged, as a table `reach(unit_id, installs)`. */
export function reachTable(scope: RecheckScope, lookBackFrom: number | null, zone: string): Prisma.Sql {
  if (scope.recompute) return touchedTable(scope.recompute);
  const from = scope.everything ? Prisma.sql`install i` : Prisma.sql`area JOIN install i ON ${IN_AREA}`;
  const area = scope.everything ? Prisma.empty : Prisma.sql`${areaTable(scope)}, `;
  return Prisma.sql`${area} reach AS MATERIALIZED (
    SELECT i.unit_id, ${scope.everything ? Prisma.sql`count(*)` : Prisma.sql`count(DISTINCT (i.position_id, i.place))`}::int AS installs
    FROM ${from} WHERE ${inReach(lookBackFrom, zone)} GROUP BY i.unit_id
  )`;
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
  { unitsAChunk, lookBackFrom, zone }: { unitsAChunk: number; lookBackFrom: number | null; zone: string },
): Promise<void> {
  await db.$executeRaw`
    WITH ${reachTable(scope, lookBackFrom, zone)},
    numbered AS (SELECT unit_id, (row_number() OVER (ORDER BY unit_id) - 1) / ${unitsAChunk}::int AS n FROM reach),
    cut AS (
      INSERT INTO recheck_chunk (recheck_id, n, from_unit, to_unit, units)
      SELECT ${id}::int, n, min(unit_id), max(unit_id),
             CASE WHEN ${isNarrow(scope)} THEN array_agg(unit_id ORDER BY unit_id) ELSE '{}' END
      FROM numbered GROUP BY n ON CONFLICT DO NOTHING RETURNING 1
    )
    UPDATE recheck SET state = 'running', started_at = clock_timestamp(),
           planned = (SELECT COALESCE(sum(installs), 0) FROM reach)
    WHERE id = ${id}::int`;
}
