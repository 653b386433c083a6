import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { startWorker } from '../../apps/worker/src/start-worker';
import { readConfig } from '../../libs/config';
import type { BulletinDetail, BulletinRow, CallbackPage, Published, RecheckView, WhatIf } from '../../libs/contracts';
import { KEPT_BULLETIN, makeDemoShop, type DemoRecord } from '../../libs/demo';
import { openStore, seedShop, type OpenStore } from '../../libs/store';
import { withDatabase, withRedis } from '../../libs/testing';
import { until } from './wait';

const TODAY = Math.floor(Date.now() / 86_400_000);
const shop = makeDemoShop(1, TODAY);

describe.each(['inside the process', 'through the queue'])('publishing the kept bulletin, judged %s', (how) => {
  const db = withDatabase();
  const redis = withRedis();
  let store: OpenStore;
  let api: RunningApi;
  let cookie = '';

  beforeAll(async () => {
    store = openStore({ url: db.url, sight: 'all' });
    await seedShop(store, shop);
    const redisUrl = how === 'through the queue' ? redis.url : undefined;
    const env = {
      DATABASE_URL: db.url,
      REDIS_URL: redisUrl,
      PORT: '0',
      TIME_ZONE: 'UTC',
      LOG_LEVEL: 'silent',
      NODE_ENV: 'test',
    };
    const read = readConfig(env);
    if (!read.ok) throw new Error(read.problems.join(' '));
    api = await startApi({ config: read.config, store });
    const worker = await startWorker({ config: read.config, store });
    db.beforeClose(async () => {
      await api.close();
      await worker.close();
      await store.close();
    });
    const { login, password } = shop.people.find((person) => person.role === 'manager')!;
    const answer = await fetch(`${api.url}/api/session`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ login, password }),
    });
    cookie = answer.headers.getSetCookie()[0]!.split(';')[0]!;
  }, 300_000);

  async function ask<T>(method: string, path: string, version?: number, body?: unknown): Promise<T> {
    const answer = await fetch(`${api.url}/api${path}`, {
      method,
      headers: {
        cookie,
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
      },
      body: body === undefined ? null : JSON.stringify(body),
    });
    if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    return (await answer.json()) as T;
  }

  /** Follows the hints for open pages; answers what has been heard so far. */
  function listen(): () => string {
    let heard = '';
    void fetch(`${api.url}/api/live`, { headers: { cookie } })
      .then(async ({ body }) => {
        for await (const piece of body!.pipeThrough(new TextDecoderStream())) heard += piece;
      })
      .catch(() => undefined);
    return () => heard;
  }

  /** Every open callback, page by page. */
  async function openCalls(): Promise<CallbackPage['items']> {
    const items: CallbackPage['items'] = [];
    for (let after = ''; ;) {
      const page = await ask<CallbackPage>('GET', `/callbacks?state=open${after}`);
      items.push(...page.items);
      if (page.next === null) return items;
      after = `&after=${page.next}`;
    }
  }

  /**
   * The calls the bulletin must bring, counted by hand as `unit position/place`: the newest record of each auger place
   * of a unit that is out, left within three years, with a pin that cannot be the new one, in a unit that was certainly
   * built in the days the bulletin speaks of; and spares of such pins that went out with such a unit, as
   * `unit position/-pick`. And the units in the shop that must be flagged.
   */
  async function countByHand(): Promise<{ calls: Set<string>; flagged: Set<number> }> {
    const rule = shop.sources.find(({ key }) => key === KEPT_BULLETIN)!.draft!.opens[0]!;
    const dayNumber = (text: string) => Date.parse(`${text}T00:00:00Z`) / 86_400_000;
    const [first, end] = [dayNumber(rule.built.from!), dayNumber(rule.built.to!)];
    const now = new Date(TODAY * 86_400_000);
    const windowFrom = Date.UTC(now.getUTCFullYear() - 3, now.getUTCMonth(), now.getUTCDate());
    const { rows } = await db.pool.query<{ id: number; low: number | null; high: number | null }>(
      'SELECT id, lower(built) AS low, upper(built) AS high FROM unit ORDER BY id',
    );
    const newest = new Map<string, { unit: number; record: DemoRecord; closedAt: number | null }>();
    for (const { unit, records, closedAt } of shop.tickets) {
      if (shop.units[unit]!.line !== rule.line) continue;
      for (const side of ['found', 'left']) {
        for (const record of records) {
          if (record.side !== side || record.position !== rule.positions[0] || record.leftOutWhy !== null) continue;
          newest.set(`${unit} ${record.place}`, { unit, record, closedAt });
        }
      }
    }
    const inShop = new Set(shop.tickets.filter(({ closedAt }) => closedAt === null).map(({ unit }) => unit));
    const calls = new Set<string>();
    const flagged = new Set<number>();
    for (const { unit, record, closedAt } of newest.values()) {
      const parts = record.part === null ? record.candidates : [record.part];
      if (record.condition === 'missing' || parts.length === 0 || parts.includes(rule.required!)) continue;
      const { id, low, high } = rows[unit]!;
      if (low === null || high === null || low < first || high > end) continue;
      if (inShop.has(unit)) flagged.add(id);
      else if (closedAt! >= windowFrom) calls.add(`${id} ${record.position}/${record.place}`);
    }
    const spares = await db.pool.query<{ pick: number; unit: number; part: string; closed: Date }>(
      `SELECT k.id AS pick, t.unit_id AS unit, a.key AS part, t.closed_at AS closed
       FROM pick k JOIN ticket t ON t.id = k.ticket_id JOIN part a ON a.id = k.part_id
       JOIN position p ON p.id = k.position_id JOIN product_line l ON l.id = p.line_id
       WHERE k.purpose = 'spare' AND k.state = 'given' AND p.code = $1 AND l.code = $2`,
      [rule.positions[0], rule.line],
    );
    for (const { pick, unit, part, closed } of spares.rows) {
      const index = rows.findIndex(({ id }) => id === unit);
      const { low, high } = rows[index]!;
      if (part === rule.required || low === null || high === null || low < first || high > end) continue;
      if (inShop.has(index)) flagged.add(unit);
      else if (closed.getTime() >= windowFrom) calls.add(`${unit} ${rule.positions[0]}/${-pick}`);
    }
    return { calls, flagged };
  }

  it('foresees, brings and takes back exactly the calls that were counted by hand', async () => {
    const expected = await countByHand();
    const expectedUnits = new Set([...expected.calls].map((call) => Number(call.split(' ')[0])));
    expect(expectedUnits.size).toBeGreaterThan(100);
    const before = await openCalls();
    const bulletins = await ask<BulletinRow[]>('GET', '/bulletins');
    const { id, version, number } = bulletins.find(({ key }) => key === KEPT_BULLETIN)!;

    const foreseen = await ask<WhatIf>('POST', `/bulletins/${id}/what-if`);
    const called = new Set(before.map(({ unit }) => unit.id));
    expect(foreseen.callbacks).toBe([...expectedUnits].filter((unit) => !called.has(unit)).length);
    expect(foreseen.first).toHaveLength(100);

    const heard = listen();
    const published = await ask<Published>('POST', `/bulletins/${id}/publish`, version, {
      whatIfRevision: foreseen.revision,
    });
    expect(published.bulletin).toMatchObject({ id, state: 'published', version: version + 1 });
    const progress = () => ask<RecheckView>('GET', `/rechecks/${published.recheck.id}`);
    await until(async () => (await progress()).state === 'done');
    const recheck = await progress();
    expect(recheck).toMatchObject({ judged: foreseen.installs, changed: foreseen.changed, setAside: 0 });
    expect(recheck.callbacksOpened).toBe(foreseen.callbacks);

    await until(() => Promise.resolve(heard().includes(JSON.stringify({ kind: 'recheck', id: recheck.id }))));

    const after = await openCalls();
    const reasons = await db.pool.query<{ call: string }>(
      `SELECT c.unit_id || ' ' || p.code || '/' || r.place AS call
       FROM callback c JOIN callback_reason r ON r.callback_id = c.id JOIN position p ON p.id = r.position_id
       WHERE r.source_id = $1`,
      [id],
    );
    expect(reasons.rows.map(({ call }) => call).sort()).toEqual([...expected.calls].sort());
    expect(after.map(({ unit }) => unit.id)).toHaveLength(new Set(after.map(({ unit }) => unit.id)).size);
    const fromBulletin = after.filter((one) => one.reasons.some((reason) => reason.source === number));
    expect(new Set(fromBulletin.map(({ unit }) => unit.id))).toEqual(expectedUnits);
    expect(after).toHaveLength(before.length + foreseen.callbacks);
    const flags = await db.pool.query<{ id: number }>(
      `SELECT DISTINCT unit_id AS id FROM flag WHERE state = 'open' AND reason->>'source' = $1`,
      [KEPT_BULLETIN],
    );
    expect(new Set(flags.rows.map((row) => row.id))).toEqual(expected.flagged);

    const detail = await ask<BulletinDetail>('GET', `/bulletins/${id}`);
    expect(detail.recheck).toMatchObject({ id: recheck.id, state: 'done' });
    const back = await ask<Published>('POST', `/bulletins/${id}/withdraw`, detail.version, {
      reason: 'Printed in error',
    });
    await until(async () => (await ask<RecheckView>('GET', `/rechecks/${back.recheck.id}`)).state === 'done');
    const still = await openCalls();
    expect(still.map(({ unit }) => unit.id).sort()).toEqual(before.map(({ unit }) => unit.id).sort());
    const closed = await ask<CallbackPage>('GET', '/callbacks?state=closed');
    expect(closed.items.some((one) => one.closedWhy === `Bulletin ${number} was withdrawn.`)).toBe(true);
  }, 120_000);
});
