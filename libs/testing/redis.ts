import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createConnection } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { freePort } from '../store/embedded';
import { removeContainer, startContainer } from './container';
import { installDebianPackage } from './debian-package';
import { onPath } from './on-path';
import { folderInRun, noteProcess, oneAtATime } from './run-folder';
import { SERVICE_STARTS_WITHIN_MS } from './with-database';

/** A Redis of one spec file, shared with nobody. */
export interface RedisServer {
  readonly url: string;
  readonly port: number;
  stop(): Promise<void>;
}

const ANSWERS_WITHIN_MS = 20_000;
const POLICY = ['--save', '', '--appendonly', 'no', '--maxmemory-policy', 'noeviction'];
const findProgram = (): string | undefined => onPath('redis-server', 'valkey-server');

/**
 * Starts a private, empty Redis without persistence: redis-server or valkey-server on PATH, else a container where
 * Docker answers, else installed by apt-get where that is possible; throws one sentence otherwise.
 * `port`: to bring it up again where an earlier one was stopped; default a free one.
 */
export async function startRedis({ port }: { readonly port?: number } = {}): Promise<RedisServer> {
  const found = findProgram();
  if (found) return startProgram(found, port);
  const contained = await startContained();
  if (contained) return contained;
  return startProgram(await installed(), port);
}

const installed = (): Promise<string> =>
  oneAtATime(() => {
    const refusal = findProgram() ? undefined : installDebianPackage('redis-server');
    const program = findProgram();
    if (program) return program;
    throw new Error(
      `The queue tests need redis-server or valkey-server on PATH or a Docker that answers, and ${refusal ?? 'the package brought none'}.`,
    );
  });

async function startProgram(program: string, wanted?: number): Promise<RedisServer> {
  const port = wanted ?? (await freePort());
  const place = ['--port', String(port), '--bind', '127.0.0.1', '--dir', folderInRun('redis')];
  const child = spawn(program, [...place, ...POLICY], { stdio: 'ignore' });
  child.unref();
  const ended = once(child, 'exit');
  if (child.pid !== undefined) noteProcess(child.pid);
  await answers(port, () => child.exitCode === null);
  const stop = async (): Promise<void> => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    child.ref();
    child.kill('SIGTERM');
    await ended;
  };
  return { url: `redis://127.0.0.1:${port}`, port, stop };
}

async function startContained(): Promise<RedisServer | undefined> {
  const container = await startContainer({
    image: 'redis:7-alpine',
    port: 6379,
    command: ['redis-server', ...POLICY],
    ready: [/Ready to accept connections/, 1],
  });
  if (!container) return undefined;
  const port = Number(container.address.split(':').at(-1));
  return { url: `redis://${container.address}`, port, stop: () => removeContainer(container.id) };
}

/** Waits until somebody listens on the port. */
async function answers(port: number, alive: () => boolean): Promise<void> {
  const end = Date.now() + ANSWERS_WITHIN_MS;
  while (alive() && Date.now() < end) {
    const socket = createConnection({ host: '127.0.0.1', port });
    const connected = await new Promise((done) => {
      socket.once('connect', () => done(true)).once('error', () => done(false));
    });
    socket.destroy();
    if (connected) return;
    await pause(20);
  }
  throw new Error(`redis-server did not start on port ${port}.`);
}

/** Gives the spec file (or the describe block) a private Redis for its length. Read `url` only inside hooks and tests. */
export function withRedis(): Pick<RedisServer, 'url' | 'port'> {
  let server: RedisServer | undefined;
  const started = (): RedisServer => {
    if (!server) throw new Error('the Redis is there only inside hooks and tests');
    return server;
  };
  beforeAll(async () => void (server = await startRedis()), SERVICE_STARTS_WITHIN_MS);
  afterAll(() => server?.stop());
  return {
    get url() {
      return started().url;
    },
    get port() {
      return started().port;
    },
  };
}
