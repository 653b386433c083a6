import type { RecheckScope } from '../../contracts';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { areaTable, IN_AREA, inReach } from './choice-sql';

/** A page of the scope's units by keyset, so that a scope of any size is walked in small steps. */
export async function nextUnits(
  db: Db,
  scope: RecheckScope,
  lookBackFrom: number | null,
  after: number,
  limit: number,
  zone: string,
): Promise<{ fromUnit: number; toUnit: number; units: readonly number[] } | null> {
  const tables = scope.everything ? Prisma.empty : Prisma.sql`${areaTable(scope)}, `;
  const from = scope.everything ? Prisma.sql`install i` : Prisma.sql`area JOIN install i ON ${IN_AREA}`;
  const rows = await db.$queryRaw<{ units: number[] | null }[]>`
    WITH ${tables} page AS (
      SELECT DISTINCT i.unit_id FROM ${from}
      WHERE i.unit_id > ${after}::int AND ${inReach(lookBackFrom, zone)} ORDER BY i.unit_id LIMIT ${limit}::int)
    SELECT array_agg(unit_id ORDER BY unit_id) AS units FROM page`;
  const { units } = rows[0]!;
  return units === null ? null : { fromUnit: units[0]!, toUnit: units.at(-1)!, units };
}
