import { civilDateOf, dayOf, daysInMonth, isLeapYear, meetOfSpans, monthSpan, weekSpan, type DaySpan } from '../day';
import { EARLIEST_BUILD_DAY } from './bounds';
import type { CompiledScheme } from './compile-scheme';

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
  // A week year begins up to three days before the calendar year and ends up to three days after it.
  const low = Math.max(civilDateOf(within.from).year - 1, first);
  const high = civilDateOf(within.to - 1).year + 1;
  for (let year = low + ((((residue - low) % cycle) + cycle) % cycle); year <= high; year += cycle) {
    const named = spanInYear(compiled, groups, year);
    const days = named && meetOfSpans(named, within);
    if (days) found.push({ year, days });
  }
  return found;
}

/** The years a year field fits: those that leave `residue` in a cycle, from a first year on. */
function yearsOf(compiled: CompiledScheme, groups: readonly string[]): readonly [number, number, number] {
  const field = compiled.year === 0 ? undefined : compiled.fields[compiled.year - 1];
  const text = groups[compiled.year]!;
  const earliest = civilDateOf(EARLIEST_BUILD_DAY).year - 1;
  switch (field?.kind) {
    case 'year-digit':
      return [Number(text), 10, earliest];
    case 'year-two-digits':
      return [Number(text), 100, earliest];
    case 'year-four-digits':
      return [Number(text), 10_000, earliest];
    case 'year-letter':
      return [field.firstYear + field.letters.indexOf(text), field.letters.length, field.firstYear];
    default:
      return [0, 1, earliest];
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
