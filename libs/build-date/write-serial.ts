import { civilDateOf, dayOf, isoWeekDateOf, type Day } from '../day';
import type { SerialField } from './serial-field';
import type { SerialScheme } from './serial-scheme';

/** The parts of a serial that the build day does not tell. */
export interface SerialRest {
  /** Running number; cut to its last digits where the field is shorter. */
  readonly sequence?: number;
  /** Plant code for a plant field without a list of codes. */
  readonly plant?: string;
}

/**
 * The serial a scheme gives a unit built on a day: for the scheme editor's example, demo units and tests. The day
 * should lie in the scheme's valid span, else the serial will not read back to it.
 */
export function writeSerial(scheme: SerialScheme, built: Day, rest: SerialRest = {}): string {
  return scheme.fields.map((field) => writeField(field, scheme, built, rest)).join('');
}

function writeField(field: SerialField, scheme: SerialScheme, built: Day, rest: SerialRest): string {
  const { year: calendarYear, month, dayOfMonth } = civilDateOf(built);
  const week = isoWeekDateOf(built);
  const year = scheme.fields.some(({ kind }) => kind === 'iso-week') ? week.year : calendarYear;
  switch (field.kind) {
    case 'year-digit':
      return String(year % 10);
    case 'year-two-digits':
      return padded(year % 100, 2);
    case 'year-four-digits':
      return padded(year, 4);
    case 'year-letter':
      return field.letters[
        (((year - field.firstYear) % field.letters.length) + field.letters.length) % field.letters.length
      ]!;
    case 'month-number':
      return padded(month, 2);
    case 'month-letter':
      return field.letters[month - 1]!;
    case 'iso-week':
      return padded(week.week, 2);
    case 'day-of-year':
      return padded(built - dayOf(calendarYear, 1, 1) + 1, 3);
    case 'day-of-month':
      return padded(dayOfMonth, 2);
    default:
      return writeRest(field, rest);
  }
}

function writeRest(field: SerialField, { sequence = 1, plant }: SerialRest): string {
  switch (field.kind) {
    case 'plant':
      return field.codes[0]?.code ?? (plant ?? '').padEnd(field.length, 'A').slice(0, field.length);
    case 'sequence':
      return padded(sequence, field.length).slice(-(field.maxLength ?? field.length));
    case 'literal':
      return field.text;
    case 'separator':
      return '-';
    case 'other':
      return 'A'.repeat(field.length);
    default:
      throw new RangeError(`a ${field.kind} field is written from the build day`);
  }
}

function padded(value: number, width: number): string {
  return String(value).padStart(width, '0');
}
