import { Client } from 'pg';
import { takeSessionLock } from './advisory-lock';
import { migrationList, prismaFolder } from './migration-list';
import { withSchemaEngine } from './schema-engine';
import { forgetUnfinished } from './unfinished-migrations';

/** Any fixed number; it must differ from the one the engine itself locks with (72707369). */
export const MIGRATION_LOCK = 4_780_001;

/** Tables and enums the engine should leave out of sight: none. */
export const NO_FILTER = { externalTables: [], externalEnums: [] };

/**
 * Brings the database to the newest migration and answers the names of those just applied (none when it was there).
 * Any number of programs may start at once: an advisory lock lets one migrate while the others wait. What was applied
 * is recorded in Prisma's own table, so `prisma migrate deploy` agrees. Throws when a migration fails; it is then
 * rolled back whole (one marked as running outside a transaction is left where it stood), and the next start tries it
 * again. The shop may be at work: a lock that is not had within a second is given up, and asked for again later.
 */
export async function applyMigrations(
  databaseUrl: string,
  folder: string = prismaFolder(),
): Promise<readonly string[]> {
  const holder = new Client({ connectionString: databaseUrl });
  await holder.connect();
  try {
    await takeSessionLock(holder, MIGRATION_LOCK);
    await forgetUnfinished(holder);
    const { appliedMigrationNames } = await withSchemaEngine(databaseUrl, (engine) =>
      engine.applyMigrations({ migrationsList: migrationList(folder), filters: NO_FILTER }),
    );
    return appliedMigrationNames;
  } finally {
    // Ending the session gives the lock free.
    await holder.end();
  }
}
