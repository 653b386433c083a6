import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { Redis } from 'ioredis';
import { startWorker } from '../../apps/worker/src/start-worker';
import { repoRoot } from '../../libs/config';
import { formatDay } from '../../libs/day';
import type { Running } from '../../libs/queue';
import { startRedis, withDatabase, type RedisServer } from '../../libs/testing';
import {
  attemptCallback,
  judgeChunk,
  judgeUnit,
  planChunks,
  publishBulletin,
  saveBulletin,
  settleCallback,
} from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';
import { finished, until, value } from './wait';

const RECENT = formatDay(TODAY - 100);
const UNITS = 800;

describe('nothing is lost and nothing happens twice', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let redis: RedisServer;
  const running: Running[] = [];
  const children: ChildProcess[] = [];
  let year = 1990;

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    redis = await startRedis();
    db.beforeClose(async () => {
      for (const child of children) child.kill('SIGKILL');
      await Promise.all(running.map((one) => one.close()));
      await shop.store.close();
      await redis.stop();
    });
  }, 60_000);
  afterEach(async () => {
    await Promise.all(running.splice(0).map((one) => one.close()));
  });

  /** Units built in a year of their own, and a saved bulletin that calls every one of them. */
  async function scene(count: number) {
    const [since, to] = [`${++year}-01-01`, `${year + 1}-01-01`];
    const units = await shop.many(count, RECENT, [since, to]);
    const one = rule(`FR-${year}`, { built: { from: since, to }, required: 'HOLM/B', action: 'call-back' });
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin(`SB-${year}`, [one])));
    return { units, id };
  }
  const publish = (id: number) => value(publishBulletin(shop.ports, manager, { id, version: 1 }));

  async function callsOf(units: readonly number[]) {
    const { rows } = await db.pool.query<{ callbacks: number; units: number; reasons: number }>(
      `SELECT count(DISTINCT c.id)::int AS callbacks, count(DISTINCT c.unit_id)::int AS units, count(r.id)::int AS reasons
       FROM callback c JOIN callback_reason r ON r.callback_id = c.id WHERE c.unit_id = ANY($1)`,
      [units],
    );
    return rows[0];
  }
  const everyOneOnce = (count: number) => ({ callbacks: count, units: count, reasons: 2 * count });

  async function work(redisUrl: string | undefined) {
    const config = { redisUrl, workerConcurrency: 2, timeZone: 'UTC' };
    running.push(await startWorker({ config, store: shop.store, clock: shop.clock, sweepEveryMs: 500 }));
  }
  function workerProcess(): ChildProcess {
    const env = {
      ...process.env,
      DATABASE_URL: db.url,
      REDIS_URL: redis.url,
      WORKER_CONCURRENCY: '1',
      TIME_ZONE: 'UTC',
    };
    const main = join(repoRoot(), 'dist', 'apps', 'worker', 'src', 'main.js');
    const child = spawn(process.execPath, [main], { env, stdio: 'ignore' });
    children.push(child);
    return child;
  }
  const judgedSoFar = async (id: number) => (await shop.store.rechecks.find(id))!.judged;

  it('finishes a recheck whose worker was killed in mid-work', async () => {
    const { units, id } = await scene(UNITS);
    const first = workerProcess();
    const { recheckId } = await publish(id);
    await until(async () => (await judgedSoFar(recheckId)) > 0);
    first.kill('SIGKILL');
    await once(first, 'exit');
    const then = await judgedSoFar(recheckId);
    expect(then).toBeLessThan(2 * UNITS);
    workerProcess();
    expect(await finished(shop.store, recheckId)).toMatchObject({
      judged: 2 * UNITS,
      callbacksOpened: UNITS,
      setAside: 0,
    });
    expect(await callsOf(units)).toEqual(everyOneOnce(UNITS));
    for (const child of children.splice(0)) child.kill('SIGTERM');
  }, 90_000);

  it('finishes a recheck although the queue forgot everything in between', async () => {
    const { units, id } = await scene(UNITS);
    await work(redis.url);
    const { recheckId } = await publish(id);
    await until(async () => (await judgedSoFar(recheckId)) > 0);
    const client = new Redis(redis.url);
    await client.flushall();
    client.disconnect();
    expect(await judgedSoFar(recheckId)).toBeLessThan(2 * UNITS);
    expect(await finished(shop.store, recheckId)).toMatchObject({ judged: 2 * UNITS, callbacksOpened: UNITS });
    expect(await callsOf(units)).toEqual(everyOneOnce(UNITS));
  }, 90_000);

  it('takes a bulletin while the queue is away and does its work when the queue is back', async () => {
    const { units, id } = await scene(50);
    await work(redis.url);
    await redis.stop();
    const { recheckId } = await publish(id);
    await new Promise((resolve) => setTimeout(resolve, 3_000));
    expect(await callsOf(units)).toEqual({ callbacks: 0, units: 0, reasons: 0 });
    redis = await startRedis({ port: redis.port });
    expect(await finished(shop.store, recheckId)).toMatchObject({ judged: 100, callbacksOpened: 50 });
    expect(await callsOf(units)).toEqual(everyOneOnce(50));
  }, 90_000);

  it.each(['inside the process', 'through the queue'])(
    'goes on %s when the database cuts its connections again and again',
    async (how) => {
      const { units, id } = await scene(400);
      await work(how === 'through the queue' ? redis.url : undefined);
      const { recheckId } = await publish(id);
      let cut = 0;
      for (let i = 0; i < 6; i++) {
        const { rowCount } = await db.pool.query(
          `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
           WHERE application_name LIKE 'revright%' AND datname = current_database() AND pid <> pg_backend_pid()`,
        );
        cut += rowCount ?? 0;
        await new Promise((resolve) => setTimeout(resolve, 150));
      }
      expect(cut).toBeGreaterThanOrEqual(3);
      await until(async () => (await shop.store.rechecks.find(recheckId).catch(() => null))?.state === 'done');
      expect(await shop.store.rechecks.find(recheckId)).toMatchObject({
        judged: 800,
        callbacksOpened: 400,
        setAside: 0,
      });
      expect(await callsOf(units)).toEqual(everyOneOnce(400));
    },
    90_000,
  );

  it('does every bell once, however often and at once it is rung', async () => {
    const { units, id } = await scene(250);
    const { recheckId } = await publish(id);
    await Promise.all(Array.from({ length: 3 }, () => planChunks(shop.ports, { recheckId })));
    const chunks = [0, 1, 2].flatMap((n) => [n, n, n]);
    await Promise.all(chunks.map((n) => judgeChunk(shop.ports, { recheckId, n })));
    await judgeChunk(shop.ports, { recheckId, n: 1 });
    expect(await finished(shop.store, recheckId)).toMatchObject({ planned: 500, judged: 500, callbacksOpened: 250 });
    expect(await callsOf(units)).toEqual(everyOneOnce(250));
  });

  it('publishes a bulletin once, whoever asks at the same time', async () => {
    const { units, id } = await scene(10);
    const answers = await Promise.all(
      Array.from({ length: 8 }, () => publishBulletin(shop.ports, manager, { id, version: 1 })),
    );
    expect(answers.filter((one) => one.ok)).toHaveLength(1);
    for (const one of answers) if (!one.ok) expect(one.refusal.code).toBe('already-done');
    await work(undefined);
    await until(async () => (await shop.store.rechecks.ofSource(id))?.state === 'done');
    expect(await callsOf(units)).toEqual(everyOneOnce(10));
  });

  it('lets one of several people settle a callback, and tells the others how it stands', async () => {
    const { units, id } = await scene(1);
    await work(undefined);
    await finished(shop.store, (await publish(id)).recheckId);
    const { rows } = await db.pool.query<{ id: number; version: number }>(
      'SELECT id, version FROM callback WHERE unit_id = $1',
      [units[0]],
    );
    const [call] = rows;
    const tried = await value(
      attemptCallback(shop.ports, manager, { ...call!, how: 'phone', outcome: 'no-answer', note: '' }),
    );
    expect(tried).toMatchObject({ state: 'open', version: call!.version + 1, attempts: [{ outcome: 'no-answer' }] });
    const settle = { id: call!.id, version: tried.version, outcome: 'part-sent' as const, reason: 'two pins by post' };
    const answers = await Promise.all(Array.from({ length: 8 }, () => settleCallback(shop.ports, manager, settle)));
    expect(answers.filter((one) => one.ok)).toHaveLength(1);
    for (const one of answers) {
      if (!one.ok) expect(one.refusal).toMatchObject({ code: 'stale', current: { state: 'settled' } });
    }
  });

  it('sets a unit that cannot be judged aside after three tries, and the rest go on', async () => {
    const { units, id } = await scene(120);
    await db.pool.query(`UPDATE install SET verdict = 'outdated', judgement = '"spoilt"' WHERE unit_id = $1`, [
      units[60],
    ]);
    await work(undefined);
    const recheck = await finished(shop.store, (await publish(id)).recheckId);
    expect(recheck).toMatchObject({ setAside: 1, judged: 238, callbacksOpened: 119 });
    expect(recheck.setAsideWhy[0]).toContain(`Unit ${units[60]}`);
    expect(await callsOf(units)).toEqual(everyOneOnce(119));
  }, 60_000);

  it('judges a part recorded while a bulletin is being published by the new papers all the same', async () => {
    const { units, id } = await scene(60);
    await work(undefined);
    await db.pool.query('DELETE FROM install WHERE unit_id = ANY($1)', [units]);
    const opened = await db.pool.query<{ id: number; unit: number }>(
      `UPDATE ticket SET closed_at = NULL, handed_over = FALSE WHERE unit_id = ANY($1) RETURNING id, unit_id AS unit`,
      [units],
    );
    const ticketOf = new Map(opened.rows.map((ticket) => [ticket.unit, ticket.id]));
    const nothingElse = {
      partText: null,
      pack: null,
      marks: null,
      candidates: [],
      told: null,
      condition: null,
      leftOutWhy: null,
    };
    const pin = { positionId: 1, place: 1, side: 'found' as const, partId: 1, fittedOn: '2016-05-01', ...nothingElse };
    let published = false;
    let begun = 0;
    let overlapping = 0;
    const record = (unitId: number) =>
      shop.store.transaction(async (tx) => {
        const before = !published;
        begun++;
        await tx.tickets.putRecords(ticketOf.get(unitId)!, unitId, [pin], manager.id);
        await tx.units.refreshInstalls(unitId);
        await judgeUnit(tx, shop.clock, unitId);
        await new Promise((resolve) => setTimeout(resolve, 50));
        if (before && published) overlapping++;
      });
    const bench = (async () => {
      for (let i = 0; i < units.length; i += 6) await Promise.all(units.slice(i, i + 6).map(record));
    })();
    await until(() => Promise.resolve(begun > 0));
    const asked = publish(id).then(({ recheckId }) => recheckId);
    published = true;
    const recheckId = await asked;
    await bench;
    await finished(shop.store, recheckId);
    expect(overlapping).toBeGreaterThan(0);
    const { rows } = await db.pool.query(
      `SELECT DISTINCT i.verdict, f.state FROM install i
       LEFT JOIN flag f ON f.unit_id = i.unit_id AND f.position_id = i.position_id AND f.place = i.place
       WHERE i.unit_id = ANY($1)`,
      [units],
    );
    expect(rows).toEqual([{ verdict: 'outdated', state: 'open' }]);
  }, 60_000);
});
