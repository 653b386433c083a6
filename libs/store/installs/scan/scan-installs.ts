import type { PoolClient } from 'pg';
import { verdicts } from '../../../fit-rules';
import { SCANNED, SCANNED_COLUMNS, type InstallScan, type ScopeChoice } from '../../../usecases';
import { Prisma } from '../../generated/client';
import { chosen } from '../choice-sql';
import { copyRows } from './copy-rows';
import { literalSql } from './literal-sql';
import type { NumberRows } from './number-rows';
import { readUnits } from './read-units';
import { STANDING } from './standing-sql';

/** Taken hold of once: they are looked up for every row. */
const [UNIT, WIDTH] = [SCANNED.unit, SCANNED_COLUMNS];
const CODE = verdicts.map((word, code) => `WHEN '${word}' THEN ${code}`).join(' ');

/** The rows of a chunk in the order of SCANNED: what a scan costs the database. */
export function scanQuery(choice: ScopeChoice, zone: string): string {
  const { tables, from, where } = chosen(choice, zone);
  return literalSql(Prisma.sql`${tables} row_of AS (SELECT i.* FROM ${from} WHERE ${where})
    SELECT unit_id, position_id, place, part_id, fitted_on, CASE verdict ${Prisma.raw(CODE)} END FROM row_of`);
}

/** Reads a chunk in three streams: its installs, into the room given, the facts of their units, and what stands about them. */
export async function scanInstalls(
  client: PoolClient,
  choice: ScopeChoice,
  zone: string,
  installs: NumberRows,
): Promise<InstallScan> {
  await copyRows(client, scanQuery(choice, zone), installs.take);
  const { count, values: rows } = installs;
  const { most, within } = idRange(choice, unitsOf(rows, count));
  return {
    count,
    rows,
    units: await readUnits(client, within('u.id'), most),
    standing: count === 0 ? [] : (await client.query<InstallScan['standing'][number]>(STANDING(within))).rows,
  };
}

/** Rows of one unit mostly stand together; where they do not, it is named again. */
function unitsOf(rows: Int32Array, count: number): readonly number[] {
  const ids: number[] = [];
  let last = -1;
  for (let at = UNIT; at < count * WIDTH; at += WIDTH) {
    const id = rows[at]!;
    if (id !== last) ids.push((last = id));
  }
  return ids;
}

/** Units of a scan: how many there are at most, and the condition that a column holds the id of one. */
interface IdRange {
  readonly most: number;
  readonly within: (column: string) => string;
}

/** A run of ids where most of it is asked for, else the ids themselves. */
function idRange({ fromUnit, toUnit }: ScopeChoice, ids: readonly number[]): IdRange {
  const width = toUnit - fromUnit + 1;
  return width < 3 * ids.length
    ? { most: width, within: (column) => `${column} BETWEEN ${fromUnit} AND ${toUnit}` }
    : { most: ids.length, within: (column) => `${column} = ANY('{${ids.join(',')}}'::int[])` };
}
