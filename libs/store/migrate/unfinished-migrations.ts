import { setTimeout as pause } from 'node:timers/promises';
import type { ClientBase, Pool } from 'pg';
import { takeSessionLock } from './advisory-lock';
import { runOutside, runsOutside } from './outside-a-transaction';

/** Any fixed number of its own; held by a migration for as long as it lasts. */
const SCRIPT_LOCK = 4_780_002;

/**
 * How long a migration waits for a lock. Everybody who wants the table meanwhile stands in line behind it, so it is
 * short; then the migration steps back and tries again.
 */
const LOCK_TIMEOUT_MS = 1_000;
const MOST_TRIES = 60;
const LOCK_NOT_AVAILABLE = '55P03';

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
  `SET LOCAL lock_timeout = ${LOCK_TIMEOUT_MS};\nSELECT pg_advisory_xact_lock_shared(${SCRIPT_LOCK});\n${sql}\n;${MARK_FINISHED}`;

/** Runs one migration, as it is marked; where the shop's work stands in its way, it lets that go first. */
export async function runMigration(pool: Pool, sql: string): Promise<void> {
  if (runsOutside(sql)) return runMarked(pool, sql);
  for (let tries = 1; ; tries++) {
    try {
      await pool.query(wholeOrNotAtAll(sql));
      return;
    } catch (error) {
      if ((error as { code?: string }).code !== LOCK_NOT_AVAILABLE || tries >= MOST_TRIES) throw error;
      await pause(200 + Math.random() * 1_000);
    }
  }
}

async function runMarked(pool: Pool, sql: string): Promise<void> {
  const client = await pool.connect();
  try {
    await client.query(`SELECT pg_advisory_lock_shared(${SCRIPT_LOCK})`);
    await runOutside(client, sql);
    await client.query(MARK_FINISHED);
  } finally {
    // Ending the session gives the lock free.
    client.release(true);
  }
}

/**
 * Lets migrations that were begun but not finished be tried again: either nothing of them is in the database, since each is
 * one transaction, or they are of the kind that goes on where it stood. First waits until a server process that still
 * works for a killed program has ended. To be called only by the holder of the migration lock.
 */
export async function forgetUnfinished(holder: ClientBase): Promise<void> {
  await takeSessionLock(holder, SCRIPT_LOCK);
  const { rows } = await holder.query(`SELECT 1 WHERE to_regclass('_prisma_migrations') IS NOT NULL`);
  if (rows.length > 0) {
    await holder.query(
      'UPDATE _prisma_migrations SET rolled_back_at = now() WHERE finished_at IS NULL AND rolled_back_at IS NULL',
    );
  }
  await holder.query('SELECT pg_advisory_unlock($1)', [SCRIPT_LOCK]);
}
