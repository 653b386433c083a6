import { dayOf, daysInMonth, isLeapYear, meetOfSpans, monthSpan, weekSpan, type Day, type DaySpan } from '../day';
import type { CompiledScheme } from './compile-scheme';

/** The week year of the first days of 1950 is 1949. */
const FIRST_YEAR = 1949;

/** Build days of a serial in one of the years its year field fits. */
export interface DaysInYear {
  readonly year: number;
  readonly days: DaySpan;
}

/**
 * Build days by the date fields a scheme found (`groups` is the match of its pattern), one entry for each possible
 * year, within the scheme's valid span and the bounds. Empty when the fields name no day there: day 366 of a
 * common year, week 53 of a short one, a year outside the scheme's time.
 */
export function daysByYear(compiled: CompiledScheme, groups: readonly string[], bounds: DaySpan): DaysInYear[] {
  const within = meetOfSpans(compiled.valid, bounds);
  if (within === null) return [];
  if (compiled.year === 0 && compiled.part === 0) return [{ year: 0, days: within }];
  const found: DaysInYear[] = [];
  const [residue, cycle, first] = yearsOf(compiled, groups);
  // A week year begins or ends up to three days off the calendar year, so a year on either side is tried too.
  const low = Math.max(yearNear(within.from) - 2, first);
  const high = yearNear(within.to) + 2;
  for (let year = low + ((((residue - low) % cycle) + cycle) % cycle); year <= high; year += cycle) {
    const named = spanInYear(compiled, groups, year);
    const days = named && meetOfSpans(named, within);
    if (days) found.push({ year, days });
  }
  return found;
}

/** The year of a day, or one off around New Year: enough to say which years are worth trying. */
function yearNear(value: Day): number {
  return 1970 + Math.floor(value / 365.2425);
}

/** The years a year field fits: those that leave `residue` in a cycle, from a first year on. */
function yearsOf(compiled: CompiledScheme, groups: readonly string[]): readonly [number, number, number] {
  const field = compiled.year === 0 ? undefined : compiled.fields[compiled.year - 1];
  const text = groups[compiled.year]!;
  switch (field?.kind) {
    case 'year-digit':
      return [Number(text), 10, FIRST_YEAR];
    case 'year-two-digits':
      return [Number(text), 100, FIRST_YEAR];
    case 'year-four-digits':
      return [Number(text), 10_000, FIRST_YEAR];
    case 'year-letter':
      return [field.firstYear + field.letters.indexOf(text), field.letters.length, field.firstYear];
    default:
      return [0, 1, FIRST_YEAR];
  }
}

function spanInYear(compiled: CompiledScheme, groups: readonly string[], year: number): DaySpan | null {
  const field = compiled.part === 0 ? undefined : compiled.fields[compiled.part - 1];
  const text = groups[compiled.part]!;
  switch (field?.kind) {
    case 'month-number':
      return inMonth(year, Number(text), groups[compiled.dayOfMonth], compiled.dayOfMonth > 0);
    case 'month-letter':
      return inMonth(year, field.letters.indexOf(text) + 1, groups[compiled.dayOfMonth], compiled.dayOfMonth > 0);
    case 'iso-week':
      return weekSpan(year, Number(text));
    case 'day-of-year':
      return dayOfYear(year, Number(text));
    default:
      return { from: dayOf(year, 1, 1), to: dayOf(year + 1, 1, 1) };
  }
}

function inMonth(year: number, month: number, dayText: string | undefined, hasDay: boolean): DaySpan | null {
  if (!hasDay) return monthSpan(year, month);
  const dayOfMonth = Number(dayText);
  if (dayOfMonth > daysInMonth(year, month)) return null;
  const from = dayOf(year, month, dayOfMonth);
  return { from, to: from + 1 };
}

function dayOfYear(year: number, number: number): DaySpan | null {
  if (number < 1 || number > (isLeapYear(year) ? 366 : 365)) return null;
  const from = dayOf(year, 1, 1) + number - 1;
  return { from, to: from + 1 };
}
