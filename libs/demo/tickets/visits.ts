import type { Day } from '../../day';
import type { Calendar } from '../calendar';
import type { DemoUnit, Stage } from '../demo-shop';
import type { Chance } from '../prng';

/** One stay of a unit in the shop. */
export interface Visit {
  readonly unit: DemoUnit;
  readonly opened: Day;
  /** Null while the unit is in the shop. */
  readonly closed: Day | null;
  readonly stage: Stage;
  readonly cancelled: boolean;
  readonly onHold: boolean;
}

export const TICKETS = 2_000;
const OPEN_BY_STAGE: readonly (readonly [Stage, number])[] = [
  ['intake', 11],
  ['inspection', 15],
  ['parts-selection', 13],
  ['repair', 13],
  ['handover', 8],
];
const OPEN = OPEN_BY_STAGE.reduce((sum, [, count]) => sum + count, 0);
const CANCELLED = 40;
const MOST_RETURNS = 5;
const HELD_EVERY = 7;

/** Every stay of every unit, 2,000 in all, in the order in which they were opened. */
export function planVisits(units: readonly DemoUnit[], calendar: Calendar, chance: Chance): Visit[] {
  const again = returning(units, TICKETS - OPEN - units.length, calendar, chance);
  const past = units.flatMap((unit) => pastVisits(unit, again.get(unit.index) ?? 0, calendar, chance));
  cancelSome(past, chance);
  return [...past, ...openVisits(units, past, calendar, chance)].sort(
    (a, b) => a.opened - b.opened || a.unit.index - b.unit.index,
  );
}

/** How often units come again: only those the shop has known for a while, and none more than five times. */
function returning(
  units: readonly DemoUnit[],
  visits: number,
  { back }: Calendar,
  chance: Chance,
): Map<number, number> {
  const known = units.filter(({ firstSeen }) => firstSeen < back(220));
  const again = new Map<number, number>();
  for (let left = visits; left > 0;) {
    const { index } = chance.oneOf(known);
    const times = again.get(index) ?? 0;
    if (times === MOST_RETURNS) continue;
    again.set(index, times + 1);
    left--;
  }
  return again;
}

/** The first visit is the day the shop first saw the unit; the others lie between that day and last week. */
function pastVisits(unit: DemoUnit, more: number, { back }: Calendar, chance: Chance): Visit[] {
  const room = back(18) - unit.firstSeen;
  const days = [unit.firstSeen];
  const stay = 14;
  for (let n = 1; n <= more; n++) days.push(unit.firstSeen + Math.floor((room * (n - chance.next() * 0.4)) / more));
  return days
    .map((day, index) => Math.max(day, unit.firstSeen + index * stay))
    .map((opened) => ({
      unit,
      opened,
      closed: Math.min(opened + chance.whole(1, stay - 2), back(2)),
      stage: 'handover',
      cancelled: false,
      onHold: false,
    }));
}

/** Cancelled are later visits only, so that every unit has been worked on once. */
function cancelSome(visits: Visit[], chance: Chance): void {
  const later = visits.flatMap((visit, at) => (visits[at - 1]?.unit === visit.unit ? [at] : []));
  for (let n = 0; n < CANCELLED && later.length > 0; n++) {
    const [at] = later.splice(chance.whole(0, later.length - 1), 1);
    visits[at!] = { ...visits[at!]!, cancelled: true, stage: chance.oneOf(['intake', 'inspection']) };
  }
}

/** Units in the shop now: taken evenly from the whole list, so that every line and bench has some. */
function openVisits(units: readonly DemoUnit[], past: readonly Visit[], { back }: Calendar, chance: Chance): Visit[] {
  const lastDay = new Map<number, Day>();
  for (const { unit, closed } of past) lastDay.set(unit.index, Math.max(lastDay.get(unit.index) ?? 0, closed ?? 0));
  const free = units.filter(({ index }) => (lastDay.get(index) ?? 0) < back(25));
  const step = Math.floor(free.length / OPEN);
  const stagesInTurn = OPEN_BY_STAGE.flatMap(([stage, count]) => Array.from({ length: count }, () => stage));
  return stagesInTurn.map((stage, n) => ({
    unit: free[((n * 7) % OPEN) * step + 3]!,
    opened: back(chance.whole(stage === 'intake' ? 0 : 2, stage === 'intake' ? 1 : 12)),
    closed: null,
    stage,
    cancelled: false,
    onHold: n % HELD_EVERY === 3,
  }));
}
