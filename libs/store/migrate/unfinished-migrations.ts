import { type Client } from 'pg';

/** Any fixed number of its own; held by a migration's transaction for as long as it lasts. */
const SCRIPT_LOCK = 4_780_002;

const MARK_FINISHED = `
DO $mark$ BEGIN
  IF to_regclass('_prisma_migrations') IS NOT NULL THEN
    UPDATE _prisma_migrations SET finished_at = now() WHERE finished_at IS NULL AND rolled_back_at IS NULL;
  END IF;
END $mark$;`;

/**
 * Puts around a migration's SQL what makes a kill at any moment harmless. Prisma's engine notes the end of a migration
 * in a statement of its own, so a kill in between would leave one that is applied but not noted, and one in the middle
 * of it one that is noted as begun, after which the engine refuses to go on. Here the note is in the same transaction.
 */
export const wholeOrNotAtAll = (sql: string): string =>
  `SELECT pg_advisory_xact_lock_shared(${SCRIPT_LOCK});\n${sql}\n;${MARK_FINISHED}`;

/**
 * Lets migrations that were begun but not finished be tried again: since each is one transaction, nothing of them is
 * in the database. First waits until a server process that still works for a killed program has ended. To be called
 * only by the holder of the migration lock.
 */
export async function forgetUnfinished(holder: Client): Promise<void> {
  await holder.query('BEGIN');
  await holder.query('SELECT pg_advisory_xact_lock($1)', [SCRIPT_LOCK]);
  const { rows } = await holder.query(`SELECT 1 WHERE to_regclass('_prisma_migrations') IS NOT NULL`);
  if (rows.length > 0) {
    await holder.query(
      'UPDATE _prisma_migrations SET rolled_back_at = now() WHERE finished_at IS NULL AND rolled_back_at IS NULL',
    );
  }
  await holder.query('COMMIT');
}
