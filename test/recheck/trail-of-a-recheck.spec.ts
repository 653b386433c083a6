import { startWorker } from '../../apps/worker/src/start-worker';
import { formatDay } from '../../libs/day';
import type { FitRuleFile } from '../../libs/fit-rules';
import { verifyTrail } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { publishBulletin, saveBulletin, withdrawBulletin, type StoredTrailEntry } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';
import { finished, value } from './wait';

type Row = Readonly<Record<string, unknown>>;

const NOUNS = ['flag', 'callback', 'callback_reason'];
const RECENT = formatDay(TODAY - 100);

/** What a recheck writes stands in the trail by the batch; a row of one's own is taken to know nothing of batches. */
describe('the trail of rechecks', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let unitIds: readonly number[];

  const publish = async (number: string, more: Partial<FitRuleFile>): Promise<number> => {
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin(number, [rule(`FR-${number}`, more)])));
    await finished(shop.store, (await value(publishBulletin(shop.ports, manager, { id, version: 1 }))).recheckId);
    return id;
  };

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    const worker = await startWorker({
      config: { redisUrl: undefined, workerConcurrency: 2, timeZone: 'UTC' },
      store: shop.store,
      clock: shop.clock,
    });
    db.beforeClose(async () => {
      await worker.close();
      await shop.store.close();
    });
    const built = ['2015-01-01', '2015-06-01'] as const;
    const inShop = await shop.unit([[1, 1, 1], [1, 2, 1], [2, 1, 3]], { handedOver: null }); // prettier-ignore
    const known = { handedOver: RECENT, built };
    const away = await shop.unit([[1, 1, 1], [1, 2, 2], [2, 1, 3]], known); // prettier-ignore
    unitIds = [inShop.unitId, away.unitId, ...(await shop.many(20, RECENT, built))];
    await publish('SB-1', { required: 'HOLM/B', action: 'call-back' });
    const second = await publish('SB-2', { required: 'HOLM/C', action: 'stop-use' });
    const withdrawn = withdrawBulletin(shop.ports, manager, { id: second, version: 2, reason: 'Misprint' });
    await finished(shop.store, (await value(withdrawn)).recheckId);
  });

  const rowsOf = async (noun: string, unitId: number): Promise<readonly Row[]> => {
    const of = noun === 'callback_reason' ? 'JOIN callback c ON c.id = r.callback_id AND c.unit_id = $1' : '';
    const where = noun === 'callback_reason' ? '' : 'WHERE r.unit_id = $1';
    const { rows } = await db.pool.query<{ row: Row }>(
      `SELECT to_jsonb(r) AS row FROM ${noun} r ${of} ${where} ORDER BY r.id`,
      [unitId],
    );
    return rows.map(({ row }) => row);
  };

  it('tells of every row how it came to be as it stands', async () => {
    const seen = new Map<string, number>();
    for (const unitId of unitIds) {
      const trail = await shop.store.trail.ofUnit(unitId, null, 1_000);
      for (const noun of NOUNS) {
        const rows = await rowsOf(noun, unitId);
        expect([...replayed(trail.filter((entry) => entry.noun === noun)).values()]).toEqual(rows);
        seen.set(noun, (seen.get(noun) ?? 0) + rows.length);
      }
    }
    expect([...seen.values()].every((count) => count > 1)).toBe(true);
    expect((await verifyTrail(db.pool)).fault).toBeNull();
  });

  it('says once what rows of a batch share, and in the chain how many rows there are', async () => {
    const { rows } = await db.pool.query<{ rows: number; groups: number }>(
      `SELECT sum((e.change->>'rows')::int)::int AS rows, sum(jsonb_array_length(b.rows))::int AS groups
       FROM audit_batch b JOIN audit_entry e ON e.noun = b.noun AND e.row_key = 'batch ' || b.id
       WHERE b.noun = 'callback_reason' AND b.act = 'insert'`,
    );
    const { rowCount } = await db.pool.query('SELECT 1 FROM callback_reason');
    expect(rows[0]!.rows).toBe(rowCount);
    expect(rows[0]!.groups * 5).toBeLessThan(rowCount!);
  });

  it('is read the same from a batch that gives each row its own words', async () => {
    const unitId = unitIds[1]!;
    const before = await shop.store.trail.ofUnit(unitId, null, 1_000);
    await db.pool.query(`
      ALTER TABLE audit_batch DISABLE TRIGGER only_added_to;
      UPDATE audit_batch SET rows = (
        SELECT jsonb_agg(jsonb_build_object('unit', u.unit, 'change', r.change) ORDER BY (r.change->>'id')::int)
        FROM unnest(units) AS u(unit), LATERAL audit_batch_rows(rows, u.unit) r);
      ALTER TABLE audit_batch ENABLE TRIGGER only_added_to`);
    expect(await shop.store.trail.ofUnit(unitId, null, 1_000)).toEqual(before);
    expect(before.filter(({ noun }) => NOUNS.includes(noun)).length).toBeGreaterThan(3);
  });
});

/** Rows by their keys, made of what the trail says was inserted and changed. */
function replayed(entries: readonly StoredTrailEntry[]): ReadonlyMap<string, Row> {
  const rows = new Map<string, Row>();
  for (const { act, key, change } of entries) {
    if (act === 'insert') rows.set(key, change);
    else rows.set(key, { ...rows.get(key), ...after(change, rows.get(key)!) });
  }
  return rows;
}

/** The columns as they are after a change, which names what stood there before. */
function after(change: Row, row: Row): Row {
  const pairs = Object.entries(change).filter((entry): entry is [string, [unknown, unknown]] =>
    Array.isArray(entry[1]),
  );
  for (const [column, [was]] of pairs) expect({ [column]: was }).toEqual({ [column]: row[column] });
  return Object.fromEntries(pairs.map(([column, [, isNow]]) => [column, isNow]));
}
