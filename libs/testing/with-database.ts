import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import { Client, Pool } from 'pg';
import { withDatabaseName } from '../store/migrate';
import { onServer, testServer } from './test-server';

/** Starting a server and migrating, or fetching a container, may take this long at the first demand. */
export const SERVICE_STARTS_WITHIN_MS = 300_000;
const CONNECTIONS_END_WITHIN_MS = 1_500;

/** A private database of one spec file. */
export interface SpecDatabase {
  readonly url: string;
  /** For looking at what the code under test did; ended by the helper. */
  readonly pool: Pool;
  /**
   * Has something closed before the database goes: an app, a pool. The last one given is closed first.
   * (A spec's own afterAll would run too late: Jest runs them in the order they are written.)
   */
  beforeClose(task: () => unknown): void;
}

/** Such a database outside of a spec's hooks; the caller closes it. */
export interface OpenDatabase extends SpecDatabase {
  /** Drops it. Throws when something has left a connection open, naming what it last did. */
  close(): Promise<void>;
}

/** Makes a private database: migrated, or with `empty` without any table. */
export async function openDatabase({ empty = false } = {}): Promise<OpenDatabase> {
  const server = await testServer();
  const name = `spec_${randomUUID().replaceAll('-', '')}`;
  await onServer(server.url, `CREATE DATABASE ${name} TEMPLATE ${empty ? 'template0' : server.template}`);
  const url = withDatabaseName(server.url, name);
  const pool = new Pool({ connectionString: url, max: 4 });
  pool.on('error', () => undefined);
  const tasks: (() => unknown)[] = [];
  const close = async (): Promise<void> => {
    for (const task of tasks.reverse()) await task();
    await pool.end();
    const left = await connectionsLeft(server.url, name);
    await onServer(server.url, `DROP DATABASE ${name} WITH (FORCE)`);
    if (left.length > 0) throw new Error(`connections to the database were left open: ${left.join('; ')}`);
  };
  return { url, pool, beforeClose: (task) => void tasks.push(task), close };
}

const LEFT_OPEN = `SELECT concat_ws(' ', application_name, left(query, 80)) AS what FROM pg_stat_activity
  WHERE datname = $1 AND backend_type = 'client backend'`;

/** The sessions on that database after a short grace: each with its name and last statement. */
async function connectionsLeft(serverUrl: string, name: string): Promise<readonly string[]> {
  const client = new Client({ connectionString: serverUrl });
  await client.connect();
  try {
    const end = Date.now() + CONNECTIONS_END_WITHIN_MS;
    for (;;) {
      const { rows } = await client.query<{ what: string }>(LEFT_OPEN, [name]);
      if (rows.length === 0 || Date.now() > end) return rows.map(({ what }) => what);
      await pause(50);
    }
  } finally {
    await client.end();
  }
}

/**
 * Gives the spec file (or the describe block) a private, migrated database for its length. Call it at the top; it may
 * be used only inside hooks and tests.
 */
export function withDatabase(options: { readonly empty?: boolean } = {}): SpecDatabase {
  let database: OpenDatabase | undefined;
  const opened = (): OpenDatabase => {
    if (!database) throw new Error('the database is there only inside hooks and tests');
    return database;
  };
  beforeAll(async () => void (database = await openDatabase(options)), SERVICE_STARTS_WITHIN_MS);
  afterAll(() => database?.close());
  return {
    get url() {
      return opened().url;
    },
    get pool() {
      return opened().pool;
    },
    beforeClose: (task) => opened().beforeClose(task),
  };
}
