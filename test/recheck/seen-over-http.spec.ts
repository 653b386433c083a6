import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { startWorker } from '../../apps/worker/src/start-worker';
import { readConfig } from '../../libs/config';
import type { RecheckView } from '../../libs/contracts';
import { formatDay } from '../../libs/day';
import { hashPassword } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { publishBulletin, saveBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';
import { until, value } from './wait';

const UNITS = 600;
const PASSWORD = 'a long enough password';

describe('what people see of a recheck', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let api: RunningApi;
  const cookies = new Map<string, string>();

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    const hash = await hashPassword(PASSWORD);
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id) VALUES ('ada', 'Ada Lund', 'administrator', 1)`,
    );
    await db.pool.query('UPDATE person SET password_hash = $1', [hash]);
    const env = { DATABASE_URL: db.url, PORT: '0', TIME_ZONE: 'UTC', LOG_LEVEL: 'silent', NODE_ENV: 'test' };
    const read = readConfig(env);
    if (!read.ok) throw new Error(read.problems.join(' '));
    api = await startApi({ config: read.config, store: shop.store });
    const config = { redisUrl: undefined, workerConcurrency: 1, timeZone: 'UTC', chunkUnits: 20 };
    const worker = await startWorker({ config, store: shop.store, clock: shop.clock });
    db.beforeClose(async () => {
      await api.close();
      await worker.close();
      await shop.store.close();
    });
    for (const login of ['mara', 'ada']) cookies.set(login, await signIn(login));
  }, 120_000);

  async function signIn(login: string): Promise<string> {
    const answer = await fetch(`${api.url}/api/session`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ login, password: PASSWORD }),
    });
    return answer.headers.getSetCookie()[0]!.split(';')[0]!;
  }
  const ask = (who: string, path: string) => fetch(`${api.url}/api${path}`, { headers: { cookie: cookies.get(who)! } });
  const recheck = async (id: number) => (await (await ask('mara', `/rechecks/${id}`)).json()) as RecheckView;

  it('is how far it has come, at what pace and how long it still takes; at the end what was set aside and why', async () => {
    const built = { from: '1990-01-01', to: '1991-01-01' };
    const units = await shop.many(UNITS, formatDay(TODAY - 100), [built.from, built.to]);
    await db.pool.query(`UPDATE install SET verdict = 'outdated', judgement = '"spoilt"' WHERE unit_id = $1`, [
      units[UNITS - 1],
    ]);
    const one = rule('FR-1990', { built, required: 'HOLM/B', action: 'call-back' });
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin('SB-1990', [one])));
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));

    let midway: RecheckView | null = null;
    await until(async () => {
      const seen = await recheck(recheckId);
      if (seen.state === 'running' && seen.judged > 0) midway ??= seen;
      return seen.state === 'done';
    });
    const running = midway as RecheckView | null;
    expect(running).toMatchObject({ planned: 2 * UNITS, finishedAt: null });
    expect(running!.perSecond).toBeGreaterThan(0);
    expect(running!.secondsLeft).toBeCloseTo((running!.planned - running!.judged) / running!.perSecond!, 3);

    const done = await recheck(recheckId);
    expect(done).toMatchObject({
      judged: 2 * (UNITS - 1),
      changed: 2 * (UNITS - 1),
      callbacksOpened: UNITS - 1,
      callbacksClosed: 0,
      flagsRaised: 0,
      setAside: 1,
      secondsLeft: null,
    });
    expect(done.setAsideWhy).toHaveLength(1);
    expect(done.setAsideWhy[0]).toMatch(new RegExp(`^Unit ${units[UNITS - 1]}: .+`));
    expect(Date.parse(done.finishedAt!)).toBeGreaterThanOrEqual(Date.parse(done.startedAt!));
  }, 60_000);

  it('is for an administrator also how the queue stands, in the form monitoring programs read', async () => {
    expect((await ask('mara', '/metrics')).status).toBe(403);
    const answer = await ask('ada', '/metrics');
    expect(answer.headers.get('content-type')).toBe('text/plain; version=0.0.4; charset=utf-8');
    const text = await answer.text();
    expect(text).toMatch(/^revright_recheck_done\{queue="rechecks"\} 1$/m);
    expect(text).toMatch(/^revright_recheck_chunks_waiting\{queue="rechecks"\} 0$/m);
    expect(text).toMatch(/^revright_recheck_set_aside\{queue="rechecks"\} 1$/m);
    expect(text).toMatch(/^# TYPE revright_recheck_worker_concurrency gauge$/m);
  });

  it('tells how old work is that nobody has done yet, and which workers are there', async () => {
    await db.pool.query(
      `INSERT INTO outbox (topic, payload, created_at, leased_until)
       VALUES ('plan-chunks', '{"recheckId": 999}', now() - INTERVAL '90 seconds', now() + INTERVAL '1 hour')`,
    );
    const client = await db.pool.connect();
    await client.query(`SET application_name = 'revright worker bench-pc:41 x3'`);
    const text = await (await ask('ada', '/metrics')).text();
    await client.query('RESET application_name');
    client.release();
    expect(text).toMatch(/^revright_recheck_bells_waiting\{queue="rechecks"\} 1$/m);
    expect(Number(/^revright_recheck_oldest_bell_seconds\S* (\S+)$/m.exec(text)![1])).toBeGreaterThanOrEqual(90);
    expect(text).toContain('revright_recheck_worker_concurrency{queue="rechecks",worker="bench-pc:41"} 3');
  });
});
