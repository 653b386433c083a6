/**
 * A civil day as a whole number: days since 1 January 1970 in the proleptic Gregorian calendar.
 * It has no clock and no time zone, so no change of zone can move a build date.
 */
export type Day = number;

const DAYS_PER_400_YEARS = 146_097;
const WRITTEN_DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Year, month (1 to 12) and day of the month (1 to 31). */
export interface CivilDate {
  year: number;
  month: number;
  dayOfMonth: number;
}

/** True for a year that has a 29 February. */
export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** How many days the month (1 to 12) has in that year. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/**
 * The day number of a civil date. The month may lie outside 1 to 12 and is carried into the year, which
 * makes "the first of the next month" `dayOf(year, month + 1, 1)`; the day of the month is carried likewise.
 *
 * The count works on years that begin in March, so that the leap day comes last.
 */
export function dayOf(year: number, month: number, dayOfMonth: number): Day {
  const carried = year + Math.floor((month - 1) / 12);
  const monthOfYear = ((((month - 1) % 12) + 12) % 12) + 1;
  const marchYear = monthOfYear <= 2 ? carried - 1 : carried;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const monthFromMarch = (monthOfYear + 9) % 12;
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5);
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_400_YEARS + dayOfEra - 719_468 + dayOfMonth - 1;
}

/** The civil date of a day number; the inverse of {@link dayOf}. */
export function civilDateOf(day: Day): CivilDate {
  const shifted = day + 719_468;
  const era = Math.floor(shifted / DAYS_PER_400_YEARS);
  const dayOfEra = shifted - era * DAYS_PER_400_YEARS;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1_460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1,
  };
}

/**
 * Reads `YYYY-MM-DD` (ISO 8601 calendar date, years 0001 to 9999). Returns null for anything else, also for
 * days that do not exist, such as 2023-02-29.
 */
export function parseDay(text: string): Day | null {
  const match = WRITTEN_DAY.exec(text);
  if (!match) return null;
  const [year, month, dayOfMonth] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (year < 1 || month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) return null;
  return dayOf(year, month, dayOfMonth);
}

/** Reads `YYYY-MM-DD` that is known to be good (a constant, a value already checked); throws otherwise. */
export function day(text: string): Day {
  const parsed = parseDay(text);
  if (parsed === null) throw new RangeError(`not a civil day: ${text}`);
  return parsed;
}

/** Writes a day as `YYYY-MM-DD`. */
export function formatDay(value: Day): string {
  const { year, month, dayOfMonth } = civilDateOf(value);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

/** English months by their three letters, in which the rules' sentences write them. */
export const MONTHS: readonly string[] = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
];

/** Writes a day the way the bench reads it: `3 Mar 2017`, which no locale can turn round. */
export function sayDay(value: Day): string {
  const { year, month, dayOfMonth } = civilDateOf(value);
  return `${dayOfMonth} ${MONTHS[month - 1]} ${year}`;
}

/** Writes the month a day lies in: `Mar 2017`. */
export function sayMonth(value: Day): string {
  const { year, month } = civilDateOf(value);
  return `${MONTHS[month - 1]} ${year}`;
}

/** Making one takes a hundred times as long as using it, and every request asks for today. */
const calendars = new Map<string, Intl.DateTimeFormat>();

/** The civil day on which an instant falls in a time zone (IANA name), for "today" at the shop. */
export function dayOfInstant(instant: Date, timeZone: string): Day {
  let calendar = calendars.get(timeZone);
  if (calendar === undefined) {
    calendar = new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' });
    calendars.set(timeZone, calendar);
  }
  return day(calendar.format(instant));
}
