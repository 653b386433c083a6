import fc, { type AsyncCommand, type Scheduler } from 'fast-check';
import { startWorker } from '../../../apps/worker/src/start-worker';
import { openDatabase } from '../../../libs/testing';
import { ApiShop } from '../../api/api-shop';
import type { Fault, FaultPlan, Tally } from '../fault';
import { commands, racingCommands, takeIn, type RealShop } from '../shop-model/commands';
import { picture, pictureIn, type ShopModel } from '../shop-model/model';

/** Months of look-back that a sequence begins with; not what a new shop has, so that it is written down. */
const SETTLED = 30;
/** Of five sequences one lets its people race. */
const RACING = 5;

/**
 * F17: three people work in the shop in any order, now and then on what somebody else has changed, or all at once; after
 * each sequence the database holds what a small model says, and nothing else.
 */
export const modelOfTheShop: Fault = {
  id: 'F17',
  title: 'three people against a model',
  full: 1_000,
  short: 4,
  async run(plan, tally) {
    const db = await openDatabase();
    const shop = await ApiShop.open(db);
    const { store, clock } = shop;
    const worker = await startWorker({
      config: { redisUrl: undefined, workerConcurrency: 1, timeZone: 'UTC' },
      store,
      clock: { now: () => clock.nowMs, today: () => clock.today },
      sweepEveryMs: 500,
    });
    try {
      await againstModel(plan, tally, {
        shop,
        technician: await shop.as('technician'),
        counter: await shop.as('counter'),
        manager: await shop.as('manager'),
        ran: { commands: 0, stale: 0, races: 0 },
      });
    } finally {
      await worker.close();
      await db.close();
    }
  },
};

async function againstModel(plan: FaultPlan, tally: Tally, house: Omit<RealShop, 'scheduler'>): Promise<void> {
  const seed = plan.draw.below(2 ** 31);
  const racing = Math.max(1, Math.round(plan.dose / RACING));
  const most = plan.timed ? 300 : 120;
  const sized = { maxCommands: most, size: 'max' } as const;
  const run = async (sequence: Sequence, scheduler: Scheduler | null) => {
    const real: RealShop = { ...house, scheduler };
    let model: ShopModel | null = null;
    await fc.asyncModelRun(async () => ({ model: (model = await asItStands(real)), real }), sequence);
    const [is, wanted] = [await pictureIn(house.shop.pool, model!), picture(model!)];
    tally.struck(wanted.length > 1);
    const unlike = is.flatMap((line, i) => (line === wanted[i] ? [] : [`is '${line}', must be '${wanted[i]}'`]));
    if (is.length !== wanted.length || unlike.length > 0) throw new Error(unlike.join('; ') || 'a ticket is missing');
  };
  const settings = { seed, endOnFailure: !plan.timed };
  const alone = fc.asyncProperty(fc.noBias(fc.commands(commands, sized)), (sequence) => run(sequence, null));
  const atOnce = fc.asyncProperty(
    fc.scheduler(),
    fc.noBias(fc.commands(racingCommands, sized)),
    (scheduler, sequence) => run(sequence, scheduler),
  );
  for (const [property, numRuns] of [
    [alone, Math.max(1, plan.dose - racing)],
    [atOnce, racing],
  ] as const) {
    const details = await fc.check(property as fc.IAsyncProperty<unknown>, { ...settings, numRuns });
    if (details.failed) tally.check(false, `${String(details.errorInstance)} ${fc.defaultReportMessage(details)}`);
  }
  const { ran } = house;
  tally.say(`seed ${seed}; ${ran.commands} commands, ${ran.stale} of them on a stale version; ${ran.races} races`);
}

type Sequence = Iterable<AsyncCommand<ShopModel, RealShop>>;

/** A sequence begins with one ticket of its own, and with a setting that is the same each time. */
async function asItStands(real: RealShop): Promise<ShopModel> {
  const { manager } = real;
  const { body } = await manager.get<ShopModel['setting']>('/settings');
  const setting = { version: body.version, lookBackMonths: body.lookBackMonths };
  const settled = await manager.change<ShopModel['setting']>('PATCH', '/settings', setting.version, {
    lookBackMonths: SETTLED,
  });
  const model: ShopModel = { tickets: [], setting: { version: settled.body.version, lookBackMonths: SETTLED } };
  await takeIn(model, real);
  return model;
}
