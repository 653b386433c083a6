import fc, { type AsyncCommand, type Scheduler } from 'fast-check';
import type { Fault, FaultPlan, Tally } from '../fault';
import { commands, racingCommands, takeIn, type RealShop } from '../shop-model/commands';
import { differences, picture, pictureIn, type ShopModel } from '../shop-model/model';
import { StaffedShops, type StaffedShop } from '../shop-model/staffed-shop';

/** Months of look-back that a sequence begins with; not what a new shop has, so that it is written down. */
const SETTLED = 30;
/** Of five sequences one lets its people race. */
const RACING = 5;
/** Shops side by side: while one waits for its database, the other goes on. */
const LANES = 2;
/** How often a sequence that failed is tried again, shorter: each try takes as long as a sequence. */
const MOST_SHORTENED = 200;

/**
 * F17: three people work in a shop in any order, now and then on what somebody else has changed, or all at once; after
 * each sequence the database holds what a small model says, and nothing else.
 */
export const modelOfTheShop: Fault = {
  id: 'F17',
  title: 'three people against a model',
  full: 1_000,
  short: 4,
  async run(plan, tally) {
    const seed = plan.draw.below(2 ** 31);
    const racing = Math.max(1, Math.round(plan.dose / RACING));
    const alone = Math.max(1, plan.dose - racing);
    const ran = { commands: 0, stale: 0, races: 0 };
    const said = () => `${ran.commands} commands, ${ran.stale} of them on a stale version; ${ran.races} races`;
    const count = plan.timed ? LANES : 1;
    const lanes = Array.from({ length: count }, (_, n) => new Lane(plan, tally, ran, seed + n));
    tally.whole = alone + racing;
    tally.soFar = () => [said(), ...lanes.flatMap((lane) => lane.shortening())].join('; ');
    const share = (all: number, n: number) => Math.floor((all + n) / count);
    await Promise.all(lanes.map((lane, n) => lane.run({ alone: share(alone, n), racing: share(racing, n) })));
    tally.say(`seed ${seed}; ${said()}`);
  },
};

/** Sequences one after the other, each as it was drawn. */
class Lane {
  private readonly shops: StaffedShops;
  /** How often a sequence that failed was tried again; null while none has failed. */
  private shortened: number | null = null;

  constructor(
    private readonly plan: FaultPlan,
    private readonly tally: Tally,
    private readonly ran: RealShop['ran'],
    private readonly seed: number,
  ) {
    this.shops = new StaffedShops(tally);
  }

  async run({ alone, racing }: { readonly alone: number; readonly racing: number }): Promise<void> {
    const sized = { maxCommands: this.plan.timed ? 300 : 120, size: 'max' } as const;
    const quiet = fc.asyncProperty(fc.noBias(fc.commands(commands, sized)), (one) => this.one(one, null));
    const atOnce = fc.asyncProperty(fc.noBias(fc.commands(racingCommands, sized)), fc.scheduler(), (one, scheduler) =>
      this.one(one, scheduler),
    );
    try {
      await this.check(quiet, alone);
      await this.check(atOnce, racing);
    } finally {
      await this.shops.close();
    }
  }

  shortening(): readonly string[] {
    return this.shortened === null ? [] : [`a sequence failed and is made shorter, try ${this.shortened}`];
  }

  private async check<T>(property: fc.IAsyncProperty<T>, numRuns: number): Promise<void> {
    if (numRuns === 0) return;
    const { seed, plan, tally } = this;
    const details = await fc.check(property, { seed, numRuns, endOnFailure: !plan.timed });
    this.shortened = null;
    if (details.failed) tally.check(false, `${String(details.errorInstance)} ${fc.defaultReportMessage(details)}`);
  }

  private async one(sequence: Sequence, scheduler: Scheduler | null): Promise<void> {
    const { shops, ran, tally } = this;
    if (this.shortened !== null && ++this.shortened > MOST_SHORTENED) return;
    try {
      const now = await shops.serve((shop) => oneSequence(shop, sequence, scheduler));
      if (this.shortened !== null) return;
      // The first takes the ticket in that each begins with.
      tally.struck(now.commands > 1);
      ran.commands += now.commands;
      ran.stale += now.stale;
      ran.races += now.races;
    } catch (error) {
      this.shortened ??= 0;
      throw error;
    }
  }
}

type Sequence = Iterable<AsyncCommand<ShopModel, RealShop>>;

/** Runs a sequence and holds the whole shop against the model; answers what was run. */
async function oneSequence(
  { people, past }: StaffedShop,
  sequence: Sequence,
  scheduler: Scheduler | null,
): Promise<RealShop['ran']> {
  const real: RealShop = { ...people, scheduler, ran: { commands: 0, stale: 0, races: 0 } };
  let model: ShopModel | null = null;
  await fc.asyncModelRun(async () => ({ model: (model = await asItStands(real)), real }), sequence);
  const unlike = differences(await pictureIn(real.shop.pool), picture(model!, past));
  if (unlike.length > 0) throw new Error(unlike.join('; '));
  past.push(...model!.tickets);
  return real.ran;
}

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
