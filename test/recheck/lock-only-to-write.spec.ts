import { withDatabase } from '../../libs/testing';
import { judgeChunk, orderRecheck, planChunks, publishBulletin, saveBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop } from './small-shop';
import { until, value } from './wait';

const EVERYTHING = { everything: true, areas: [], ignoresLookBack: true };

describe('a unit that somebody else holds', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let unitId = 0;

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
    unitId = (await shop.unit([[1, 1, 2]], { handedOver: null })).unitId;
    await judgedOnce(await ordered());
  });

  const ordered = async () => (await value(orderRecheck(shop.ports, manager, EVERYTHING))).recheckId;

  async function judgedOnce(recheckId: number) {
    await planChunks(shop.ports, { recheckId });
    await judgeChunk(shop.ports, { recheckId, n: 0 });
    return shop.store.rechecks.find(recheckId);
  }

  /** Judges while another transaction holds the unit; whether the judging waited for it. */
  async function judgedBesideHolder(recheckId: number) {
    const holder = await db.pool.connect();
    await holder.query('BEGIN');
    await holder.query('SELECT 1 FROM unit WHERE id = $1 FOR NO KEY UPDATE', [unitId]);
    let [ended, waited] = [false, false];
    const judging = judgedOnce(recheckId).finally(() => (ended = true));
    await until(async () => {
      const { rows } = await db.pool.query<{ n: number }>('SELECT count(*)::int AS n FROM pg_locks WHERE NOT granted');
      waited ||= rows[0]!.n > 0;
      return ended || waited;
    });
    await holder.query('COMMIT');
    holder.release();
    return { waited, row: await judging };
  }

  it('is judged without waiting when a bad part is as bad as it was, its flag stands and nothing is to be written', async () => {
    expect(await shop.verdicts(unitId)).toHaveLength(1);
    expect(await shop.flags(unitId)).toHaveLength(1);
    const { waited, row } = await judgedBesideHolder(await ordered());
    expect(waited).toBe(false);
    expect(row).toMatchObject({ state: 'done', judged: 1, changed: 0, flagsRaised: 0, flagsCleared: 0 });
  });

  it('is waited for when the verdict is another, and when only its grounds are', async () => {
    const published = async (name: string, required: string, replaces: readonly string[]) => {
      const opens = [rule(name, { required, action: 'call-back', replaces: [...replaces] })];
      const { id } = await value(saveBulletin(shop.ports, manager, bulletin(`SB-${name}`, opens)));
      return (await value(publishBulletin(shop.ports, manager, { id, version: 1 }))).recheckId;
    };
    const grounds = await judgedBesideHolder(await published('FR-2', 'HOLM/C', ['FR-PIN']));
    expect(grounds).toMatchObject({ waited: true, row: { state: 'done', judged: 1, changed: 0, flagsRaised: 1 } });
    const verdict = await judgedBesideHolder(await published('FR-3', 'HOLM/B', ['FR-2']));
    expect(verdict).toMatchObject({ waited: true, row: { state: 'done', judged: 1, changed: 1, flagsCleared: 1 } });
  });
});
