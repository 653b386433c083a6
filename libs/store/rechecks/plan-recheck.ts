import type { RecheckArea, RecheckScope, RecomputeScope } from '../../contracts';
import type { PlanCut } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { areaTable, IN_AREA, inReach, reachOfUnits } from '../installs/choice-sql';
import { isTouched } from '../units/recompute-many';

/** What a plan is made for, beside its scope. */
interface Reading {
  readonly lookBackFrom: number | null;
  readonly zone: string;
  /** Whole tables are read. */
  readonly wide: boolean;
}

/**
 * The chosen units and how many installs of each are to be judged, as a table `reach(unit_id, installs)`. Rows are put
 * together by unit and recording ticket first: whether a unit is still in reach is then asked once, not for each part.
 */
function reachTable(scope: RecheckScope, { lookBackFrom, zone, wide }: Reading): Prisma.Sql {
  if (scope.recompute) return touchedTable(scope.recompute);
  const from = scope.everything ? Prisma.sql`install i` : Prisma.sql`area JOIN install i ON ${IN_AREA}`;
  const area = scope.everything ? Prisma.empty : Prisma.sql`${areaTable(scope)}, `;
  const parts = overlap(scope.areas) ? Prisma.sql`count(DISTINCT (i.position_id, i.place))` : Prisma.sql`count(*)`;
  const { tables, held, where } = stillLookedAt({ lookBackFrom, zone, wide });
  return Prisma.sql`${area} held AS MATERIALIZED (
    SELECT i.unit_id, i.ticket_id, ${parts}::int AS parts FROM ${from} GROUP BY i.unit_id, i.ticket_id
  ),
  ${tables} reach AS MATERIALIZED (
    SELECT i.unit_id, sum(i.parts)::int AS installs FROM ${held} WHERE ${where} GROUP BY i.unit_id
  )`;
}

/** Which of `held` count: few are looked up one by one, many are joined. */
function stillLookedAt({ lookBackFrom, zone, wide }: Reading) {
  if (!wide || lookBackFrom === null)
    return { tables: Prisma.empty, held: Prisma.sql`held i`, where: inReach(lookBackFrom, zone) };
  return {
    tables: Prisma.sql`${reachOfUnits(lookBackFrom, zone, Prisma.sql`TRUE`)},`,
    held: Prisma.sql`held i LEFT JOIN recent r ON r.id = i.ticket_id LEFT JOIN about a ON a.unit_id = i.unit_id`,
    where: Prisma.sql`(r.id IS NOT NULL OR a.unit_id IS NOT NULL)`,
  };
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

/** From this share of all installs on, reading the whole table takes less time than looking each up. */
const WIDE_SHARE = 0.05;

/** By the database's own estimate: true for a scope of installs so wide that it is better read from end to end. */
async function isWide(db: Db, scope: RecheckScope, wideFrom: number): Promise<boolean> {
  if (scope.recompute) return false;
  if (scope.everything) return true;
  const rows = await db.$queryRaw<{ ids: number[] | null; since: number; upto: number; all: number }[]>`
    WITH ${areaTable(scope)}
    SELECT array_agg(DISTINCT position_id) AS ids, COALESCE(min(since), 0)::int AS since, COALESCE(max(upto), 0)::int AS upto,
           (SELECT reltuples::float8 FROM pg_class WHERE oid = 'install'::regclass) AS "all"
    FROM area`;
  const { ids, since, upto, all } = rows[0]!;
  const least = Math.max(wideFrom, WIDE_SHARE * all);
  if (ids === null || all < least) return false;
  // A position is of one line, which the database does not know: asked for both, it would guess far too low.
  const plans = await db.$queryRaw<{ 'QUERY PLAN': readonly [{ Plan: { 'Plan Rows': number } }] }[]>`
    EXPLAIN (FORMAT JSON) SELECT FROM install
    WHERE position_id = ANY(${ids}::int[]) AND built_from < ${upto}::int AND built_to > ${since}::int`;
  return plans[0]!['QUERY PLAN'][0].Plan['Plan Rows'] >= least;
}

/** Units whose build days are worked out again; one that holds nothing yet is among them. */
function touchedTable(scope: RecomputeScope): Prisma.Sql {
  return Prisma.sql`reach AS MATERIALIZED (
    SELECT u.id AS unit_id, (SELECT count(*)::int FROM install i WHERE i.unit_id = u.id) AS installs
    FROM unit u WHERE ${isTouched(scope)}
  )`;
}

/**
 * Cuts what is to be judged into runs of units, in order of id, and marks the recheck as running. A recheck of some units
 * among many names them; a wide one goes by runs of ids.
 */
export async function planRecheck(
  db: Db,
  id: number,
  scope: RecheckScope,
  { unitsAChunk, lookBackFrom, keepFirst, wideFrom, zone }: PlanCut & { readonly zone: string },
): Promise<void> {
  const everything = isEverything(scope, lookBackFrom);
  const wide = await isWide(db, scope, wideFrom);
  if (wide) await setting(db, READ_WHOLE_TABLES, 'off');
  const planned = everything ? Prisma.sql`${await countInstalls(db)}::int` : INSTALLS_IN_REACH;
  await db.$executeRaw`
    WITH ${everything ? EVERY_UNIT : reachTable(scope, { lookBackFrom, zone, wide })},
    numbered AS (SELECT unit_id, (row_number() OVER (ORDER BY unit_id) - 1) / ${unitsAChunk}::int AS n FROM reach),
    cut AS (
      INSERT INTO recheck_chunk (recheck_id, n, from_unit, to_unit, units, leased_until)
      SELECT ${id}::int, n, min(unit_id), max(unit_id),
             CASE WHEN ${!wide && !scope.recompute} THEN array_agg(unit_id ORDER BY unit_id) ELSE '{}' END,
             CASE WHEN n = 0 AND ${keepFirst}::boolean THEN now() + INTERVAL '10 seconds' END
      FROM numbered GROUP BY n ON CONFLICT DO NOTHING RETURNING 1
    )
    UPDATE recheck SET state = 'running', started_at = clock_timestamp(), planned = ${planned}
    WHERE id = ${id}::int`;
  if (wide) await setting(db, READ_WHOLE_TABLES, 'on');
}

/**
 * How many rows an area has the database does not know beforehand. Left to itself it would look up each install by the
 * index, and sort all of them to count them, in three times the time.
 */
const READ_WHOLE_TABLES = ['enable_nestloop', 'enable_sort'] as const;

/** For the rest of the transaction. */
async function setting(db: Db, names: readonly string[], value: 'on' | 'off'): Promise<void> {
  await db.$queryRaw`SELECT set_config(name, ${value}, true) FROM unnest(${names}::text[]) AS s(name)`;
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
