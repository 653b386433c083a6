import { Agent, request } from 'node:http';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { readConfig, repoRoot } from '../../libs/config';
import { withDatabase } from '../../libs/testing';
import { ApiShop } from './api-shop';

const db = withDatabase();
const lines: string[] = [];
let api: RunningApi;

beforeAll(async () => {
  const shop = await ApiShop.open(db);
  const read = readConfig({ PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'error', REVRIGHT_DEMO: 'false' });
  if (!read.ok) throw new Error(read.problems.join(' '));
  const securityLog = { write: (line: string) => void lines.push(line) };
  api = await startApi({ config: { ...read.config, logLevel: 'info' }, store: shop.store, securityLog });
  db.beforeClose(() => api.close());
}, 300_000);

interface Told {
  readonly status: number;
  readonly id: string;
  readonly body: { readonly ready?: boolean; readonly detail?: string; readonly requestId?: string };
}

async function get(path: string, headers: Record<string, string> = {}): Promise<Told> {
  const answer = await fetch(`${api.url}/api${path}`, { headers });
  return {
    status: answer.status,
    id: answer.headers.get('x-request-id')!,
    body: (await answer.json()) as Told['body'],
  };
}

const health = () =>
  spawnSync(process.execPath, [join(repoRoot(), 'dist', 'apps', 'worker', 'src', 'health.js')], {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'], DATABASE_URL: db.url },
  });

const withRow = async (insert: string, remove: string, check: () => Promise<void> | void) => {
  await db.pool.query(insert);
  await Promise.resolve(check()).finally(() => db.pool.query(remove));
};

describe('GET /api/health/ready', () => {
  it('is ready while nothing waits, and so are the workers', async () => {
    expect(await get('/health/ready')).toMatchObject({ status: 200, body: { ready: true, oldestWorkSeconds: 0 } });
    expect(health()).toMatchObject({ status: 0, stderr: 'The oldest work has waited for 0 s.\n' });
  });

  it.each([
    [
      'a recheck that nobody has begun',
      `INSERT INTO recheck (id, cause, scope, revision, state, created_at) VALUES (999, 'order', '{"everything":true,"areas":[],"ignoresLookBack":true,"recompute":null}', 1, 'planned', now() - interval '1 hour')`,
      'DELETE FROM recheck WHERE id = 999',
    ],
    [
      'a bell that nobody rings',
      `INSERT INTO outbox (id, topic, payload, created_at) VALUES (999, 'plan-chunks', '{"recheckId":999}', now() - interval '1 hour')`,
      'DELETE FROM outbox WHERE id = 999',
    ],
  ])('is not ready where %s waits longer than it may', (_, insert, remove) =>
    withRow(insert, remove, async () => {
      const { status, body } = await get('/health/ready');
      expect({ status, detail: body.detail }).toEqual({
        status: 503,
        detail: expect.stringMatching(
          /^The oldest work has waited for 36\d\d s, and 900 s is the most: no worker runs/,
        ) as string,
      });
      expect((await get('/health')).status).toBe(200);
      expect(health()).toMatchObject({ status: 1, stderr: expect.stringContaining('has waited for 36') as string });
    }),
  );

  it('is not ready on a database that lacks a migration', async () => {
    const name = `(SELECT max(migration_name) FROM _prisma_migrations WHERE finished_at IS NOT NULL)`;
    await db.pool.query(`UPDATE _prisma_migrations SET rolled_back_at = now() WHERE migration_name = ${name}`);
    const told = await get('/health/ready');
    await db.pool.query('UPDATE _prisma_migrations SET rolled_back_at = NULL');
    expect(told).toMatchObject({
      status: 503,
      body: { detail: expect.stringContaining('wants 1 migrations') as string },
    });
  });
});

describe('a request', () => {
  it('keeps the id it brought where that is well formed, and is given one otherwise', async () => {
    expect((await get('/health', { 'x-request-id': 'proxy-4711-abc' })).id).toBe('proxy-4711-abc');
    const own = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
    for (const odd of ['short', 'Ole Brand, 555 0101', 'x'.repeat(65)])
      expect((await get('/health', { 'x-request-id': odd })).id).toMatch(own);
    expect((await get('/health')).id).toMatch(own);
  });

  it('is told by its id in the security log, also where its body came late', async () => {
    lines.length = 0;
    const headers = { 'content-type': 'application/json', 'x-request-id': 'sign-in-0001' };
    await new Promise((resolve, reject) => {
      const late = request(`${api.url}/api/session`, { method: 'POST', headers }, (answer) =>
        answer.resume().on('end', resolve),
      ).on('error', reject);
      late.write('{"login":"counter",');
      setTimeout(() => late.end('"password":"not the password of anybody"}'), 100);
    });
    expect(lines.map((line) => JSON.parse(line) as { act: string; requestId: string })).toEqual(
      expect.arrayContaining([expect.objectContaining({ act: 'wrong-password', requestId: 'sign-in-0001' })]),
    );
  });

  it('that broke names its id in the problem and in the line of the log', async () => {
    const told: string[] = [];
    const write = process.stderr.write.bind(process.stderr);
    process.stderr.write = (piece: string | Uint8Array) => (told.push(String(piece)), true);
    await db.pool.query('ALTER TABLE outbox RENAME TO outbox_away');
    const { status, body } = await get('/health/ready', { 'x-request-id': 'breaks-0001' });
    await db.pool.query('ALTER TABLE outbox_away RENAME TO outbox');
    process.stderr.write = write;
    expect({ status, requestId: body.requestId }).toEqual({ status: 500, requestId: 'breaks-0001' });
    const line = told
      .map((one) => JSON.parse(one) as { message: string; requestId: string })
      .find(({ message }) => message.includes('/api/health/ready'));
    expect(line).toMatchObject({ message: 'GET /api/health/ready', requestId: 'breaks-0001' });
  });
});

describe('an API that is asked to end', () => {
  it('says on a connection that is open already that it is not ready', async () => {
    const agent = new Agent({ keepAlive: true, maxSockets: 1 });
    const ask = () =>
      new Promise<number>((resolve, reject) => {
        request(`${api.url}/api/health/ready`, { agent }, (answer) => {
          answer.resume().on('end', () => resolve(answer.statusCode!));
        })
          .on('error', reject)
          .end();
      });
    expect(await ask()).toBe(200);
    const closed = api.close();
    expect(await ask()).toBe(503);
    await closed;
    agent.destroy();
  });
});
