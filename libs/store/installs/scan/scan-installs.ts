import type { PoolClient } from 'pg';
import { verdicts } from '../../../fit-rules';
import type { InstallScan, ScannedUnit, ScopeChoice } from '../../../usecases';
import { Prisma } from '../../generated/client';
import { readDaySet } from '../../units/day-set-text';
import { chosen } from '../choice-sql';
import { copyOut, NumberRows } from './copy-out';
import { IntRows } from './int-rows';
import { literalSql } from './literal-sql';
import { STANDING } from './standing-sql';

/** Stands for a null; no id, place or day is ever this. */
const MISSING = -2_147_483_648;
const COLUMNS = 6;
const CODE = verdicts.map((word, code) => `WHEN '${word}' THEN ${code}`).join(' ');

/** The rows of a chunk as `unit, position, place, part, fitted, verdict`: what a scan costs the database. */
export function scanQuery(choice: ScopeChoice, zone: string): string {
  const { tables, where } = chosen(choice, zone);
  return literalSql(Prisma.sql`${tables} row_of AS (SELECT i.* FROM install i WHERE ${where})
    SELECT unit_id, position_id, place, part_id, fitted_on, CASE verdict ${Prisma.raw(CODE)} END FROM row_of`);
}

/** Reads a chunk in three streams: its installs, the facts of their units, and what stands about them. */
export async function scanInstalls(client: PoolClient, choice: ScopeChoice, zone: string): Promise<InstallScan> {
  const rows = new IntRows(COLUMNS);
  const ids = new Set<number>();
  const parsed = new NumberRows(COLUMNS, MISSING, (row) => {
    rows.push(row);
    ids.add(row[0]!);
  });
  await copyOut(client, scanQuery(choice, zone), (piece) => parsed.take(piece));
  const [unitId, positionId, place, partId, fittedOn, verdict] = rows.columns();
  for (let i = 0; i < rows.length; i++) {
    if (partId![i] === MISSING) partId![i] = 0;
    if (verdict![i] === MISSING) verdict![i] = -1;
  }
  const range = idRange(choice, ids);
  return {
    count: rows.length,
    ...{
      unitId: unitId!,
      positionId: positionId!,
      place: place!,
      partId: partId!,
      fittedOn: fittedOn!,
      verdict: verdict!,
    },
    units: await readUnits(client, range, ids),
    standing: await readStanding(client, range, ids),
  };
}

/** A run of ids where most of it is asked for, else the ids themselves. */
function idRange({ fromUnit, toUnit }: ScopeChoice, ids: ReadonlySet<number>): (column: string) => string {
  const dense = toUnit - fromUnit < 3 * ids.size;
  return (column) =>
    dense ? `${column} BETWEEN ${fromUnit} AND ${toUnit}` : `${column} = ANY('{${[...ids].join(',')}}'::int[])`;
}

type Range = (column: string) => string;

async function readUnits(
  client: PoolClient,
  range: Range,
  ids: ReadonlySet<number>,
): Promise<ReadonlyMap<number, ScannedUnit>> {
  const units = new Map<number, ScannedUnit>();
  if (ids.size === 0) return units;
  const { rows } = await client.query<(string | number | null)[]>({
    text: `SELECT u.id, m.number, u.options::text, u.serial_scheme, u.serial_key, u.built::text
           FROM unit u LEFT JOIN model m ON m.id = u.model_id WHERE ${range('u.id')}`,
    rowMode: 'array',
  });
  const optionsOf = new Map<string, Readonly<Record<string, boolean>>>();
  for (const [id, model, options, scheme, key, built] of rows as [number, ...(string | null)[]][]) {
    if (!ids.has(id)) continue;
    const text = options!;
    let read = optionsOf.get(text);
    if (!read) optionsOf.set(text, (read = JSON.parse(text) as Record<string, boolean>));
    const serial = scheme === null ? null : { scheme: scheme!, key: key! };
    units.set(id, { id, model: model ?? '', options: read, serial, built: readDaySet(built!) });
  }
  return units;
}

async function readStanding(
  client: PoolClient,
  range: Range,
  ids: ReadonlySet<number>,
): Promise<InstallScan['standing']> {
  if (ids.size === 0) return [];
  const { rows } = await client.query<{ unitId: number; positionId: number; place: number }>(STANDING(range));
  return rows.filter((row) => ids.has(row.unitId));
}
