import { civilDateOf, day, fullWeekStart, type Day, type DaySpan } from '../day';

/** Four digits took the place of three on this day (64 FR 36807; the day itself from memory). */
const THREE_DIGITS_UNTIL = day('2000-07-02');
/** Tyre identification began in 1971 (49 CFR part 574; from memory). */
const FIRST_YEAR = 1971;

/** One way to read a tyre's code: the week, and the Sunday it begins on. */
export interface TyreWeek {
  readonly year: number;
  readonly week: number;
  readonly start: Day;
}

/**
 * The weeks a tyre's date code can mean, earliest first: `wwyy` from 2000 on, `wwy` before, where every decade
 * stays possible. Weeks run Sunday to Saturday and week 1 is the first full one of the year. Source: 49 CFR 574.5.
 * Empty when no such week has been; null when the code is not three or four digits.
 */
export function tyreWeeks(code: string, bounds: DaySpan): TyreWeek[] | null {
  if (!/^\d{3,4}$/.test(code)) return null;
  const week = Number(code.slice(0, 2));
  const tail = Number(code.slice(2));
  const years = code.length === 4 ? [2000 + tail] : [1970, 1980, 1990, 2000].map((decade) => decade + tail);
  return years
    .map((year) => ({ year, week, start: fullWeekStart(year, week) }))
    .filter((found): found is TyreWeek => found.start !== null && found.start < bounds.to && found.year >= FIRST_YEAR)
    .filter((found) => code.length === 4 || found.start < THREE_DIGITS_UNTIL);
}

/** The date code of a tyre made on a day: four digits from 2 July 2000 on, three before. */
export function tyreCodeOf(made: Day): string {
  const { year } = civilDateOf(made);
  const inYear = made >= fullWeekStart(year, 1)! ? year : year - 1;
  const week = String(Math.floor((made - fullWeekStart(inYear, 1)!) / 7) + 1).padStart(2, '0');
  return made >= THREE_DIGITS_UNTIL ? week + String(inYear % 100).padStart(2, '0') : week + String(inYear % 10);
}
