import type { RawRow, ReadSheetRow, RejectedRow, SheetStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { walk, wholeGroups } from './walk';

type RowActions = Pick<
  SheetStore,
  'addRows' | 'firstRows' | 'rows' | 'keepReadings' | 'groups' | 'forgetProblems' | 'keepProblems' | 'dropGoodRows'
>;

/** Rows go over as one JSON text for each statement. */
export function rowActions(db: Db): RowActions {
  return {
    async addRows(id, rows) {
      await db.$executeRaw`
        INSERT INTO sheet_row (sheet_id, n, cells)
        SELECT ${id}::int, r.n, r.cells FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(n int, cells jsonb)`;
    },
    firstRows: (id, limit) => db.$queryRaw<RawRow[]>`
      SELECT n, cells FROM sheet_row WHERE sheet_id = ${id}::int ORDER BY n LIMIT ${limit}::int`,
    rows: (id) =>
      walk(db, `rows of ${id}`, Prisma.sql`SELECT n, cells FROM sheet_row WHERE sheet_id = ${id}::int ORDER BY n`),
    async keepReadings(id, rows) {
      await db.$executeRaw`
        UPDATE sheet_row s SET key = r.key, "values" = r."values", problems = r.problems
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(n int, key text, "values" jsonb, problems jsonb)
        WHERE s.sheet_id = ${id}::int AND s.n = r.n`;
    },
    groups: (id) =>
      wholeGroups(
        walk<ReadSheetRow>(
          db,
          `groups of ${id}`,
          Prisma.sql`SELECT n, key, "values" FROM sheet_row WHERE sheet_id = ${id}::int AND key IS NOT NULL ORDER BY key, n`,
        ),
        ({ key }) => key,
      ),
    async forgetProblems(id) {
      await db.$executeRaw`
        UPDATE sheet_row SET problems = NULL
        WHERE sheet_id = ${id}::int AND key IS NOT NULL AND problems IS NOT NULL`;
    },
    async keepProblems(id, rows) {
      const bad = rows.flatMap(({ n, problems }) => (problems.length === 0 ? [] : [{ n, problems }]));
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

export function rejectedRows(db: Db, id: number, afterRow: number, limit: number): Promise<readonly RejectedRow[]> {
  return db.$queryRaw<RejectedRow[]>`
    SELECT n, cells, problems FROM sheet_row
    WHERE sheet_id = ${id}::int AND problems IS NOT NULL AND n > ${afterRow}::int ORDER BY n LIMIT ${limit}::int`;
}
