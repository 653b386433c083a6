import { civilDateOf, dayOf, type Day } from './day';

/** A week of ISO 8601: the week year, the week (1 to 53) and the weekday (1 Monday to 7 Sunday). */
export interface IsoWeekDate {
  year: number;
  week: number;
  weekday: number;
}

/** Weekday of a day, 1 Monday to 7 Sunday (ISO 8601). Day 0, 1 January 1970, was a Thursday. */
export function isoWeekdayOf(value: Day): number {
  return ((((value + 3) % 7) + 7) % 7) + 1;
}

/** How many weeks the ISO week year has: 53 when it begins on a Thursday, or on a Wednesday in a leap year. */
export function isoWeeksIn(year: number): number {
  return (firstIsoMonday(year + 1) - firstIsoMonday(year)) / 7;
}

/**
 * The Monday of a week of ISO 8601; the week holds that day and the six after it.
 * Null when the year has no such week: week 0, week 54, and week 53 of a year with 52.
 */
export function isoWeekStart(year: number, week: number): Day | null {
  if (!Number.isInteger(week) || week < 1 || week > isoWeeksIn(year)) return null;
  return firstIsoMonday(year) + 7 * (week - 1);
}

/** The ISO week date of a day; the week year differs from the calendar year around New Year. */
export function isoWeekDateOf(value: Day): IsoWeekDate {
  const weekday = isoWeekdayOf(value);
  const thursday = value - weekday + 4;
  const { year } = civilDateOf(thursday);
  return { year, week: Math.floor((thursday - dayOf(year, 1, 1)) / 7) + 1, weekday };
}

/** Monday of week 1, the week that holds 4 January. */
function firstIsoMonday(year: number): Day {
  const fourth = dayOf(year, 1, 4);
  return fourth - isoWeekdayOf(fourth) + 1;
}
