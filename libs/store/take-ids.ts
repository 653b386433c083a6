import type { Db } from './db';

/** Takes so many ids from a table's sequence, so that rows which name each other can be written as sets, in any order. */
export async function takeIds(db: Db, table: string, count: number): Promise<readonly number[]> {
  const rows = await db.$queryRaw<{ id: number }[]>`
    SELECT nextval(pg_get_serial_sequence(${table}, 'id'))::int AS id FROM generate_series(1, ${count}::int)`;
  return rows.map(({ id }) => id);
}
