import { civilDateOf, dayOf, daysInMonth, type Day } from '../../day';
import { LOOK_BACK_MONTHS } from '../ports/session-store';
import type { Tables } from '../ports/store';

const USUAL_MONTHS = 36;

/** The first day of the look-back window: so many months before today, by the shop's setting. */
export async function lookBackFrom(tables: Tables, today: Day): Promise<Day> {
  return monthsBefore(today, await lookBackMonths(tables));
}

/** How many months back owners are called, by the shop's setting; 36 when it has none. */
export async function lookBackMonths(tables: Tables): Promise<number> {
  const set = await tables.settings.read(LOOK_BACK_MONTHS);
  return typeof set === 'number' && set >= 0 ? Math.floor(set) : USUAL_MONTHS;
}

/** The same day of the month so many months earlier; the month's last day where it has no such day. */
export function monthsBefore(today: Day, months: number): Day {
  const { year, month, dayOfMonth } = civilDateOf(today);
  const first = civilDateOf(dayOf(year, month - months, 1));
  return dayOf(first.year, first.month, Math.min(dayOfMonth, daysInMonth(first.year, first.month)));
}
