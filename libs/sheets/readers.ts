import { bad, good, isBlank, shown, textOfCell, type Cell, type Reading } from './cell';
import { brokenName } from './damage';

/** How days are written where they are not written year first. Null: nobody has said. */
export const DAY_ORDERS = ['day-month-year', 'month-day-year'] as const;
export type DayOrder = (typeof DAY_ORDERS)[number];
export interface ReadHow {
  readonly dayOrder: DayOrder | null;
}

/** Reads a cell that is not blank. */
export type Reader<T> = (cell: Cell, how: ReadHow) => Reading<T>;

/** A leading quote mark keeps a spreadsheet from running a cell as a formula; taking it off gives the text back. */
export function withoutGuard(text: string): string {
  return /^'[=+\-@\t\r\0']/.test(text) ? text.slice(1) : text;
}

/** Puts the quote mark before what a spreadsheet would run; also before a quote mark that would read as one. */
export function withGuard(text: string): string {
  return /^[=+\-@\t\r\0]/.test(text) || /^'[=+\-@\t\r\0']/.test(text) ? `'${text}` : text;
}

/** The same for names, where the mark also says of what looks damaged that it is as it should be: `'1.5E+10`. */
export function withoutNameGuard(text: string): string {
  return /^'[0-9a-z]/i.test(text) ? text.slice(1) : withoutGuard(text);
}

/** A name that would be taken for damaged, or for marked, is marked as whole. */
export function withNameGuard(text: string): string {
  return brokenName(text) !== null || /^'[0-9a-z]/i.test(text) ? `'${text}` : withGuard(text);
}

const plain = (cell: Cell): string => withoutGuard(textOfCell(cell)).replace(/\r\n?/g, '\n').trim();

/** Free text of at most so many characters. */
export const words =
  (most: number): Reader<string> =>
  (cell) => {
    if (typeof cell === 'object' && cell !== null && 'date' in cell) return good(cell.date);
    const text = plain(cell);
    return text.length > most ? tooLong(text, most) : good(text);
  };

/** A name that must stand in the file as it is in the world: a number, a code, a serial. */
export const nameOf =
  (most: number): Reader<string> =>
  (cell) => {
    // A guarded text is text for certain; nothing can have been done to it.
    const raw = typeof cell === 'string' ? cell.trim() : cell;
    const bare = typeof raw === 'string' ? withoutNameGuard(raw) : textOfCell(raw);
    const broken = typeof raw === 'string' && bare !== raw ? null : brokenName(raw);
    if (broken) return broken;
    const text = bare.replace(/\r\n?/g, '\n').trim();
    if (/\n/.test(text)) return bad('not-accepted', `${shown(cell)} has several lines; give one.`);
    return text.length > most ? tooLong(text, most) : good(text);
  };

/** One of several words; other writings of them are given beside each. */
export function oneOf<T extends string>(choices: Readonly<Record<T, readonly string[]>>): Reader<T> {
  const by = new Map<string, T>();
  for (const [choice, also] of Object.entries<readonly string[]>(choices))
    for (const one of [choice, ...also]) by.set(flat(one), choice as T);
  return (cell) => {
    const found = by.get(flat(plain(cell)));
    const accepted = Object.keys(choices).join(', ');
    return found === undefined ? bad('not-accepted', `${shown(cell)} must be one of ${accepted}.`) : good(found);
  };
}

const flat = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, '');
const YES = new Set(['yes', 'y', 'true', '1', 'x', 'ja', 'j', 'oui', 'si', 'sí', 'wahr']);
const NO = new Set(['no', 'n', 'false', '0', 'nein', 'non', '-', 'falsch']);

/** Yes or no. */
export const yesNo: Reader<boolean> = (cell) => {
  const text = plain(cell).toLowerCase();
  if (YES.has(text)) return good(true);
  return NO.has(text) ? good(false) : bad('not-accepted', `${shown(cell)} must be yes or no.`);
};

export interface Bounds {
  readonly least?: number;
  readonly most: number;
  readonly decimals?: number;
}

/** A number with a point or a comma for its decimals. A lone separator before three digits can mean either: refused. */
export const numberIn =
  ({ least = 0, most, decimals = 6 }: Bounds): Reader<number> =>
  (cell) => {
    const read = typeof cell === 'number' ? good(cell) : numberOf(plain(cell));
    if (!read.ok) return read;
    const { value } = read;
    const scaled = value * 10 ** decimals;
    if (value < least || value > most || Math.abs(scaled - Math.round(scaled)) > 1e-6 * Math.max(1, Math.abs(scaled)))
      return bad(
        'not-accepted',
        `${shown(cell)} must be ${decimals === 0 ? 'a whole number' : 'a number'} from ${least} to ${most}${decimals > 0 && decimals < 6 ? ` with at most ${decimals} decimals` : ''}.`,
      );
    return good(value);
  };

function numberOf(typed: string): Reading<number> {
  const text = typed.replace(/[\s\u00A0'’]/g, '').replace(/^(€|\$|£|EUR|USD|GBP|CHF)|(€|\$|£|EUR|USD|GBP|CHF)$/gi, '');
  if (!/^[+-]?\d[\d.,]*$/.test(text)) return bad('not-accepted', `${shown(typed)} is no number.`);
  const marks = text.replace(/[^.,]/g, '');
  if (marks === '') return good(Number(text));
  const last = marks[marks.length - 1]!;
  const other = last === '.' ? ',' : '.';
  const whole = text.split(last);
  if (marks.includes(last.repeat(2)) || whole.length > 2) return thousandsOnly(text, last, other);
  const rest = whole[1]!;
  if (marks.length === 1 && rest.length === 3 && whole[0]!.replace(/^[+-]/, '') !== '0')
    return bad('ambiguous-number', `${shown(typed)} can mean thousands or decimals; write it without the separator.`);
  const [head] = whole;
  if (head!.includes(other) && !/^[+-]?\d{1,3}([.,]\d{3})+$/.test(head!))
    return bad('not-accepted', `${shown(typed)} is no number.`);
  return good(Number(`${head!.replaceAll(other, '')}.${rest || '0'}`));
}

function thousandsOnly(text: string, last: string, other: string): Reading<number> {
  const groups = new RegExp(`^[+-]?\\d{1,3}(\\${last}\\d{3})+$`);
  return groups.test(text) && !text.includes(other)
    ? good(Number(text.replaceAll(last, '')))
    : bad('not-accepted', `${shown(text)} is no number.`);
}

/** Several texts in one cell, between semicolons, bars or line ends. */
export const listOf =
  <T>(each: Reader<T>, most = 100): Reader<readonly T[]> =>
  (cell, how) => {
    // One name alone must be looked at as it is, so that damage to it is seen.
    const single = typeof cell !== 'string' || !/[;|\n]/.test(cell);
    const pieces: readonly Cell[] = single
      ? [cell]
      : plain(cell)
          .split(/[;|\n]/)
          .map((one) => one.trim())
          .filter((one) => one !== '');
    if (pieces.length > most) return bad('too-long', `The cell lists ${pieces.length}; it may list at most ${most}.`);
    const values: T[] = [];
    for (const piece of pieces) {
      if (isBlank(piece)) continue;
      const read = each(piece, how);
      if (!read.ok) return read;
      values.push(read.value);
    }
    return good(values);
  };

function tooLong(text: string, most: number): Reading<never> {
  return bad('too-long', `${shown(text)} has ${text.length} characters; at most ${most} are kept.`);
}
