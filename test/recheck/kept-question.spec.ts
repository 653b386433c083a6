import { day } from '../../libs/day';
import { withDatabase } from '../../libs/testing';
import { judgeUnits, keptQuestion, type HeldInstall } from '../../libs/usecases';
import { HeldClock, SmallShop, TODAY } from './small-shop';

/** HOLM/A is required: HOLM/B in the pin's place is wrong. */
describe('what an install keeps of its judgement', () => {
  const db = withDatabase();
  let shop: SmallShop;
  let unitIds: readonly number[] = [];

  const held = async (n: number): Promise<HeldInstall> =>
    (await shop.store.installs.held({ unitIds: [unitIds[n]!] }))[0]!;
  const judge = () => shop.store.transaction((tx) => judgeUnits(tx, new HeldClock(TODAY), unitIds));

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    db.beforeClose(() => shop.store.close());
    const built = [
      ['2015-01-01', '2015-06-01'],
      ['2016-01-01', '2016-06-01'],
    ] as const;
    for (const one of built) {
      const { unitId } = await shop.unit([[1, 1, 2]], { handedOver: '2026-11-10', built: one });
      unitIds = [...unitIds, unitId];
    }
    await judge();
  });

  it('is shared by installs that are judged alike, and each tells the question of its own unit', async () => {
    const { rows } = await db.pool.query<{ installs: number; shared: number }>(
      'SELECT count(*)::int AS installs, count(DISTINCT judgement_id)::int AS shared FROM install WHERE unit_id = ANY($1)',
      [unitIds],
    );
    expect(rows[0]).toEqual({ installs: 2, shared: 1 });
    const [one, other] = [await held(0), await held(1)];
    expect(one.judgement).toMatchObject({ required: 'HOLM/A' });
    expect(other.judgement).toEqual(one.judgement);
    expect(keptQuestion(one)).toMatchObject({
      unit: { model: '40A', built: [{ from: '2015-01-01', to: '2015-06-01' }] },
      parts: ['HOLM/B'],
      fittedOn: '2016-05-01',
    });
    expect(keptQuestion(other)!.unit.built).toEqual([{ from: '2016-01-01', to: '2016-06-01' }]);
  });

  it('tells the facts of then when those of the unit have changed since, also more than once', async () => {
    for (const [from, to] of [
      ['2015-02-01', '2015-03-01'],
      ['2015-02-10', '2015-02-20'],
    ] as const) {
      await db.pool.query(
        'UPDATE unit SET built = int4multirange(int4range($2, $3)), built_from = $2, built_to = $3 WHERE id = $1',
        [unitIds[0], day(from), day(to)],
      );
    }
    await judge();
    const now = await held(0);
    expect(now.unit.facts.built).toEqual([{ from: day('2015-02-10'), to: day('2015-02-20') }]);
    expect(keptQuestion(now)!.unit.built).toEqual([{ from: '2015-01-01', to: '2015-06-01' }]);
    expect(keptQuestion(await held(1))!.unit.built).toEqual([{ from: '2016-01-01', to: '2016-06-01' }]);
  });

  it('is read where it was kept in the install itself, before installs shared it', async () => {
    const { judgement } = await held(1);
    const asked = { ...keptQuestion(await held(1))!, parts: ['HOLM/B'] };
    await db.pool.query(
      'UPDATE install SET judgement = $2, judgement_id = NULL, asked_unit = NULL WHERE unit_id = $1',
      [unitIds[1], JSON.stringify({ ...judgement, asked })],
    );
    const old = await held(1);
    expect(old.judgement).toMatchObject({ technician: judgement!.technician });
    expect(keptQuestion(old)).toMatchObject(asked);
  });
});
