import { withDatabase } from '../../libs/testing';
import { judgeChunk, planChunks, publishBulletin, saveBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop } from './small-shop';
import { value } from './wait';

const BEGINNINGS = 3;

describe('a chunk whose workers never come back from it', () => {
  const db = withDatabase();
  let shop: SmallShop;
  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
  });

  /** Publishes a bulletin about so many units and begins its one chunk as workers do that die of it. */
  async function begunInVain(key: string, count: number, built: { from: string; to: string }): Promise<number> {
    await shop.many(count, '2026-08-01', [built.from, built.to]);
    const one = rule(`FR-${key}`, { built, required: 'HOLM/B', action: 'call-back' });
    const { id } = await value(saveBulletin(shop.ports, manager, bulletin(`SB-${key}`, [one])));
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
    await planChunks(shop.ports, { recheckId });
    for (let n = 1; n <= BEGINNINGS; n++) expect(await shop.store.rechecks.beginChunk(recheckId, 0)).toBe(n);
    await judgeChunk(shop.ports, { recheckId, n: 0 });
    return recheckId;
  }

  it('is set aside with that as its reason when it is a single unit, and the recheck ends', async () => {
    const recheckId = await begunInVain('ONE', 1, { from: '1991-01-01', to: '1991-01-02' });
    expect(await shop.store.rechecks.find(recheckId)).toMatchObject({
      state: 'done',
      judged: 0,
      setAside: 1,
      setAsideWhy: [expect.stringMatching(/^Unit \d+: judging was begun 3 times and never came to an end$/)],
    });
  });

  it('is split when it is several, and what can be judged is', async () => {
    const recheckId = await begunInVain('MANY', 12, { from: '1992-01-01', to: '1992-01-02' });
    const { rows } = await db.pool.query<{ n: number; begun: number }>(
      `SELECT n, begun FROM recheck_chunk WHERE recheck_id = $1 AND state = 'waiting'`,
      [recheckId],
    );
    expect(rows).toHaveLength(10);
    for (const { n, begun } of rows) {
      expect(begun).toBe(0);
      await judgeChunk(shop.ports, { recheckId, n });
    }
    expect(await shop.store.rechecks.find(recheckId)).toMatchObject({ state: 'done', judged: 24, setAside: 0 });
  });

  it('keeps nothing of a beginning that ended well, and of one that is in other hands there is none', async () => {
    const recheckId = await begunInVain('HELD', 2, { from: '1993-01-01', to: '1993-01-02' });
    const { rows } = await db.pool.query<{ n: number }>('SELECT n FROM recheck_chunk WHERE recheck_id = $1', [
      recheckId,
    ]);
    const { n } = rows[0]!;
    await shop.store.transaction(async (tx) => {
      expect(await tx.rechecks.takeChunk(recheckId, n)).not.toBeNull();
      expect(await shop.store.rechecks.beginChunk(recheckId, n)).toBeNull();
    });
    await judgeChunk(shop.ports, { recheckId, n });
    expect(await shop.store.rechecks.beginChunk(recheckId, n)).toBeNull();
  });

  it('is let go by the database when its program says nothing for as long as the store allows', async () => {
    const client = await shop.store.pool.connect();
    const settings = await client.query<{ idle: string; statement: string }>(
      `SELECT current_setting('idle_in_transaction_session_timeout') AS idle, current_setting('statement_timeout') AS statement`,
    );
    client.release();
    expect(settings.rows).toEqual([{ idle: '1min', statement: '2min' }]);
  });
});
