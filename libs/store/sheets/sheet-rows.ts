import type { RawRow, ReadSheetRow, RejectedRow, SheetStore } from '../../usecases';
import type { Db } from '../db';

type RowActions = Pick<
  SheetStore,
  'addRows' | 'rowsAfter' | 'keepReadings' | 'groupsAfter' | 'keepProblems' | 'dropGoodRows'
>;

/** Rows go over as one JSON text for each statement. */
export function rowActions(db: Db): RowActions {
  return {
    async addRows(id, rows) {
      await db.$executeRaw`
        INSERT INTO sheet_row (sheet_id, n, cells)
        SELECT ${id}::int, r.n, r.cells FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(n int, cells jsonb)`;
    },
    rowsAfter: (id, n, limit) => db.$queryRaw<RawRow[]>`
      SELECT n, cells FROM sheet_row WHERE sheet_id = ${id}::int AND n > ${n}::int ORDER BY n LIMIT ${limit}::int`,
    async keepReadings(id, rows) {
      await db.$executeRaw`
        UPDATE sheet_row s SET key = r.key, "values" = r."values", problems = r.problems
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(n int, key text, "values" jsonb, problems jsonb)
        WHERE s.sheet_id = ${id}::int AND s.n = r.n`;
    },
    groupsAfter: (id, key, limit) => groupsAfter(db, id, key, limit),
    async keepProblems(id, rows) {
      const good = rows.flatMap(({ n, problems }) => (problems.length === 0 ? [n] : []));
      const bad = rows.flatMap(({ n, problems }) => (problems.length === 0 ? [] : [{ n, problems }]));
      await db.$executeRaw`
        UPDATE sheet_row SET problems = NULL
        WHERE sheet_id = ${id}::int AND n = ANY(${good}::int[]) AND problems IS NOT NULL`;
      if (bad.length === 0) return;
      await db.$executeRaw`
        UPDATE sheet_row s SET problems = r.problems
        FROM jsonb_to_recordset(${JSON.stringify(bad)}::jsonb) AS r(n int, problems jsonb)
        WHERE s.sheet_id = ${id}::int AND s.n = r.n`;
    },
    async dropGoodRows(id) {
      await db.$executeRaw`DELETE FROM sheet_row WHERE sheet_id = ${id}::int AND problems IS NULL`;
    },
  };
}

/** The last group of a page is read to its end, so that no group is cut. */
async function groupsAfter(db: Db, id: number, key: string | null, limit: number): Promise<readonly ReadSheetRow[]> {
  return db.$queryRaw<ReadSheetRow[]>`
    SELECT n, key, "values" FROM (
      SELECT n, key, "values" FROM sheet_row
      WHERE sheet_id = ${id}::int AND key IS NOT NULL AND (${key}::text IS NULL OR key > ${key}::text)
      ORDER BY key FETCH FIRST (${limit}::int) ROWS WITH TIES) page
    ORDER BY key, n`;
}

export function rejectedRows(db: Db, id: number, afterRow: number, limit: number): Promise<readonly RejectedRow[]> {
  return db.$queryRaw<RejectedRow[]>`
    SELECT n, cells, problems FROM sheet_row
    WHERE sheet_id = ${id}::int AND problems IS NOT NULL AND n > ${afterRow}::int ORDER BY n LIMIT ${limit}::int`;
}
