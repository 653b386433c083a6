import { readConfig } from '../../../libs/config';
import { prepareDatabase } from '../../../libs/store/migrate';

/**
 * `npm run migrate`: brings the database of MIGRATION_DATABASE_URL up to date and lets the programs in as DATABASE_URL
 * says, so that they can run without the password of the owner of the tables.
 */
async function main(): Promise<void> {
  const read = readConfig(process.env);
  if (!read.ok) return fail(read.problems.join('\n'));
  const { databaseUrl, migrationDatabaseUrl } = read.config;
  if (databaseUrl === undefined || migrationDatabaseUrl === undefined)
    return fail(
      'Migrating needs DATABASE_URL and MIGRATION_DATABASE_URL; the own PostgreSQL is migrated at each start.',
    );
  const prepared = await prepareDatabase({ databaseUrl, migrationDatabaseUrl });
  if (!prepared.ok) return fail(prepared.problem);
  process.stdout.write(`The database is up to date (${prepared.applied.length} migrations made).\n`);
}

function fail(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 1;
}

main().catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));
