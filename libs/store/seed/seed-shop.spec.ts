import { day, dayOf, civilDateOf } from '../../day';
import { KEPT_BULLETIN, makeDemoShop } from '../../demo';
import { countKeptUnits } from '../../demo/testing/kept-units';
import { withDatabase } from '../../testing';
import { judgeChunk, planChunks, publishBulletin } from '../../usecases';
import { openStore, passwords, verifyTrail, type OpenStore } from '..';
import { readDaySet } from '../units/day-set-text';
import { isEmpty, seedShop } from '.';

const TODAY = day('2026-11-25');
const shop = makeDemoShop(1, TODAY);
const db = withDatabase();
let store: OpenStore;

beforeAll(async () => {
  store = openStore({ url: db.url, sight: 'all' });
  db.beforeClose(() => store.close());
  expect(await isEmpty(store)).toBe(true);
  await seedShop(store, shop);
}, 300_000);

const rows = async <T extends object>(sql: string): Promise<T[]> => (await db.pool.query<T>(sql)).rows;
const count = async (from: string): Promise<number> =>
  Number((await rows<{ n: string }>(`SELECT count(*) AS n FROM ${from}`))[0]!.n);

/** Publishes the kept bulletin and judges every chunk of its recheck, as a worker would. */
async function publishKept(): Promise<void> {
  const ports = { store, clock: { now: () => Date.now(), today: () => TODAY } };
  const [bulletin] = await rows<{ id: number; version: number }>(
    `SELECT id, version FROM source WHERE key = '${KEPT_BULLETIN}'`,
  );
  const manager = (await store.sessions.personByLogin('bram'))!;
  const actor = { id: manager.id, name: manager.name, role: manager.role, locationId: manager.location.id };
  const outcome = await publishBulletin(ports, actor, bulletin!);
  if (!outcome.ok) throw new Error(outcome.refusal.detail);
  const { recheckId } = outcome.value;
  await planChunks(ports, { recheckId });
  const chunks = await rows<{ n: number }>(`SELECT n FROM recheck_chunk WHERE recheck_id = ${recheckId} ORDER BY n`);
  for (const { n } of chunks) await judgeChunk(ports, { recheckId, n });
}

