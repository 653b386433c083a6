import type { SerialField } from '../../build-date';
import { bad, good, shown, type Reading } from '../cell';
import { escapeMarks, unescapeMarks } from './escape';

/** Kinds of field that need nothing besides their name. */
const BARE = [
  'year-digit',
  'year-two-digits',
  'year-four-digits',
  'month-number',
  'iso-week',
  'day-of-year',
  'day-of-month',
  'separator',
] as const;

/** How one field of a serial is written in a cell, for the guide. */
export const FIELD_HELP =
  `${BARE.join(', ')}, year-letter ABCDEFGHJK from 2010, month-letter ABCDEFGHJKLM, ` +
  'plant 1 (or plant 1: A=North, B=South), sequence 4 (or sequence 4 to 6), literal B, other 2';

const PLANT_MARKS = /[;|\n,=:]/g;

/** One field in words; {@link readField} gives the same field back. */
export function writeField(field: SerialField): string {
  switch (field.kind) {
    case 'year-letter':
      return `year-letter ${field.letters} from ${field.firstYear}`;
    case 'month-letter':
      return `month-letter ${field.letters}`;
    case 'plant':
      return `plant ${field.length}${field.codes.length === 0 ? '' : `: ${field.codes.map(writeCode).join(', ')}`}`;
    case 'sequence':
      return `sequence ${field.length}${field.maxLength === undefined ? '' : ` to ${field.maxLength}`}`;
    case 'literal':
      return `literal ${field.text}`;
    case 'other':
      return `other ${field.length}`;
    default:
      return field.kind;
  }
}

const writeCode = ({ code, name }: { code: string; name: string }): string =>
  `${escapeMarks(code, PLANT_MARKS)}=${escapeMarks(name, PLANT_MARKS)}`;

/** Reads one field as {@link writeField} writes it; ranges are checked with the whole scheme. */
export function readField(text: string): Reading<object> {
  const bare = BARE.find((one) => one === text.toLowerCase().replace(/\s+/g, '-'));
  if (bare) return good({ kind: bare });
  const [word = '', rest = ''] = [text.split(/\s/)[0]!.toLowerCase(), text.slice(text.split(/\s/)[0]!.length).trim()];
  const made = FIELDS[word]?.(rest);
  return made ? good(made) : bad('not-accepted', `${shown(text)} is no field of a serial; written are: ${FIELD_HELP}.`);
}

const FIELDS: Readonly<Record<string, (rest: string) => object | null>> = {
  'year-letter'(rest) {
    const found = /^([A-Z0-9]+) from (\d{4})$/i.exec(rest);
    return found && { kind: 'year-letter', letters: found[1]!.toUpperCase(), firstYear: Number(found[2]) };
  },
  'month-letter': (rest) => (/^[A-Z0-9]+$/i.test(rest) ? { kind: 'month-letter', letters: rest.toUpperCase() } : null),
  plant(rest) {
    const found = /^(\d{1,2})(?::\s*(.*))?$/s.exec(rest);
    if (!found) return null;
    const codes = (found[2] ?? '')
      .split(',')
      .filter((one) => one.trim() !== '')
      .map((one) => one.split('='))
      .map(([code = '', name = '']) => ({ code: unescapeMarks(code.trim()), name: unescapeMarks(name.trim()) }));
    return { kind: 'plant', length: Number(found[1]), codes };
  },
  sequence(rest) {
    const found = /^(\d{1,2})(?: to (\d{1,2}))?$/.exec(rest);
    if (!found) return null;
    const length = Number(found[1]);
    return { kind: 'sequence', length, ...(found[2] === undefined ? {} : { maxLength: Number(found[2]) }) };
  },
  literal: (rest) => (rest === '' ? null : { kind: 'literal', text: rest.toUpperCase() }),
  other: (rest) => (/^\d{1,2}$/.test(rest) ? { kind: 'other', length: Number(rest) } : null),
};
