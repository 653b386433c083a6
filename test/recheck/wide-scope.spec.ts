import { formatDay } from '../../libs/day';
import { withDatabase } from '../../libs/testing';
import { judgeChunk, planChunks, publishBulletin, saveBulletin, withdrawBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';
import { value } from './wait';

const [RECENT, LONG_AGO] = [formatDay(TODAY - 100), formatDay(TODAY - 2_000)];
const PIECE = 4;
const NEVER = { part: 'HOLM/NEVER', reason: 'breaks-later', note: '' } as const;

describe('a bulletin that reaches a large share of all installs', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let number = 0;

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
    const holds = [
      [1, 1, 1],
      [1, 2, 1],
      [2, 1, 3],
    ] as const;
    const early = ['2012-01-01', '2012-06-01'] as const;
    for (let n = 0; n < 6; n++) {
      await shop.unit(holds, { handedOver: RECENT });
      await shop.unit(holds, { handedOver: RECENT, built: early });
      await shop.unit(holds, { handedOver: LONG_AGO });
      // Long out of reach, but in the shop again, or its owner is to be called about something else.
      const back = await shop.unit(holds, { handedOver: LONG_AGO });
      await shop.ticket(back.unitId, null);
      const waits = await shop.unit(holds, { handedOver: LONG_AGO });
      await db.pool.query(`INSERT INTO callback (unit_id, owner_id, state) VALUES ($1, 1, 'open')`, [waits.unitId]);
    }
    await db.pool.query('ANALYZE');
  });

  /** Publishes, plans and judges all of it, then takes it back; what was planned, chunk by chunk, and what came of it. */
  async function outcome(wideFrom: number) {
    const key = ++number;
    // Two rules about the same pins: an install that lies in both areas is one install.
    const built = { from: '2014-01-01', to: null };
    const about = { source: `SB-${key}`, action: 'call-back' } as const;
    const opens = [
      rule(`FR-PIN-${key}`, { ...about, built, required: 'HOLM/B', replaces: ['FR-PIN'] }),
      rule(`FR-BOTH-${key}`, { ...about, built, positions: ['pin', 'blade'], barred: [NEVER] }),
    ];
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin(`SB-${key}`, opens)));
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
    await planChunks(shop.ports, { recheckId }, { unitsAChunk: PIECE, wideFrom });
    const { rows: chunks } = await db.pool.query<{ n: number; from_unit: number; to_unit: number; units: number[] }>(
      'SELECT n, from_unit, to_unit, units FROM recheck_chunk WHERE recheck_id = $1 ORDER BY n',
      [recheckId],
    );
    for (const { n } of chunks) await judgeChunk(shop.ports, { recheckId, n });
    const done = await shop.store.rechecks.find(recheckId);
    const { rows: changed } = await db.pool.query<{ at: string }>(
      `SELECT concat_ws(' ', unit_id, position_id, place) AS at FROM verdict_change WHERE recheck_id = $1 ORDER BY unit_id, position_id, place`,
      [recheckId],
    );
    await value(withdrawBulletin(shop.ports, manager, { id, version: 2, reason: 'Misprint' }));
    const { rows: open } = await db.pool.query<{ id: number }>(`SELECT id FROM recheck WHERE state <> 'done'`);
    for (const { id: back } of open) {
      await planChunks(shop.ports, { recheckId: back }, { wideFrom });
      await judgeChunk(shop.ports, { recheckId: back, n: 0 });
    }
    return { chunks, done: done!, changed };
  }

  it('is read from end to end, and judges the very installs that are judged when each is looked up', async () => {
    // The first time of all, judging what was never judged changes all of it.
    await outcome(1_000_000);
    const narrow = await outcome(1_000_000);
    const wide = await outcome(1);
    expect(narrow.chunks.every(({ units }) => units.length > 0)).toBe(true);
    expect(wide.chunks.every(({ units }) => units.length === 0)).toBe(true);
    const runs = ({ chunks }: typeof wide) => chunks.map(({ n, from_unit, to_unit }) => [n, from_unit, to_unit]);
    expect(runs(wide)).toEqual(runs(narrow));
    // Eighteen units in reach that were built from 2014 on, each with three installs of which the two pins change.
    const counts = { state: 'done', planned: 54, judged: 54, changed: 36 };
    expect(narrow.done).toMatchObject(counts);
    expect(wide.done).toMatchObject(counts);
    expect(wide.changed).toEqual(narrow.changed);
    expect(wide.changed).toHaveLength(36);
  });

  it('counts the same of everything within the look-back', async () => {
    const scope = { everything: true, areas: [], ignoresLookBack: false };
    const planned = await shop.store.transaction(async (tx) => {
      const id = await tx.rechecks.insert({ cause: 'order', sourceId: null, revision: 1, requestedBy: 1, scope });
      await tx.rechecks.plan(id, scope, {
        unitsAChunk: PIECE,
        lookBackFrom: TODAY - 730,
        keepFirst: false,
        wideFrom: 1,
      });
      return (await tx.rechecks.find(id))!.planned;
    });
    // Twenty-four units in reach, whenever they were built.
    expect(planned).toBe(72);
  });
});
