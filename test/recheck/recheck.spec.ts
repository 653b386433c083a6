import { startWorker } from '../../apps/worker/src/start-worker';
import type { ChangeSettings } from '../../libs/contracts';
import { formatDay } from '../../libs/day';
import type { Running } from '../../libs/queue';
import { withDatabase, withRedis } from '../../libs/testing';
import {
  changeSettings,
  judgeUnit,
  orderRecheck,
  publishBulletin,
  saveBulletin,
  settleBooked,
  settleCallback,
  viewSettings,
  whatIf,
  withdrawBulletin,
} from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from './small-shop';

const RECENT = formatDay(TODAY - 100);

describe.each(['in process', 'through the queue'])('a recheck %s', (how) => {
  const db = withDatabase();
  const redis = withRedis();
  let shop: SmallShop;
  let worker: Running;
  const problems: unknown[] = [];

  beforeAll(async () => {
    shop = await SmallShop.open(db.url, db.pool);
    worker = await startWorker({
      config: { redisUrl: how === 'in process' ? undefined : redis.url, workerConcurrency: 2, timeZone: 'UTC' },
      store: shop.store,
      clock: shop.clock,
      onError: (error) => problems.push(error),
      sweepEveryMs: 500,
    });
    db.beforeClose(async () => {
      await worker.close();
      await shop.store.close();
    });
  });
  afterEach(() => expect(problems).toEqual([]));

  async function finished(recheckId: number) {
    for (;;) {
      const found = (await shop.store.rechecks.find(recheckId))!;
      if (found.state === 'done') return found;
      await new Promise((resolve) => setTimeout(resolve, 25));
    }
  }
  async function value<T>(
    outcome: Promise<{ ok: true; value: T } | { ok: false; refusal: { detail: string } }>,
  ): Promise<T> {
    const answer = await outcome;
    if (!answer.ok) throw new Error(answer.refusal.detail);
    return answer.value;
  }
  async function save(input: ReturnType<typeof bulletin>) {
    return (await value(saveBulletin(shop.ports, manager, input))).id;
  }
  async function publish(input: ReturnType<typeof bulletin>) {
    const id = await save(input);
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
    return { id, recheck: await finished(recheckId) };
  }

  it('calls every owner once, flags the unit in the shop, and takes all of it back on withdrawal', async () => {
    const out = await shop.unit(
      [
        [1, 1, 1],
        [1, 2, 1],
        [2, 1, 3],
      ],
      { handedOver: RECENT },
    );
    const mixed = await shop.unit(
      [
        [1, 1, 1],
        [1, 2, 2],
      ],
      { handedOver: RECENT },
    );
    const inShop = await shop.unit([[1, 1, 1]], { handedOver: null });
    const longAgo = await shop.unit([[1, 1, 1]], { handedOver: '2022-03-01' });
    const otherYear = await shop.unit([[1, 1, 1]], { handedOver: RECENT, built: ['2019-01-01', '2019-02-01'] });
    await finished((await value(orderRecheck(shop.ports, manager))).recheckId);
    expect(await shop.verdicts(out.unitId)).toEqual(['1/1 right', '1/2 right', '2/1 right']);
    expect(await shop.verdicts(mixed.unitId)).toEqual(['1/1 right', '1/2 wrong']);
    expect(await shop.callbacks()).toEqual([]);

    const span = { from: '2014-01-01', to: '2016-01-01' };
    const input = bulletin('SB-1', [
      rule('FR-PIN-2', { built: span, required: 'HOLM/B', action: 'call-back', replaces: ['FR-PIN'] }),
    ]);
    const draft = await save(input);
    const foreseen = await value(whatIf(shop.ports, draft));
    const { recheckId } = await value(publishBulletin(shop.ports, manager, { id: draft, version: 1 }));
    const recheck = await finished(recheckId);

    expect(recheck).toMatchObject({
      judged: 5,
      planned: 5,
      changed: 5,
      callbacksOpened: 2,
      flagsRaised: 1,
      setAside: 0,
    });
    expect(foreseen).toMatchObject({ installs: recheck.judged, changed: recheck.changed, callbacks: 2, tickets: 1 });
    expect(await shop.verdicts(out.unitId)).toEqual(['1/1 outdated', '1/2 outdated', '2/1 right']);
    expect(await shop.verdicts(mixed.unitId)).toEqual(['1/1 outdated', '1/2 right']);
    expect(await shop.verdicts(otherYear.unitId)).toEqual(['1/1 right']);
    expect(await shop.verdicts(longAgo.unitId)).toEqual(['1/1 right']);
    expect(await shop.flags(inShop.unitId)).toEqual(['1/1 outdated open']);
    expect(await shop.callbacks()).toEqual([
      `${out.unitId} open: SB-1 1/1 call-back, SB-1 1/2 call-back`,
      `${mixed.unitId} open: SB-1 1/1 call-back`,
    ]);

    const again = await finished((await value(orderRecheck(shop.ports, manager, recheck.scope))).recheckId);
    expect(again).toMatchObject({ changed: 0, callbacksOpened: 0, flagsRaised: 0 });

    const { recheckId: back } = await value(
      withdrawBulletin(shop.ports, manager, { id: draft, version: 2, reason: 'Misprint' }),
    );
    expect(await finished(back)).toMatchObject({ changed: 5, callbacksClosed: 2, flagsCleared: 1 });
    expect(await shop.callbacks()).toEqual([`${out.unitId} withdrawn: nothing`, `${mixed.unitId} withdrawn: nothing`]);
    const why = await db.pool.query(`SELECT DISTINCT closed_why FROM callback`);
    expect(why.rows).toEqual([{ closed_why: 'Bulletin SB-1 was withdrawn.' }]);
    expect(await shop.flags(inShop.unitId)).toEqual(['1/1 outdated cleared']);
    expect(await shop.verdicts(mixed.unitId)).toEqual(['1/1 right', '1/2 wrong']);
  });

  it('reaches units handed over long ago for a stop use only, and marks the call urgent', async () => {
    const { unitId } = await shop.unit([[2, 1, 3]], { handedOver: '2018-01-01', built: ['2012-01-01', '2012-02-01'] });
    const span = { from: '2012-01-01', to: '2013-01-01' };
    const blade = { positions: ['blade'], built: span, required: 'HOLM/B' };
    await publish(bulletin('SB-2', [rule('FR-BLADE-2', { ...blade, action: 'call-back' })]));
    expect((await shop.callbacks()).filter((text) => text.startsWith(`${unitId} `))).toEqual([]);
    await publish(bulletin('SB-3', [rule('FR-BLADE-3', { ...blade, action: 'stop-use', replaces: ['FR-BLADE-2'] })]));
    expect((await shop.callbacks()).filter((text) => text.startsWith(`${unitId} `))).toEqual([
      `${unitId} open urgent: SB-3 2/1 stop-use`,
    ]);
    // It is written once, urgent from the start.
    const { rows } = await db.pool.query('SELECT version FROM callback WHERE unit_id = $1', [unitId]);
    expect(rows).toEqual([{ version: 1 }]);
  });

  it('adds a second bulletin to the callback that is open, and leaves a note where next service will do', async () => {
    const built = ['2011-01-01', '2011-02-01'] as const;
    const { unitId } = await shop.unit(
      [
        [1, 1, 1],
        [2, 1, 3],
      ],
      { handedOver: RECENT, built },
    );
    const span = { from: '2011-01-01', to: '2012-01-01' };
    await publish(bulletin('SB-4', [rule('FR-4', { built: span, required: 'HOLM/B', action: 'call-back' })]));
    await publish(
      bulletin('SB-5', [rule('FR-5', { positions: ['blade'], built: span, required: 'HOLM/B', action: 'call-back' })]),
    );
    expect((await shop.callbacks()).filter((text) => text.startsWith(`${unitId} `))).toEqual([
      `${unitId} open: SB-4 1/1 call-back, SB-5 2/1 call-back`,
    ]);
    const other = await shop.unit([[1, 2, 1]], { handedOver: RECENT, built: ['2013-01-01', '2013-02-01'] });
    const later = { from: '2013-01-01', to: '2014-01-01' };
    await publish(bulletin('SB-6', [rule('FR-6', { built: later, required: 'HOLM/B', action: 'next-service' })]));
    const notes = await db.pool.query(`SELECT unit_id, position_id, place FROM unit_note WHERE closed_at IS NULL`);
    expect(notes.rows).toEqual([{ unit_id: other.unitId, position_id: 1, place: 2 }]);
    expect((await shop.callbacks()).filter((text) => text.startsWith(`${other.unitId} `))).toEqual([]);
  });

  it('settles the call when the part is replaced', async () => {
    const built = ['2017-01-01', '2017-02-01'] as const;
    const span = { from: '2017-01-01', to: '2018-01-01' };
    const { unitId } = await shop.unit([[1, 1, 1]], { handedOver: RECENT, built });
    await publish(bulletin('SB-7', [rule('FR-7', { built: span, required: 'HOLM/B', action: 'call-back' })]));
    await db.pool.query('UPDATE install SET part_id = 2, verdict = NULL, judgement = NULL WHERE unit_id = $1', [
      unitId,
    ]);
    await shop.store.transaction((tx) => judgeUnit(tx, shop.clock, unitId));
    expect((await shop.callbacks()).filter((text) => text.startsWith(`${unitId} `))).toEqual([
      `${unitId} settled: nothing`,
    ]);
    expect(await shop.verdicts(unitId)).toEqual(['1/1 right']);
  });

  it('does not call again about a part the owner has decided on, and books the unit in when it is to come', async () => {
    const built = ['2018-01-01', '2018-02-01'] as const;
    const span = { from: '2018-01-01', to: '2019-01-01' };
    const [one, two] = [
      await shop.unit([[1, 1, 1]], { handedOver: RECENT, built }),
      await shop.unit([[1, 1, 1]], { handedOver: RECENT, built }),
    ];
    const { recheck } = await publish(
      bulletin('SB-11', [rule('FR-11', { built: span, required: 'HOLM/B', action: 'call-back' })]),
    );
    const call = async (unitId: number) =>
      (
        await db.pool.query<{ id: number; version: number }>('SELECT id, version FROM callback WHERE unit_id = $1', [
          unitId,
        ])
      ).rows[0]!;
    const declined = { ...(await call(one.unitId)), outcome: 'owner-declined' as const, reason: 'keeps it for spares' };
    expect(await value(settleCallback(shop.ports, manager, declined))).toMatchObject({
      state: 'settled',
      closedWhy: 'The owner declined: keeps it for spares',
    });
    const booked = { ...(await call(two.unitId)), outcome: 'booked' as const, reason: 'comes on Friday' };
    const view = await value(settleCallback(shop.ports, manager, booked));
    expect(view).toMatchObject({ state: 'booked', lastTicket: { id: view.ticketId } });
    expect(await shop.flags(two.unitId)).toEqual(['1/1 outdated open']);

    await finished((await value(orderRecheck(shop.ports, manager, recheck.scope))).recheckId);
    const about = (await shop.callbacks()).filter((text) => Number(text.split(' ')[0]) >= one.unitId);
    expect(about).toEqual([`${one.unitId} settled: SB-11 1/1 call-back`, `${two.unitId} booked: SB-11 1/1 call-back`]);
    await shop.store.transaction((tx) => settleBooked(tx, shop.clock, two.unitId, view.ticketId!));
    expect((await shop.callbacks()).at(-1)).toBe(`${two.unitId} settled: SB-11 1/1 call-back`);
  });

  it('begins a bulletin dated ahead on its day', async () => {
    const built = ['2020-01-01', '2020-02-01'] as const;
    const { unitId } = await shop.unit([[1, 1, 1]], { handedOver: RECENT, built });
    const day = TODAY + 10;
    const ahead = rule('FR-8', {
      built: { from: '2020-01-01', to: '2021-01-01' },
      inForce: { from: formatDay(day), to: null },
      required: 'HOLM/B',
      action: 'call-back',
    });
    const { id, recheck } = await publish(bulletin('SB-8', [ahead]));
    expect(recheck).toMatchObject({ judged: 0, callbacksOpened: 0 });
    shop.clock.moveTo(day);
    for (;;) {
      const latest = await shop.store.rechecks.ofSource(id);
      if (latest?.cause === 'in-force' && latest.state === 'done') break;
      await new Promise((resolve) => setTimeout(resolve, 25));
    }
    shop.clock.moveTo(TODAY);
    expect((await shop.callbacks()).filter((text) => text.startsWith(`${unitId} `))).toEqual([
      `${unitId} open: SB-8 1/1 call-back`,
    ]);
  });

  it('judges everything again when the shop changes how papers stand, or how far back it calls', async () => {
    const built = ['2025-01-01', '2025-02-01'] as const;
    const { unitId } = await shop.unit([[1, 1, 1]], { handedOver: '2021-05-01', built });
    const later = rule('FR-10', {
      built: { from: '2025-01-01', to: '2026-01-01' },
      required: 'HOLM/B',
      action: 'call-back',
    });
    await publish(bulletin('SB-10', [later]));
    const state = async () => ({
      verdicts: await shop.verdicts(unitId),
      calls: (await shop.callbacks()).filter((text) => text.startsWith(`${unitId} `)),
    });
    expect(await state()).toEqual({ verdicts: ['1/1 none'], calls: [] });

    const settle = async (input: ChangeSettings) => {
      const { version } = await viewSettings(shop.ports);
      return value(changeSettings(shop.ports, manager, { ...input, version }));
    };
    const further = await settle({ lookBackMonths: 120 });
    await finished(further.recheckId!);
    expect((await settle({ lookBackMonths: 120 })).recheckId).toBeNull();
    const called = { verdicts: ['1/1 outdated'], calls: [`${unitId} open: SB-10 1/1 call-back`] };
    expect(await state()).toEqual(called);

    const listsFirst = { 'parts-list': 90, 'service-bulletin': 60 };
    const rest = { 'makers-advice': 50, 'revised-parts-list': 40, 'owners-manual': 20, 'shop-finding': 10 };
    const weighed = await settle({ standing: { ...listsFirst, ...rest } });
    await finished(weighed.recheckId!);
    expect(await state()).toEqual({ verdicts: ['1/1 right'], calls: [`${unitId} withdrawn: nothing`] });
  });

  it('refuses a draft that cannot be published, naming field, value and rule', async () => {
    const bad = rule('FR-9', { positions: ['wheel'], required: 'HOLM/B' });
    const answer = await saveBulletin(shop.ports, manager, bulletin('SB-9', [bad]));
    expect(answer).toMatchObject({ ok: false, refusal: { code: 'bad-input' } });
    expect(JSON.stringify(answer)).toContain("rule FR-9): position is 'wheel', but line TL-40 has pin, blade.");
  });
});
