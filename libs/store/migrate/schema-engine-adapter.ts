import { randomUUID } from 'node:crypto';
import { PrismaPg } from '@prisma/adapter-pg';
import { ColumnTypeEnum, type SqlDriverAdapter, type SqlQuery, type SqlResultSet } from '@prisma/driver-adapter-utils';
import { Client, Pool, type QueryArrayResult } from 'pg';
import { runMigration } from './unfinished-migrations';

/** PostgreSQL's one-byte type "char", which the catalogue uses and the adapter cannot read, and the nearest it can. */
const CHAR = 18;
const BPCHAR = 1042;

/** The two inner parts of the adapter that the mending below reaches into. */
interface Inner extends SqlDriverAdapter {
  performIO(query: SqlQuery): Promise<QueryArrayResult>;
  onError(error: unknown): never;
}

type OriginalQuery = (this: Inner, query: SqlQuery) => Promise<SqlResultSet>;

/**
 * Opens the adapter for the migration engine, with two faults of @prisma/adapter-pg 7.10 mended: columns of type
 * "char" are read as text, and a script is sent whole instead of being cut at every ';' (which breaks the body of a
 * function).
 */
export async function openAdapter(databaseUrl: string): Promise<SqlDriverAdapter> {
  const pool = new Pool({ connectionString: databaseUrl, max: 3 });
  const adapter = (await new PrismaPg(pool, { disposeExternalPool: true }).connect()) as unknown as Inner;
  // Taken without its object on purpose: it is called on one whose performIO is changed.
  const queryRaw: OriginalQuery = Reflect.get(adapter, 'queryRaw');
  adapter.queryRaw = (query) => readingCharAsText(adapter, queryRaw, query);
  adapter.executeScript = async (sql) => {
    try {
      await runMigration(pool, sql);
    } catch (error) {
      adapter.onError(error);
    }
  };
  return adapter;
}

async function readingCharAsText(adapter: Inner, queryRaw: OriginalQuery, query: SqlQuery): Promise<SqlResultSet> {
  const charColumns: number[] = [];
  const performIO = async (asked: SqlQuery): Promise<QueryArrayResult> => {
    const answer = await adapter.performIO(asked);
    answer.fields.forEach((field, index) => {
      if (field.dataTypeID !== CHAR) return;
      field.dataTypeID = BPCHAR;
      charColumns.push(index);
    });
    return answer;
  };
  const result = await queryRaw.call(Object.create(adapter, { performIO: { value: performIO } }) as Inner, query);
  for (const index of charColumns) result.columnTypes[index] = ColumnTypeEnum.Character;
  return result;
}

/** The same address with another database. */
export function withDatabaseName(databaseUrl: string, database: string): string {
  const url = new URL(databaseUrl);
  url.pathname = `/${database}`;
  return url.toString();
}

/**
 * Opens a new, empty database on the same server, on which the engine replays the migrations to compare; it is
 * dropped when the engine lets go. The adapter's own way would use the main database when it is given an address,
 * and would drop the copy before its connections are closed.
 */
export async function openShadowAdapter(databaseUrl: string): Promise<SqlDriverAdapter> {
  const name = `prisma_migrate_shadow_db_${randomUUID()}`;
  const admin = new Client({ connectionString: databaseUrl });
  await admin.connect();
  await admin.query(`CREATE DATABASE "${name}"`);
  const adapter = await openAdapter(withDatabaseName(databaseUrl, name));
  const close = adapter.dispose.bind(adapter);
  adapter.dispose = async () => {
    await close();
    await admin.query(`DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
    await admin.end();
  };
  return adapter;
}
