import { formatDay } from '../../libs/day';
import { withDatabase } from '../../libs/testing';
import { judgeChunk, planChunks, publishBulletin, saveBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';
import { value } from './wait';

const RECENT = formatDay(TODAY - 100);
const UNITS = 30;
const AT_ONCE = 12;

describe('a chunk with more to write than is good at once', () => {
  const db = withDatabase();
  let shop: SmallShop;

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
    for (let n = 0; n < UNITS; n++)
      await shop.unit(
        [
          [1, 1, 1],
          [1, 2, 1],
        ],
        { handedOver: RECENT },
      );
  });

  const chunks = async (recheckId: number) =>
    (
      await db.pool.query<{
        n: number;
        from_unit: number;
        to_unit: number;
        units: number[];
        state: string;
        changed: number;
      }>('SELECT * FROM recheck_chunk WHERE recheck_id = $1 ORDER BY from_unit', [recheckId])
    ).rows;

  it('is cut between units, and each unit is judged once, whatever the order of the pieces', async () => {
    const opens = [rule('FR-2', { required: 'HOLM/B', action: 'call-back', replaces: ['FR-PIN'] })];
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin('SB-1', opens)));
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
    await planChunks(shop.ports, { recheckId });
    expect(await chunks(recheckId)).toHaveLength(1);
    await judgeChunk(shop.ports, { recheckId, n: 0 }, AT_ONCE);
    const cut = await chunks(recheckId);
    expect(cut.map(({ state, changed }) => [state, changed])).toEqual([
      ['done', AT_ONCE],
      ...Array.from({ length: 4 }, () => ['waiting', 0]),
    ]);
    cut.forEach(({ from_unit, to_unit, units }, i) => {
      expect(units.every((unit) => unit >= from_unit && unit <= to_unit)).toBe(true);
      expect(units).toHaveLength(AT_ONCE / 2);
      if (i > 0) expect(from_unit).toBe(cut[i - 1]!.to_unit + 1);
    });
    const rest = cut.slice(1).reverse();
    await Promise.all(rest.map(({ n }) => judgeChunk(shop.ports, { recheckId, n }, AT_ONCE)));
    expect(await shop.store.rechecks.find(recheckId)).toMatchObject({
      ...{ state: 'done', planned: 2 * UNITS, judged: 2 * UNITS, changed: 2 * UNITS, callbacksOpened: UNITS },
    });
    const { rows } = await db.pool.query<{ twice: number }>(
      'SELECT count(*)::int AS twice FROM (SELECT 1 FROM verdict_change GROUP BY unit_id, position_id, place HAVING count(*) > 1) t',
    );
    expect(rows[0]!.twice).toBe(0);
  });
});
