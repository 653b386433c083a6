import type { SerialField } from './serial-field';

const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** What a field's characters mean, in words: `month 4, April`, `a year ending in 7`. */
export function meaningOf(field: SerialField, text: string): string {
  switch (field.kind) {
    case 'year-digit':
    case 'year-two-digits':
      return `a year ending in ${text}`;
    case 'year-four-digits':
      return 'the year';
    case 'year-letter':
      return sayYearLetter(field, text);
    case 'month-number':
      return MONTH_NAMES[Number(text) - 1]!;
    case 'month-letter':
      return MONTH_NAMES[field.letters.indexOf(text)]!;
    case 'iso-week':
      return 'the week (ISO)';
    case 'day-of-year':
      return 'the day of the year';
    case 'day-of-month':
      return 'the day of the month';
    case 'plant':
      return sayPlant(field, text);
    case 'sequence':
      return 'the running number';
    case 'literal':
      return 'always there';
    case 'other':
      return 'not about the date';
    case 'separator':
      return 'a separator';
  }
}

function sayYearLetter(field: SerialField & { kind: 'year-letter' }, text: string): string {
  const first = field.firstYear + field.letters.indexOf(text);
  return `the year ${first}, or ${field.letters.length} years later`;
}

function sayPlant(field: SerialField & { kind: 'plant' }, text: string): string {
  const name = field.codes.find(({ code }) => code === text)?.name;
  return name ? `the plant ${name}` : 'the plant';
}
