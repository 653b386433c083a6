import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import { openStore, type OpenStore } from '../../libs/store';
import { withDatabase } from '../../libs/testing';

const db = withDatabase();
let store: OpenStore;
let running: RunningApi | null = null;

const GOOD = 'eleven grey herons at noon';

async function start(env: Record<string, string> = {}): Promise<RunningApi> {
  await running?.close();
  const read = readConfig({ PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'error', REVRIGHT_DEMO: 'false', ...env });
  if (!read.ok) throw new Error(read.problems.join(' '));
  return (running = await startApi({ config: read.config, store }));
}

beforeAll(() => {
  store = openStore({ url: db.url, poolSize: 4 });
  db.beforeClose(() => store.close());
  db.beforeClose(() => running?.close());
});

const linkOf = ({ notices }: RunningApi): string => /http\S+\/welcome#([\w-]{43})/.exec(notices.join(' '))?.[1] ?? '';

const enter = async (api: RunningApi, token: string) =>
  (
    await fetch(`${api.url}/api/session/link`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ token, password: GOOD }),
    })
  ).status;

describe('the first start of an empty shop', () => {
  it('prints a link to set the one administrator’s password; each start a new one until it is used, then none', async () => {
    const first = linkOf(await start({ NODE_ENV: 'production' }));
    expect(first).not.toBe('');
    const api = await start();
    const second = linkOf(api);
    expect(second).not.toBe('');
    expect(await enter(api, first)).toBe(403);
    expect(await enter(api, second)).toBe(200);
    expect(await enter(api, second)).toBe(403);
    const { rows } = await db.pool.query('SELECT login, role FROM person');
    expect(rows).toEqual([{ login: 'administrator', role: 'administrator' }]);
    expect((await start()).notices).toEqual([]);
  });
});

describe('the demo shop', () => {
  it('is not run in production, whatever the environment asks for', async () => {
    await db.pool.query(`INSERT INTO setting (key, value) VALUES ('demo-shop', 'true')`);
    await expect(start({ NODE_ENV: 'production' })).rejects.toThrow('holds the demo shop');
    const asked = readConfig({ NODE_ENV: 'production', REVRIGHT_DEMO: 'true' });
    expect(asked).toMatchObject({ ok: false, problems: [expect.stringContaining('REVRIGHT_DEMO')] });
    expect((await start()).url).toContain('http');
  });
});
