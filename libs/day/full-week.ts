import { dayOf, type Day } from './day';
import { isoWeekdayOf } from './iso-week';

/**
 * The Sunday on which a Sunday-to-Saturday week of a year begins, counted so that week 1 is the first full week
 * of the calendar year. Tyres count their weeks so (49 CFR 574.5); it is not the ISO week. Days before the first
 * Sunday belong to the last week of the year before. Null when no such week begins in the year (0, 54, often 53).
 */
export function fullWeekStart(year: number, week: number): Day | null {
  if (!Number.isInteger(week) || week < 1) return null;
  const newYear = dayOf(year, 1, 1);
  const firstSunday = newYear + 7 - isoWeekdayOf(newYear);
  const start = firstSunday + 7 * (week - 1);
  return start < dayOf(year + 1, 1, 1) ? start : null;
}
