import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { APP_ROLE } from '../audit/work-as-app';
import {
  appPassword,
  databaseFolder,
  databasePassword,
  makeDatabasePassword,
  prepareDataFolder,
} from './database-folder';
import { type EmbeddedProblem } from './embedded-problem';
import { lockFolder } from './folder-lock';
import { clusterVersion, makeCluster } from './make-cluster';
import { startPostgres, type PostgresProcess } from './postgres-process';
import { reachableServerFiles } from './reachable-place';
import { stopProcess } from './running-process';
import { installedServerFiles, platformName, type ServerFiles } from './server-files';
import { serverUser, type ServerUser } from './server-user';
import { stopOrphan } from './stop-orphan';

/** A running PostgreSQL of our own. */
export interface EmbeddedServer {
  /** Address of its database 'postgres', as the owner of the tables signs in. */
  readonly url: string;
  /** The same as the programs sign in, once they were let in (`letAppIn`). */
  readonly appUrl: string;
  readonly pid: number;
  /** Set when the database does not lie in the data folder: one sentence that says where. */
  readonly notice: string | undefined;
  /** Resolves when the server has ended, asked for or not. */
  readonly ended: Promise<void>;
  /** Stops the server and gives the data folder free. May be called more than once. */
  stop(): Promise<void>;
}

export type EmbeddedResult =
  { readonly ok: true; readonly server: EmbeddedServer } | { readonly ok: false; readonly problem: EmbeddedProblem };

export interface EmbeddedOptions {
  readonly dataFolder: string;
  /** False only for databases that are thrown away after a test run. Default true: crash-safe. */
  readonly durable?: boolean;
}

/**
 * Starts the PostgreSQL that came with the npm packages on a data folder, making it at the first start.
 * As root it runs as an unprivileged user. A folder left by a killed copy is recovered: its lock is taken over, a
 * server it left behind is stopped, and PostgreSQL replays its log.
 */
export async function startEmbedded({ dataFolder, durable = true }: EmbeddedOptions): Promise<EmbeddedResult> {
  const data = resolve(dataFolder);
  const installed = installedServerFiles();
  if (!installed) return refuse({ code: 'no-server-files', platform: platformName() });
  const user = serverUser();
  if (!user) return refuse({ code: 'no-unprivileged-user' });
  const unwritable = prepareDataFolder(data);
  if (unwritable) return refuse(unwritable);
  const lock = await lockFolder(data);
  if (!lock.ok) return refuse({ code: 'folder-in-use', folder: data, pid: lock.pid });
  try {
    const result = await startLocked(data, reachableServerFiles(installed, user), user, durable, lock.release);
    if (!result.ok) lock.release();
    return result;
  } catch (error) {
    lock.release();
    throw error;
  }
}

const refuse = (problem: EmbeddedProblem): EmbeddedResult => ({ ok: false, problem });

async function startLocked(
  data: string,
  files: ServerFiles,
  user: ServerUser,
  durable: boolean,
  release: () => void,
): Promise<EmbeddedResult> {
  const { folder, notice } = databaseFolder(data, user);
  const expected = files.version.split('.')[0]!;
  const found = clusterVersion(folder);
  if (found !== undefined && found !== expected) return refuse({ code: 'other-version', folder, found, expected });
  const password = found === undefined ? makeDatabasePassword(data) : databasePassword(data);
  if (password === undefined) return refuse({ code: 'password-missing', folder: data });
  if (found === undefined) await makeCluster({ files, folder, user, password, durable });
  await stopOrphan(folder);
  const logFile = join(data, 'database.log');
  const started = await startPostgres({ files, folder, user, password, durable, logFile });
  if (!started) return refuse({ code: 'did-not-start', logFile, lastLine: lastLineOf(logFile) });
  const appUrl = signedInAs(started.url, APP_ROLE, appPassword(data));
  return { ok: true, server: { ...running(started, notice, release), appUrl } };
}

function signedInAs(url: string, user: string, password: string): string {
  const address = new URL(url);
  address.username = user;
  address.password = password;
  return address.toString();
}

function running(
  { child, pid, url }: PostgresProcess,
  notice: string | undefined,
  release: () => void,
): Omit<EmbeddedServer, 'appUrl'> {
  const ended = new Promise<void>((done) => child.once('exit', () => done()));
  let stopping: Promise<void> | undefined;
  const stop = async (): Promise<void> => {
    if (child.exitCode === null && child.signalCode === null) {
      // Now it is a reason to stay: our process must not run out of work before it has heard of the end.
      child.ref();
      await Promise.all([stopProcess(pid), ended]);
    }
    release();
  };
  return { url, pid, notice, ended, stop: () => (stopping ??= stop()) };
}

const lastLineOf = (file: string): string => readFileSync(file, 'utf8').trim().split('\n').at(-1) ?? '';
