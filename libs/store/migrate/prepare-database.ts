import { Client } from 'pg';
import { APP_ROLE } from '../audit/work-as-app';
import { letAppIn, userOf } from './app-login';
import { applyMigrations } from './apply-migrations';
import { checkServer, serverProblemSentence } from './check-server';
import { migrationNames, prismaFolder } from './migration-list';
import { missingMigrations } from './missing-migrations';

/** Under which addresses a database is reached. */
export interface DatabaseAddresses {
  /** The programs'. */
  readonly databaseUrl: string;
  /** That of the owner of the tables; left out where one login does both. */
  readonly migrationDatabaseUrl?: string | undefined;
}

export type Prepared =
  { readonly ok: true; readonly applied: readonly string[] } | { readonly ok: false; readonly problem: string };

/**
 * Brings a database to where the programs can run on it: the owner of the tables migrates and lets the programs in. A
 * login of the programs alone may not do either; then nothing may be left to do.
 */
export async function prepareDatabase({ databaseUrl, migrationDatabaseUrl }: DatabaseAddresses): Promise<Prepared> {
  const ownerUrl = migrationDatabaseUrl ?? databaseUrl;
  const named = migrationDatabaseUrl === undefined ? 'DATABASE_URL' : 'MIGRATION_DATABASE_URL';
  const problem = await checkServer(ownerUrl);
  if (problem) return { ok: false, problem: serverProblemSentence(problem, named) };
  if (userOf(ownerUrl) === APP_ROLE) return isUpToDate(ownerUrl);
  const applied = await applyMigrations(ownerUrl);
  await letAppIn(ownerUrl, databaseUrl);
  return { ok: true, applied };
}

async function isUpToDate(url: string): Promise<Prepared> {
  const missing = await withClient(url, (client) => missingMigrations(client, migrationNames(prismaFolder())));
  if (missing === 0) return { ok: true, applied: [] };
  const problem =
    `The database of DATABASE_URL wants ${missing} migrations, which its login may not make; ` +
    'run npm run migrate with MIGRATION_DATABASE_URL, the address of the owner of its tables.';
  return { ok: false, problem };
}

async function withClient<T>(url: string, work: (client: Client) => Promise<T>): Promise<T> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}
