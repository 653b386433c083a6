import type { SheetRecord, SheetStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { rejectedRows, rowActions } from './sheet-rows';

/** A file is there for a day, whether or not somebody has cleared up meanwhile. */
const NOT_OLD = Prisma.sql`created_at >= now() - INTERVAL '1 day'`;

export function sheetStore(db: Db): SheetStore {
  return {
    async insert({ personId, kind, fileName }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO sheet (person_id, kind, file_name) VALUES (${personId}::int, ${kind}, ${fileName}) RETURNING id`;
      return rows[0]!.id;
    },
    async taken(id, { format, encoding, encodingCertain, delimiter, headings, looks, dayOrder, rows }) {
      await db.$executeRaw`
        UPDATE sheet SET state = 'read', format = ${format}, encoding = ${encoding}, delimiter = ${delimiter},
               encoding_certain = ${encodingCertain}, headings = ${JSON.stringify(headings)}::jsonb,
               looks = ${JSON.stringify(looks)}::jsonb, day_order = ${dayOrder}, rows = ${rows}::int, doing = NULL, progress = 0
        WHERE id = ${id}::int`;
    },
    async find(id, personId) {
      const rows = await db.$queryRaw<SheetRecord[]>`
        SELECT id, person_id AS "personId", kind, file_name AS "fileName", state, version, format, encoding,
               encoding_certain AS "encodingCertain", delimiter, headings, looks, day_order AS "dayOrder", rows, doing, progress, outcome,
               CASE WHEN choice ? 'mapping' THEN choice END AS choice
        FROM sheet WHERE id = ${id}::int AND person_id = ${personId}::int AND ${NOT_OLD}`;
      return rows[0] ?? null;
    },
    async hold(id) {
      const rows = await db.$queryRaw<{ held: boolean }[]>`
        SELECT pg_try_advisory_xact_lock(${SHEET_LOCK}::int, ${id}::int) AS held`;
      return rows[0]!.held;
    },
    async progress(id, doing, rows) {
      await db.$executeRaw`UPDATE sheet SET doing = ${doing}::text, progress = ${rows}::int WHERE id = ${id}::int`;
    },
    async conclude(id, state, choice, outcome) {
      await db.$executeRaw`
        UPDATE sheet SET state = ${state}, version = version + 1, choice = ${JSON.stringify(choice)}::jsonb,
               outcome = ${JSON.stringify(outcome)}::jsonb, doing = NULL, progress = 0,
               done_at = CASE WHEN ${state} = 'done' THEN now() END
        WHERE id = ${id}::int`;
    },
    async remove(id) {
      await db.$executeRaw`DELETE FROM sheet WHERE id = ${id}::int`;
    },
    async removeOld() {
      return db.$executeRaw`DELETE FROM sheet WHERE NOT ${NOT_OLD}`;
    },
    ...rowActions(db),
    rejected: (id, afterRow, limit) => rejectedRows(db, id, afterRow, limit),
  };
}

/** The first half of the locks on single files. Any fixed number. */
const SHEET_LOCK = 4_780_030;
