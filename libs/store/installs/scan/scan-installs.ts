import type { PoolClient } from 'pg';
import { verdicts } from '../../../fit-rules';
import { SCANNED, SCANNED_COLUMNS, type InstallScan, type ScopeChoice } from '../../../usecases';
import { Prisma } from '../../generated/client';
import { chosen } from '../choice-sql';
import { copyRows } from './copy-rows';
import { literalSql } from './literal-sql';
import { NumberRows } from './number-rows';
import { readUnits } from './read-units';
import { STANDING } from './standing-sql';

const CODE = verdicts.map((word, code) => `WHEN '${word}' THEN ${code}`).join(' ');

/** The rows of a chunk in the order of SCANNED: what a scan costs the database. */
export function scanQuery(choice: ScopeChoice, zone: string): string {
  const { tables, from, where } = chosen(choice, zone);
  return literalSql(Prisma.sql`${tables} row_of AS (SELECT i.* FROM ${from} WHERE ${where})
    SELECT unit_id, position_id, place, part_id, fitted_on, CASE verdict ${Prisma.raw(CODE)} END FROM row_of`);
}

/** Reads a chunk in three streams: its installs, the facts of their units, and what stands about them. */
export async function scanInstalls(client: PoolClient, choice: ScopeChoice, zone: string): Promise<InstallScan> {
  const installs = new NumberRows(SCANNED_COLUMNS);
  await copyRows(client, scanQuery(choice, zone), installs.take);
  const { count, values: rows } = installs;
  const range = idRange(choice, unitsOf(rows, count));
  if (count === 0) return { count, rows, units: new Map(), standing: [] };
  return {
    count,
    rows,
    units: await readUnits(client, range('u.id')),
    standing: (await client.query<InstallScan['standing'][number]>(STANDING(range))).rows,
  };
}

/** Rows of one unit mostly stand together. */
function unitsOf(rows: Int32Array, count: number): ReadonlySet<number> {
  const ids = new Set<number>();
  let last = -1;
  for (let i = 0; i < count; i++) {
    const id = rows[i * SCANNED_COLUMNS + SCANNED.unit]!;
    if (id !== last) ids.add((last = id));
  }
  return ids;
}

/** A run of ids where most of it is asked for, else the ids themselves. */
function idRange({ fromUnit, toUnit }: ScopeChoice, ids: ReadonlySet<number>): (column: string) => string {
  const dense = toUnit - fromUnit < 3 * ids.size;
  return (column) =>
    dense ? `${column} BETWEEN ${fromUnit} AND ${toUnit}` : `${column} = ANY('{${[...ids].join(',')}}'::int[])`;
}
