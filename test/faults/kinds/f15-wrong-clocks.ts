import { dayOfInstant, formatDay } from '../../../libs/day';
import { openStore } from '../../../libs/store';
import type { Clock } from '../../../libs/usecases';
import { disturb } from '../disturb';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkStillAlive, within } from '../nothing-lost';
import { look, partsOf, publish, setScene } from '../scene';

const MINUTE = 60_000;
const SKEWS_MS = [-25 * 60 * MINUTE, -5 * MINUTE, 5 * MINUTE, 25 * 60 * MINUTE];
const ZONE = 'Europe/Berlin';
/**
 * When the clocks start: an ordinary day, and a minute before clocks are put forward and back. Summer time of the European
 * Union runs from the last Sunday of March to the last of October, changing at 01:00 UTC (Directive 2000/84/EC, recalled).
 */
const STARTS = ['2026-11-20T12:00:00Z', '2027-03-28T00:59:00Z', '2027-10-31T00:59:00Z'].map((at) => Date.parse(at));

/** A clock that starts somewhere, goes on from there, and can be off by something else from one moment to the next. */
class WrongClock implements Clock {
  private readonly begun = performance.now();
  constructor(
    private readonly startMs: number,
    public offMs = 0,
  ) {}
  now = () => this.startMs + performance.now() - this.begun + this.offMs;
  today = () => dayOfInstant(new Date(this.now()), ZONE);
}

/**
 * F15: two workers whose clocks are off by minutes and by more than a day, and jump while they work; on ordinary days and
 * on those on which clocks change. Order and leases come from the database's clock, so nothing runs out early.
 */
export const wrongClocks: Fault = {
  id: 'F15',
  title: 'clocks of workers wrong and jumping, days of 23 and 25 hours',
  full: 24,
  short: 2,
  async run(plan, tally) {
    const { house, draw } = plan;
    const clocks = [new WrongClock(draw.oneOf(STARTS), SKEWS_MS[0]), new WrongClock(draw.oneOf(STARTS), SKEWS_MS[3])];
    const workers = await Promise.all(clocks.map((clock) => house.work('queue', clock)));
    await disturb(plan, tally, { units: 400, perScene: 2 }, () => {
      for (const clock of clocks) clock.offMs = draw.oneOf(SKEWS_MS);
      return Promise.resolve();
    });
    await Promise.all(workers.map((worker) => worker.close()));
    liveThrough(tally);
    for (const edge of EDGES) await recentOnly(plan, tally, edge);
    await house.work('alone');
    await checkStillAlive(plan, tally);
  },
};

/** Goes through the days around both changes in steps of an hour and counts how many of them the shop's day has. */
function liveThrough(tally: Tally): void {
  for (const [date, hours] of [
    ['2027-03-28', 23],
    ['2027-10-31', 25],
    ['2027-10-30', 24],
  ] as const) {
    const clock = new WrongClock(Date.parse(`${date}T00:30:00Z`));
    const steps = Array.from({ length: 72 }, (_, i) => (i - 24) * 60 * MINUTE);
    const lived = steps.filter((off) => {
      clock.offMs = off;
      return formatDay(clock.today()) === date;
    });
    tally.check(lived.length === hours, `${date} had ${lived.length} hours in ${ZONE}, but has ${hours}`);
  }
}

/** A moment on which somebody judges, the last moment that is too long ago then, and the first that is not. */
interface Edge {
  readonly now: string;
  readonly tooOld: string;
  readonly recent: string;
}

/** The usual look-back of 36 months, with the days of 23 and 25 hours at its near end and at its far one. */
const EDGES: readonly Edge[] = [
  { now: '2029-03-25T23:30:00+02:00', tooOld: '2026-03-24T23:30:00+01:00', recent: '2026-03-25T00:30:00+01:00' },
  { now: '2029-10-28T23:30:00+01:00', tooOld: '2026-10-27T23:30:00+01:00', recent: '2026-10-28T00:30:00+01:00' },
  { now: '2029-03-29T00:30:00+02:00', tooOld: '2026-03-28T23:30:00+01:00', recent: '2026-03-29T00:30:00+01:00' },
  { now: '2029-10-25T00:30:00+02:00', tooOld: '2026-10-24T23:30:00+02:00', recent: '2026-10-25T00:30:00+02:00' },
];
const EDGE_UNITS = 12;
const EDGE_SEED = 11;

/** Every second unit left the shop a little too long ago: its owner is not called, those of the others are. */
async function recentOnly(plan: FaultPlan, tally: Tally, { now, tooOld, recent }: Edge): Promise<void> {
  const { house } = plan;
  const store = openStore({ url: house.url, timeZone: ZONE, sight: 'all' });
  const worker = await house.work('alone', new WrongClock(Date.parse(now)), store);
  try {
    const scene = await setScene(house, EDGE_UNITS, EDGE_SEED);
    await house.pool.query(
      `UPDATE ticket SET closed_at = p.at FROM unnest($1::int[], $2::timestamptz[]) AS p(unit, at)
       WHERE ticket.unit_id = p.unit`,
      [scene.units, scene.units.map((_, i) => (i % 2 === 0 ? recent : tooOld))],
    );
    const recheckId = await publish(house, scene);
    const done = await within(plan.patienceMs, async () => (await look(house, recheckId))?.state === 'done');
    tally.check(done, `the recheck on ${now} did not end`);
    const { rows } = await house.pool.query<{ n: number }>(
      `SELECT (SELECT count(*)::int FROM callback c WHERE c.unit_id = u.id) AS n
       FROM unnest($1::int[]) WITH ORDINALITY AS u(id, i) ORDER BY u.i`,
      [scene.units],
    );
    const parts = partsOf(EDGE_SEED, EDGE_UNITS);
    const late = (unit: number) => parts[2 * unit] !== 2 || parts[2 * unit + 1] !== 2;
    const wanted = scene.units.map((_, unit) => (unit % 2 === 0 && late(unit) ? 1 : 0));
    const is = rows.map(({ n }) => n);
    tally.check(is.join() === wanted.join(), `on ${now} the calls are ${is.join()}, but must be ${wanted.join()}`);
  } finally {
    await worker.close();
    await store.close();
  }
}
