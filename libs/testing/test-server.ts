import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import { embeddedProblemSentence, startEmbedded } from '../store/embedded';
import { applyMigrations, withDatabaseName } from '../store/migrate';
import { removeContainer, startContainer } from './container';
import { folderInRun, noteProcess, oneAtATime, runFolder } from './run-folder';

/** The PostgreSQL all spec files of a run share; each file gets a database of its own on it. */
export interface TestServer {
  /** Address of a database one may connect to in order to make others. */
  readonly url: string;
  /** A migrated, otherwise empty database that is copied for each spec file. */
  readonly template: string;
  readonly containerId?: string;
}

const noteFile = (): string => join(runFolder(), 'postgres.json');
const noted = (): TestServer | undefined =>
  existsSync(noteFile()) ? (JSON.parse(readFileSync(noteFile(), 'utf8')) as TestServer) : undefined;

/**
 * The server of this run, started at the first call by whichever process comes first: TEST_DATABASE_URL or
 * DATABASE_URL when given, else a container where Docker answers, else the PostgreSQL of the npm package.
 */
export async function testServer(): Promise<TestServer> {
  return (
    noted() ??
    oneAtATime(async () => {
      const existing = noted();
      if (existing) return existing;
      const place = given() ?? (await contained()) ?? (await embedded());
      const template = `revright_template_${randomUUID().slice(0, 8)}`;
      await onServer(place.url, `CREATE DATABASE ${template}`);
      await applyMigrations(withDatabaseName(place.url, template));
      const server = { ...place, template };
      writeFileSync(noteFile(), JSON.stringify(server), { mode: 0o600 });
      return server;
    })
  );
}

type Place = Omit<TestServer, 'template'>;

const given = (): Place | undefined => {
  const url = process.env['TEST_DATABASE_URL'] || process.env['DATABASE_URL'];
  return url ? { url } : undefined;
};

async function contained(): Promise<Place | undefined> {
  const container = await startContainer({
    image: 'postgres:18-alpine',
    port: 5432,
    env: { POSTGRES_PASSWORD: 'only-for-tests' },
    // It says so twice: once for the server that sets the database up, once for the one that stays.
    ready: [/database system is ready to accept connections/, 2],
  });
  if (!container) return undefined;
  return { url: `postgresql://postgres:only-for-tests@${container.address}/postgres`, containerId: container.id };
}

async function embedded(): Promise<Place> {
  const result = await startEmbedded({ dataFolder: folderInRun('postgres'), durable: false });
  if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
  noteProcess(result.server.pid);
  return { url: result.server.url };
}

/** Runs one statement on that database over a connection of its own. */
export async function onServer(url: string, statement: string): Promise<void> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

/** Ends what the run made on a server it does not own, and a container; an own server ends with the run's folder. */
export async function stopTestServer(): Promise<void> {
  const server = noted();
  if (!server) return;
  if (server.containerId) await removeContainer(server.containerId);
  else if (given()) await onServer(server.url, `DROP DATABASE IF EXISTS ${server.template} WITH (FORCE)`);
}
