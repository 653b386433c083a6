import { civilDateOf, dayOf, daysInMonth, type Day } from './day';

/**
 * The day so many months later that has the same number; where that month is too short for it, its last day.
 *
 *   addMonths(day('2026-01-31'), 1)   28 Feb 2026
 */
export function addMonths(from: Day, months: number): Day {
  const { year, month, dayOfMonth } = civilDateOf(from);
  const index = year * 12 + (month - 1) + months;
  const [toYear, toMonth] = [Math.floor(index / 12), (index % 12) + 1];
  return dayOf(toYear, toMonth, Math.min(dayOfMonth, daysInMonth(toYear, toMonth)));
}
