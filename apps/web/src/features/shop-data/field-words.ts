import type { SerialField } from '../../../../../libs/build-date';
import { count } from '../../lib/say';

export type FieldKind = SerialField['kind'];

/** What a field of a serial is, in the words of the bench. */
export const FIELD_WORDS: Record<FieldKind, string> = {
  'year-digit': 'Year, last digit',
  'year-two-digits': 'Year, two digits',
  'year-four-digits': 'Year, four digits',
  'year-letter': 'Year letter',
  'month-number': 'Month, 01 to 12',
  'month-letter': 'Month letter',
  'iso-week': 'Week (ISO), 01 to 53',
  'day-of-year': 'Day of the year, 001 to 366',
  'day-of-month': 'Day of the month, 01 to 31',
  plant: 'Works',
  sequence: 'Running number',
  literal: 'Always the same',
  separator: 'Dash, blank, slash or dot',
  other: 'Says nothing of the date',
};

/** What the mark under a field says of it: four kinds of ink and line, never the ink alone. */
export type FieldGroup = 'year' | 'time' | 'number' | 'still';

const TIME: readonly FieldKind[] = ['month-number', 'month-letter', 'iso-week', 'day-of-year', 'day-of-month'];

/** Year; time within the year; running number; everything that tells no date. */
export function groupOf(kind: string): FieldGroup {
  if (kind.startsWith('year-')) return 'year';
  if ((TIME as readonly string[]).includes(kind)) return 'time';
  return kind === 'sequence' ? 'number' : 'still';
}

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** The alphabet without the letters left out; `most` cuts it after so many. */
export function lettersWithout(leftOut: string, most = ALPHABET.length): string {
  const out = new Set(leftOut.toUpperCase());
  return [...ALPHABET]
    .filter((letter) => !out.has(letter))
    .slice(0, most)
    .join('');
}

/** The letters of the alphabet that a row of letters leaves out before its last one. */
export function leftOutOf(letters: string): string {
  const last = letters.at(-1) ?? '';
  return [...ALPHABET].filter((letter) => letter < last && !letters.includes(letter)).join('');
}

/** A field of that kind as it begins. */
export function newField(kind: FieldKind): SerialField {
  switch (kind) {
    case 'year-letter':
      return { kind, letters: lettersWithout('IOQ'), firstYear: 2010 };
    case 'month-letter':
      return { kind, letters: lettersWithout('I', 12) };
    case 'plant':
      return { kind, length: 1, codes: [] };
    case 'sequence':
      return { kind, length: 4 };
    case 'other':
      return { kind, length: 1 };
    case 'literal':
      return { kind, text: 'A' };
    default:
      return { kind };
  }
}

const WIDTHS: Partial<Record<FieldKind, number>> = {
  'year-two-digits': 2,
  'year-four-digits': 4,
  'month-number': 2,
  'iso-week': 2,
  'day-of-year': 3,
  'day-of-month': 2,
  separator: 0,
};

/** Fewest and most characters of a field; a separator counts none, as on the plate they are not counted. */
export function widthOf(field: SerialField): { least: number; most: number } {
  if (field.kind === 'literal') return { least: field.text.length, most: field.text.length };
  if (field.kind === 'sequence') return { least: field.length, most: field.maxLength ?? field.length };
  const width = 'length' in field ? field.length : (WIDTHS[field.kind] ?? 1);
  return { least: width, most: width };
}

/** Where each field stands, counted from 1 and without separators: `1`, `2 and 3`, `4 to 8`, `after that, 3 to 6`. */
export function placesOf(fields: readonly SerialField[]): string[] {
  let at = 1;
  let fixed = true;
  return fields.map((field) => {
    const { least, most } = widthOf(field);
    if (field.kind === 'separator') return fixed ? `between ${at - 1} and ${at}` : 'after that';
    const said =
      fixed && least === most ? placeWords(at, least) : `from ${fixed ? at : 'there'}, ${countWords(least, most)}`;
    at += least;
    fixed &&= least === most;
    return said;
  });
}

function placeWords(at: number, width: number): string {
  if (width === 1) return `place ${at}`;
  return width === 2 ? `places ${at} and ${at + 1}` : `places ${at} to ${at + width - 1}`;
}

const countWords = (least: number, most: number): string =>
  least === most ? count(least, 'character') : `${least} to ${most} characters`;
