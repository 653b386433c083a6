import { ALL_DAYS, day, type DaySpan } from '../day';
import type { SerialField } from './serial-field';
import type { SerialScheme } from './serial-scheme';

/** A scheme made ready for reading: its form as a pattern with one group for each field but separators. */
export interface CompiledScheme {
  readonly scheme: SerialScheme;
  readonly valid: DaySpan;
  readonly pattern: RegExp;
  /** Fields by their group in the pattern, from 1; separators have none. */
  readonly fields: readonly SerialField[];
  /** False when every field stands at a fixed place, so that dashes and blanks need not be there at all. */
  readonly needsSeparators: boolean;
  /** Groups of the date fields in the pattern, 0 where there is none. */
  readonly year: number;
  readonly part: number;
  readonly dayOfMonth: number;
}

const YEARS: readonly string[] = ['year-digit', 'year-two-digits', 'year-four-digits', 'year-letter'];
const PARTS: readonly string[] = ['month-number', 'month-letter', 'iso-week', 'day-of-year'];

/** Compiles a scheme once; the result is only read afterwards. */
export function compileScheme(scheme: SerialScheme): CompiledScheme {
  const needsSeparators = scheme.fields.some(
    (field) => field.kind === 'sequence' && (field.maxLength ?? field.length) > field.length,
  );
  const fields = scheme.fields.filter((field) => field.kind !== 'separator');
  const groupOf = (kinds: readonly string[]) => fields.findIndex((field) => kinds.includes(field.kind)) + 1;
  const forms = scheme.fields.map((field) => formOf(field, needsSeparators));
  return {
    scheme,
    valid: {
      from: scheme.validFrom === null ? ALL_DAYS.from : day(scheme.validFrom),
      to: scheme.validTo === null ? ALL_DAYS.to : day(scheme.validTo),
    },
    pattern: new RegExp(`^${forms.join('')}$`),
    fields,
    needsSeparators,
    year: groupOf(YEARS),
    part: groupOf(PARTS),
    dayOfMonth: groupOf(['day-of-month']),
  };
}

function formOf(field: SerialField, needsSeparators: boolean): string {
  switch (field.kind) {
    case 'year-digit':
      return '(\\d)';
    case 'year-two-digits':
      return '(\\d\\d)';
    case 'year-four-digits':
      return '(\\d{4})';
    case 'year-letter':
    case 'month-letter':
      return `([${field.letters}])`;
    case 'month-number':
      return '(0[1-9]|1[0-2])';
    case 'iso-week':
      return '(0[1-9]|[1-4]\\d|5[0-3])';
    case 'day-of-year':
      return '([0-3]\\d\\d)';
    case 'day-of-month':
      return '(0[1-9]|[12]\\d|3[01])';
    case 'plant':
      return field.codes.length > 0
        ? `(${field.codes.map(({ code }) => code).join('|')})`
        : `([A-Z0-9]{${field.length}})`;
    case 'sequence':
      return `(\\d{${field.length},${field.maxLength ?? field.length}})`;
    case 'literal':
      return `(${field.text})`;
    case 'separator':
      return needsSeparators ? '-' : '';
    case 'other':
      return `([A-Z0-9]{${field.length}})`;
  }
}
