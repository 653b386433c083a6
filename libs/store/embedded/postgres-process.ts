import { spawn, type ChildProcess } from 'node:child_process';
import { closeSync, openSync, renameSync, statSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { Client } from 'pg';
import { program, type ServerFiles } from './server-files';
import { addressOf } from './server-note';
import { ids, type ServerUser } from './server-user';

const LOG_IS_LONG_BYTES = 10_000_000;
const READY_WITHIN_MS = 120_000;

/**
 * For databases that are thrown away after a test run; a power cut would ruin them.
 * Our own data runs with the server's crash-safe defaults.
 */
const NOT_DURABLE = ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off', 'max_connections=200'];

export interface PostgresPlan {
  readonly files: ServerFiles;
  readonly folder: string;
  readonly user: ServerUser;
  readonly password: string;
  readonly durable: boolean;
  readonly logFile: string;
}

export interface PostgresProcess {
  readonly pid: number;
  /** Address of the database 'postgres' on this server. */
  readonly url: string;
  readonly child: ChildProcess;
}

/** A port of this machine that nobody listens on at this moment. */
export async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done, failed) => server.once('error', failed).listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  await new Promise((done) => server.close(done));
  return port;
}

/**
 * Starts the server and waits until it answers; undefined when it ended by itself (see the log).
 * It gets its own process group, so that Ctrl-C in a terminal reaches only us and we stop it last; its log goes to a
 * file and not through us, so that it can still write when we are gone.
 */
export async function startPostgres(plan: PostgresPlan): Promise<PostgresProcess | undefined> {
  const port = await freePort();
  if ((statSync(plan.logFile, { throwIfNoEntry: false })?.size ?? 0) > LOG_IS_LONG_BYTES) {
    renameSync(plan.logFile, `${plan.logFile}.old`);
  }
  const log = openSync(plan.logFile, 'a', 0o600);
  const settings = ['listen_addresses=127.0.0.1', 'unix_socket_directories=', 'timezone=UTC', 'log_timezone=UTC'];
  const flags = [...settings, ...(plan.durable ? [] : NOT_DURABLE)].flatMap((setting) => ['-c', setting]);
  const child = spawn(program(plan.files, 'postgres'), ['-D', plan.folder, '-p', String(port), ...flags], {
    cwd: '/',
    detached: true,
    env: { PATH: process.env['PATH'], LC_ALL: 'C' },
    stdio: ['ignore', log, log],
    ...ids(plan.user),
  });
  closeSync(log);
  // A running database alone is no reason for our process to stay.
  child.unref();
  child.once('error', () => undefined);
  const url = addressOf(plan.password, port);
  return (await answers(child, url)) ? { pid: child.pid!, url, child } : undefined;
}

/** Asks until the server lets us in; false when the process ended before. */
async function answers(child: ChildProcess, url: string): Promise<boolean> {
  const end = Date.now() + READY_WITHIN_MS;
  while (child.pid !== undefined && child.exitCode === null && child.signalCode === null && Date.now() < end) {
    const client = new Client({ connectionString: url, connectionTimeoutMillis: 2_000 });
    client.on('error', () => undefined);
    try {
      await client.connect();
      await client.end();
      return true;
    } catch {
      await pause(40);
    }
  }
  if (child.exitCode === null && child.signalCode === null) child.kill('SIGQUIT');
  return false;
}
