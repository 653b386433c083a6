import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { Pool } from 'pg';
import { Redis } from 'ioredis';
import { startWorker } from '../../apps/worker/src/start-worker';
import { repoRoot } from '../../libs/config';
import type { Running } from '../../libs/queue';
import { applyMigrations } from '../../libs/store/migrate';
import { embeddedProblemSentence, startEmbedded, type EmbeddedServer } from '../../libs/store/embedded';
import { folderInRun, noteProcess, startRedis, type RedisServer } from '../../libs/testing';
import type { Clock } from '../../libs/usecases';
import { SmallShop } from '../recheck/small-shop';
import { Door } from './door';

/** Units a chunk: few, so that a recheck has many moments at which something can happen. */
export const CHUNK_UNITS = 20;
const NEVER_MS = 2_000_000_000;

/**
 * A crash-safe PostgreSQL, a Redis and a small shop that belong to the suite alone, and the workers it lets loose on
 * them. Everything speaks to the database through one door, so that the server may go and come back.
 */
export class House {
  private readonly workers: Running[] = [];
  private readonly children = new Set<ChildProcess>();
  /** Without it nothing that was lost is looked for: the control that must fail. */
  sweeper = true;

  private constructor(
    readonly door: Door,
    readonly url: string,
    readonly pool: Pool,
    readonly shop: SmallShop,
    private server: EmbeddedServer,
    private readonly folder: string,
    private redisServer: RedisServer,
  ) {}

  static async open(): Promise<House> {
    const folder = folderInRun('faults');
    const server = await startServer(folder);
    await applyMigrations(server.url);
    const door = await Door.open(portOf(server));
    const at = new URL(server.url);
    at.port = String(door.port);
    const pool = new Pool({ connectionString: at.href, max: 3, connectionTimeoutMillis: 5_000 });
    pool.on('error', () => undefined);
    const shop = await SmallShop.open(at.href, pool);
    return new House(door, at.href, pool, shop, server, folder, await startRedis());
  }

  get redisUrl(): string {
    return this.redisServer.url;
  }

  /** A worker inside this process; through the queue or without it. */
  async work(how: 'queue' | 'alone', clock: Clock = this.shop.clock, store = this.shop.store): Promise<Running> {
    const redisUrl = how === 'queue' ? this.redisUrl : undefined;
    const worker = await startWorker({
      config: { redisUrl, workerConcurrency: 2, timeZone: 'UTC', chunkUnits: CHUNK_UNITS },
      store,
      clock,
      sweepEveryMs: this.sweeper ? 500 : NEVER_MS,
    });
    this.workers.push(worker);
    return worker;
  }

  /** A worker process; resolves when it says that it is ready. */
  workerProcess(): Promise<ChildProcess> {
    return this.process('apps/worker/src/main.js', { WORKER_CONCURRENCY: '1', CHUNK_UNITS: String(CHUNK_UNITS) });
  }

  /** A worker process that is held up for so long whenever it judges the unit. */
  spinningWorker(unitId: number, spinMs: number, idleLimitMs: number): Promise<ChildProcess> {
    const spin = { SPIN_UNIT: String(unitId), SPIN_MS: String(spinMs), IDLE_LIMIT_MS: String(idleLimitMs) };
    return this.process('test/faults/spinning-worker.js', spin);
  }

  /** An API process on that port; on the house's database unless the environment says otherwise. */
  apiProcess(port: number, more: Readonly<Record<string, string>> = {}): Promise<ChildProcess> {
    return this.process('apps/api/src/main.js', { PORT: String(port), NODE_ENV: 'test', ...more });
  }

  /** The same, in a process that can be weighed (`weighed.ts`). */
  weighedApi(port: number, more: Readonly<Record<string, string>>): Promise<ChildProcess> {
    const before = ['--expose-gc', '--require', built('test/faults/weighed.js')];
    return this.process('apps/api/src/main.js', { PORT: String(port), NODE_ENV: 'test', ...more }, before);
  }

  /** Starts a program of the build; resolves when it says its first word. */
  private async process(
    program: string,
    more: Readonly<Record<string, string>>,
    before: readonly string[] = [],
  ): Promise<ChildProcess> {
    const env = { ...process.env, DATABASE_URL: this.url, REDIS_URL: this.redisUrl, TIME_ZONE: 'UTC' };
    const child = spawn(process.execPath, [...before, built(program)], {
      env: { ...env, LOG_LEVEL: 'info', ...more },
      stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    });
    this.children.add(child);
    child.once('exit', () => this.children.delete(child));
    await Promise.race([once(child.stdout!, 'data'), once(child.stderr!, 'data'), once(child, 'exit')]);
    child.stdout!.resume();
    child.stderr!.resume();
    if (child.exitCode !== null) throw new Error(`${program} ended before it was ready`);
    return child;
  }

  /** Ends every worker, so that the next fault begins with an empty house. */
  async rest(): Promise<void> {
    for (const child of this.children) child.kill('SIGKILL');
    await Promise.all(this.workers.splice(0).map((one) => one.close()));
  }

  async flushRedis(): Promise<void> {
    const client = new Redis(this.redisUrl);
    await client.flushall();
    client.disconnect();
  }

  stopRedis = (): Promise<void> => this.redisServer.stop();

  async returnRedis(): Promise<void> {
    this.redisServer = await startRedis({ port: this.redisServer.port });
  }

  /** PostgreSQL ends at once, without writing anything more: as if its machine had stopped. */
  async breakDatabase(): Promise<void> {
    process.kill(this.server.pid, 'SIGQUIT');
    await this.server.ended;
    await this.server.stop();
  }

  async returnDatabase(): Promise<void> {
    this.server = await startServer(this.folder);
    this.door.leadTo(portOf(this.server));
  }

  /** Ends the sessions of the program, not the suite's own; answers how many. */
  async cutSessions(): Promise<number> {
    const { rowCount } = await this.pool.query(
      `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
       WHERE application_name LIKE 'revright%' AND datname = current_database()`,
    );
    return rowCount ?? 0;
  }

  async close(): Promise<void> {
    await this.rest();
    await this.shop.store.close();
    await this.pool.end();
    await this.door.close();
    await Promise.all([this.server.stop(), this.redisServer.stop()]);
  }
}

async function startServer(dataFolder: string): Promise<EmbeddedServer> {
  const result = await startEmbedded({ dataFolder });
  if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
  noteProcess(result.server.pid);
  return result.server;
}

/** A program of the build. */
const built = (program: string): string => join(repoRoot(), 'dist', program);

const portOf = ({ url }: EmbeddedServer): number => Number(new URL(url).port);
