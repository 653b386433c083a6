import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Redis } from 'ioredis';
import { repoRoot } from '../../libs/config';
import { withDatabase, withRedis } from '../../libs/testing';
import { workerArguments } from './worker-arguments';

describe('a worker process', () => {
  const db = withDatabase();
  const redis = withRedis();
  const children: ChildProcess[] = [];
  afterAll(() => children.forEach((child) => child.kill('SIGKILL')));

  function start(more: Record<string, string>) {
    const { DATABASE_URL: _, REDIS_URL: __, ...rest } = process.env;
    const env = { ...rest, LOG_LEVEL: 'info', ...more };
    const child = spawn(process.execPath, workerArguments(), { cwd: repoRoot(), env });
    children.push(child);
    let told = '';
    child.stderr.on('data', (piece) => (told += String(piece)));
    const ready = once(child.stdout, 'data');
    const ended = once(child, 'exit').then(([code]) => ({ code: code as number | null, told: told.trim() }));
    return { child, ready, ended };
  }

  it('is held to the same memory with compose as by npm', () => {
    const compose = readFileSync(join(repoRoot(), 'docker-compose.yml'), 'utf8');
    const limits = workerArguments().filter((one) => /size|percent/.test(one));
    expect(limits).toHaveLength(2);
    const command = [...compose.matchAll(/^ {4}command:\s*\[([^\]]*worker[^\]]*)\]/gm)][0]![1]!;
    expect(
      command
        .split(',')
        .map((word) => word.trim())
        .filter(Boolean),
    ).toEqual(['node', ...workerArguments()]);
  });

  it('asks for DATABASE_URL and REDIS_URL in one sentence', async () => {
    expect(await start({}).ended).toEqual({
      code: 1,
      told: 'A worker of its own needs DATABASE_URL and REDIS_URL; without them `npm start` does its work too.',
    });
  }, 60_000);

  it('refuses a Redis that may throw keys away', async () => {
    const client = new Redis(redis.url);
    await client.config('SET', 'maxmemory-policy', 'allkeys-lru');
    const { code, told } = await start({ DATABASE_URL: db.url, REDIS_URL: redis.url }).ended;
    await client.config('SET', 'maxmemory-policy', 'noeviction');
    client.disconnect();
    expect([code, told]).toEqual([
      1,
      "The Redis of REDIS_URL has maxmemory-policy 'allkeys-lru', but must have 'noeviction'.",
    ]);
  }, 60_000);

  it('says that it is ready, and ends in good order when asked to', async () => {
    const { child, ready, ended } = start({ DATABASE_URL: db.url, REDIS_URL: redis.url });
    await ready;
    child.kill('SIGTERM');
    expect((await ended).code).toBe(0);
  }, 60_000);
});
