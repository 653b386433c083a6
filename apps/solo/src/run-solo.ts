import { type Config } from '../../../libs/config';
import { embeddedProblemSentence, startEmbedded } from '../../../libs/store/embedded';
import { prepareDatabase, type DatabaseAddresses } from '../../../libs/store/migrate';
import { addressProblem, listenProblem } from './listen-problem';

/** The configuration with the database found. */
export type RunningConfig = Config & { readonly databaseUrl: string };

/** What runs until it is closed. */
export interface Running {
  close(): Promise<void>;
}

/** The parts that solo wires together on a migrated database; it has no logic of its own. */
export interface SoloParts extends Running {
  /** Fills an empty database with the demo shop; does nothing when it holds anything. */
  seedIfEmpty(): Promise<void>;
  startWorker(): Promise<Running>;
  /** Listens when it resolves. */
  startApi(): Promise<Running & { readonly url: string }>;
  /** The sentence of a start that a part refuses; undefined for any other error. */
  refusalOf(error: unknown): string | undefined;
}

export type OpenParts = (config: RunningConfig, say: Say) => SoloParts | Promise<SoloParts>;
export type Say = (sentence: string) => void;

export interface Solo {
  readonly address: string;
  /** Resolves with a sentence when the database ends by itself. */
  readonly lost: Promise<string>;
  /** Closes the page, then the worker, then the database. May be called more than once. */
  stop(): Promise<void>;
}

export type SoloResult = { readonly ok: true; readonly solo: Solo } | { readonly ok: false; readonly problem: string };

/**
 * Starts everything in order: database, migrations, demo shop, worker, page. What was started is closed again when a
 * later step fails. An expected failure is answered as one sentence; `say` gets what is worth knowing meanwhile.
 */
export async function runSolo(config: Config, openParts: OpenParts, say: Say): Promise<SoloResult> {
  const started: (() => Promise<void>)[] = [];
  let stopping: Promise<void> | undefined;
  const stop = (): Promise<void> => (stopping ??= closeAll(started));
  const database = await startDatabase(config);
  if (!database.ok) return database;
  started.push(database.stop);
  if (database.notice) say(database.notice);
  let parts: SoloParts | undefined;
  try {
    const taken = await addressProblem(config);
    if (taken !== undefined) {
      await stop();
      return { ok: false, problem: taken };
    }
    const running = { ...config, ...database.addresses };
    const prepared = await prepareDatabase(database.addresses);
    if (!prepared.ok) {
      await stop();
      return prepared;
    }
    if (prepared.applied.length > 0) say(`Database brought up to date (${prepared.applied.length} migrations).`);
    const opened = (parts = await openParts(running, say));
    started.push(() => opened.close());
    if (config.demo) await opened.seedIfEmpty();
    const worker = await opened.startWorker();
    started.push(() => worker.close());
    const api = await opened.startApi();
    started.push(() => api.close());
    const lost = database.ended.then(() => 'The database has ended by itself; its log is in the data folder.');
    return { ok: true, solo: { address: api.url, lost, stop } };
  } catch (error) {
    await stop();
    const problem = parts?.refusalOf(error) ?? listenProblem(error, config);
    if (problem) return { ok: false, problem };
    throw error;
  }
}

/** The last started is closed first. */
async function closeAll(started: readonly (() => Promise<void>)[]): Promise<void> {
  for (const close of started.toReversed()) await close();
}

interface Database {
  readonly ok: true;
  readonly addresses: DatabaseAddresses;
  readonly notice?: string | undefined;
  readonly ended: Promise<void>;
  readonly stop: () => Promise<void>;
}

/** The given PostgreSQL, or our own. */
async function startDatabase(config: Config): Promise<Database | { readonly ok: false; readonly problem: string }> {
  const { databaseUrl, migrationDatabaseUrl } = config;
  if (databaseUrl !== undefined) {
    const addresses = { databaseUrl, migrationDatabaseUrl };
    return { ok: true, addresses, ended: new Promise(() => undefined), stop: () => Promise.resolve() };
  }
  const result = await startEmbedded({ dataFolder: config.dataFolder });
  if (!result.ok) return { ok: false, problem: embeddedProblemSentence(result.problem) };
  const { server } = result;
  const addresses = { databaseUrl: server.appUrl, migrationDatabaseUrl: server.url };
  return { ok: true, addresses, notice: server.notice, ended: server.ended, stop: () => server.stop() };
}