describe('seedShop', () => {
  it('writes every row of the shop, once', async () => {
    expect(await isEmpty(store)).toBe(false);
    const records = shop.tickets.flatMap((ticket) => ticket.records);
    expect(await count('unit')).toBe(1_200);
    expect(await count('ticket')).toBe(2_000);
    expect(await count('place_record')).toBe(records.length);
    expect(await count('position')).toBe(60);
    expect(await count('part')).toBe(250);
    expect(await count('source')).toBe(40);
    expect(await count('(SELECT DISTINCT key FROM fit_rule) k')).toBe(180);
    expect(await count('fit_rule')).toBe(shop.rules.length);
    expect(await count('rulebook_revision')).toBe(1);
  });

  it('judges every place that holds a part, and knows all six verdicts', async () => {
    expect(await count('install WHERE verdict IS NULL')).toBe(0);
    const verdicts = await rows<{ verdict: string; n: string }>(
      'SELECT verdict, count(*) AS n FROM install GROUP BY 1 ORDER BY 1',
    );
    expect(verdicts.map(({ verdict }) => verdict)).toEqual([
      'allowed',
      'disputed',
      'outdated',
      'right',
      'undecided',
      'wrong',
    ]);
  });

  it('left what was right that day: of the parts fitted since the shop knows of them, all but a few were', async () => {
    const [row] = await rows<{ n: string; bad: string }>(
      `SELECT count(*) AS n, count(*) FILTER (WHERE verdict IN ('wrong')) AS bad FROM install WHERE fitted_on IS NOT NULL`,
    );
    expect(Number(row!.bad) / Number(row!.n)).toBeLessThan(0.04);
  });

  it('has a few open flags, a handful of open callbacks, and more that are settled', async () => {
    expect(await count(`flag WHERE state = 'open'`)).toBeGreaterThan(3);
    expect(await count(`callback WHERE state = 'open'`)).toBe(6);
    expect(await count(`callback WHERE state = 'settled'`)).toBeGreaterThan(6);
  });

  it('remembers the flags of tickets that are closed, every one of a part that was replaced', async () => {
    const past = 'flag f JOIN ticket t ON t.id = f.ticket_id AND t.closed_at IS NOT NULL';
    expect(await count(past)).toBeGreaterThan(50);
    const replaced = `EXISTS (SELECT FROM place_record l WHERE l.ticket_id = f.ticket_id AND l.position_id = f.position_id
      AND l.place = f.place AND l.side = 'left' AND l.part_id <> f.part_id)`;
    expect(await count(`${past} WHERE f.state <> 'cleared' OR NOT ${replaced} OR f.opened_at >= t.closed_at`)).toBe(0);
  });

  it('tells in the trail how every row came to be what it is, in the order of the story, and names no owner', async () => {
    const trail = await verifyTrail(db.pool);
    expect(trail.fault).toBeNull();
    const [last] = await rows<{ act: string; change: { trail: number } }>(
      'SELECT act, change FROM audit_entry ORDER BY id DESC LIMIT 1',
    );
    expect(last).toMatchObject({ act: 'loaded', change: { trail: trail.rows - 1 } });
    expect(await count(`(SELECT at < lag(at) OVER (ORDER BY id) AS back FROM audit_entry) e WHERE back`)).toBe(0);
    for (const noun of [
      'owner',
      'unit',
      'evidence',
      'ticket',
      'estimate',
      'place_record',
      'pick',
      'flag',
      'callback',
    ]) {
      // What was written down at first, with every change since, is what stands in the table; a change begins where the one before ended.
      const told = await rows<{ told: number; whole: number; unlike: number; broken: number }>(`
        WITH e AS (SELECT id, row_key, act, change FROM audit_entry WHERE noun = '${noun}'),
        sides AS (SELECT e.id, e.row_key, c.key, CASE e.act WHEN 'insert' THEN c.value ELSE c.value->1 END AS after,
                         CASE WHEN e.act = 'update' AND jsonb_typeof(c.value) = 'array' THEN c.value->0 END AS before
                  FROM e, jsonb_each(e.change) c WHERE c.value <> '"not kept here"'),
        steps AS (SELECT *, lag(after) OVER (PARTITION BY row_key, key ORDER BY id) AS was,
                         row_number() OVER (PARTITION BY row_key, key ORDER BY id DESC) AS n FROM sides)
        SELECT (SELECT count(*) FROM e WHERE act = 'insert')::int AS told, (SELECT count(*) FROM "${noun}")::int AS whole,
               (SELECT count(*) FROM steps s JOIN "${noun}" t ON t.id::text = s.row_key
                WHERE s.n = 1 AND s.after IS DISTINCT FROM to_jsonb(t)->s.key)::int AS unlike,
               (SELECT count(*) FROM steps WHERE before IS NOT NULL AND before IS DISTINCT FROM was)::int AS broken`);
      expect([noun, told[0]!.whole > 0, told[0]!.told - told[0]!.whole, told[0]!.unlike, told[0]!.broken]).toEqual([
        ...[noun, true, 0, 0, 0],
      ]);
    }
    const text = (await rows<{ text: string }>('SELECT change::text AS text FROM audit_entry'))
      .map((one) => one.text)
      .join();
    for (const { name, phone, email } of shop.owners.slice(0, 200))
      for (const mark of [name, phone, email]) if (mark !== '') expect(text).not.toContain(mark);
  });

  it('calls, once the kept bulletin is published, exactly the units that were counted by hand', async () => {
    const units = await rows<{ id: number; built: string }>('SELECT id, built::text FROM unit ORDER BY id');
    const { year, month, dayOfMonth } = civilDateOf(TODAY);
    const days = units.map(({ built }) => readDaySet(built));
    const kept = countKeptUnits(shop, days, dayOf(year - 3, month, dayOfMonth));
    expect(kept.callbacks.size).toBeGreaterThanOrEqual(120);
    expect(kept.callbacks.size).toBeLessThanOrEqual(180);

    await publishKept();

    const named = async (sql: string) => (await rows<{ id: number }>(sql)).map(({ id }) => id);
    const source = `(SELECT id FROM source WHERE key = '${KEPT_BULLETIN}')`;
    const called = await named(
      `SELECT DISTINCT c.unit_id AS id FROM callback c JOIN callback_reason r ON r.callback_id = c.id
       WHERE r.source_id = ${source} AND c.state = 'open' ORDER BY 1`,
    );
    const idsOf = (indexes: ReadonlySet<number>) => [...indexes].map((at) => units[at]!.id).sort((a, b) => a - b);
    expect(called).toEqual(idsOf(kept.callbacks));
    const flagged = await named(
      `SELECT DISTINCT unit_id AS id FROM flag WHERE reason->>'source' = '${KEPT_BULLETIN}' AND state = 'open' ORDER BY 1`,
    );
    expect(flagged).toEqual(idsOf(kept.flags));
  });

  it('lets its people sign in with the passwords of the demo, of which only hashes are kept', async () => {
    const person = (await store.sessions.personByLogin('bram'))!;
    const { password } = shop.people.find(({ login }) => login === 'bram')!;
    expect(await passwords.verify(person.passwordHash, password)).toBe(true);
    expect(person.passwordHash).not.toContain(password);
  });
});
