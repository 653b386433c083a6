import type { RawRow, ReadSheetRow, RejectedRow, SheetStore } from '../../usecases';
import type { Db } from '../db';

type RowActions = Pick<
  SheetStore,
  'addRows' | 'rowsAfter' | 'keepReadings' | 'groupsAfter' | 'keepWeighed' | 'dropGoodRows'
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
        UPDATE sheet_row s SET key = r.key, "values" = r."values", problems = r.problems, outcome = NULL
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(n int, key text, "values" jsonb, problems jsonb)
        WHERE s.sheet_id = ${id}::int AND s.n = r.n`;
    },
    groupsAfter: (id, key, limit) => groupsAfter(db, id, key, limit),
    async keepWeighed(id, rows) {
      await db.$executeRaw`
        UPDATE sheet_row s SET outcome = r.outcome, problems = r.problems
        FROM jsonb_to_recordset(${JSON.stringify(rows.map(kept))}::jsonb) AS r(n int, outcome text, problems jsonb)
        WHERE s.sheet_id = ${id}::int AND s.n = r.n`;
    },
    async dropGoodRows(id) {
      await db.$executeRaw`DELETE FROM sheet_row WHERE sheet_id = ${id}::int AND problems IS NULL`;
    },
  };
}

const kept = <T extends { problems: readonly unknown[] }>(row: T) => ({
  ...row,
  problems: row.problems.length === 0 ? null : row.problems,
});

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
