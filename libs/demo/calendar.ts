import { civilDateOf, dayOf, type Day } from '../day';

/**
 * The demo's calendar hangs on the day it is made for: papers of past years lie in whole years before this one, so
 * that a shop started next year is as lively as one started today.
 */
export interface Calendar {
  readonly today: Day;
  /** A day of the year that lies `years` (1 or more) before this one. */
  readonly ago: (years: number, month: number, dayOfMonth?: number) => Day;
  /** The day that lies the given number of days back; negative numbers lie ahead. */
  readonly back: (days: number) => Day;
}

/** Makes the calendar for a day. */
export function calendarFor(today: Day): Calendar {
  const { year } = civilDateOf(today);
  return {
    today,
    ago: (years, month, dayOfMonth = 1) => dayOf(year - years, month, dayOfMonth),
    back: (days) => today - days,
  };
}

const HOUR = 3_600_000;
export const MS_PER_DAY = 24 * HOUR;

/** The instant of a day at an hour (a fraction is minutes), in UTC, as epoch milliseconds. */
export function instantAt(day: Day, hour: number): number {
  return day * MS_PER_DAY + Math.round(hour * HOUR);
}

/** An instant as ISO 8601 in UTC. */
export function writeInstant(instant: number): string {
  return new Date(instant).toISOString();
}
