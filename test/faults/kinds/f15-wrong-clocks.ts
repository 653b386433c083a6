import { day } from '../../../libs/day';
import { HeldClock, TODAY } from '../../recheck/small-shop';
import { disturb } from '../disturb';
import { Tally, type Fault } from '../fault';
import { checkStillAlive } from '../nothing-lost';

const MINUTE = 60_000;
const SKEWS_MS = [-25 * 60 * MINUTE, -5 * MINUTE, 5 * MINUTE, 25 * 60 * MINUTE];
/** The two days of the year on which clocks in Central Europe change, and the day that is held otherwise. */
const DAYS = [TODAY, day('2026-03-29'), day('2026-10-25')];

/** A clock that is off, and can be off by something else from one moment to the next. */
class WrongClock extends HeldClock {
  constructor(
    today: number,
    public offMs: number,
  ) {
    super(today);
  }
  override now = () => Date.now() + this.offMs;
  override today = () => TODAY + Math.round(this.offMs / 86_400_000);
}

/**
 * F15: two workers whose clocks are off by minutes and by more than a day, and jump while they work; on ordinary days and
 * on those on which clocks change. Order and leases come from the database's clock, so nothing runs out early.
 */
export const wrongClocks: Fault = {
  id: 'F15',
  title: 'clocks of workers wrong and jumping',
  full: 24,
  short: 2,
  async run(plan) {
    const tally = new Tally();
    const { house, draw } = plan;
    const clocks = [new WrongClock(draw.oneOf(DAYS), SKEWS_MS[0]!), new WrongClock(draw.oneOf(DAYS), SKEWS_MS[3]!)];
    for (const clock of clocks) await house.work('queue', clock);
    await disturb(plan, tally, { units: 400, perScene: 2 }, () => {
      for (const clock of clocks) clock.offMs = draw.oneOf(SKEWS_MS);
      return Promise.resolve();
    });
    await checkStillAlive(plan, tally);
    return tally.report();
  },
};
