import { bad, shown, textOfCell, LONGEST_CELL, type Cell, type Reading } from './cell';

/** As spreadsheets write it: one digit, decimals, a sign. A serial such as 7E01234 has none and is whole. */
const SCIENTIFIC = /^[+-]?\d([.,]\d+)?E[+-]\d{2,}$/i;
/** The months whole and as they are usually cut, English and German. DECK-1 and MARK-2 begin like one and are none. */
const MONTH = [
  'jan(?:uary|uar)?|feb(?:ruary|ruar)?|mar(?:ch)?|mär(?:z)?|mrz|apr(?:il)?|may|mai|june?|juni|july?|juli|aug(?:ust)?',
  'sept?(?:ember)?|o[ck]t(?:ober)?|nov(?:ember)?|de[cz](?:ember)?',
].join('|');
/** Days as spreadsheets show what they took for one: 12-Mar, Mar-12, 03.Mai, 2012-03-01 00:00:00. */
const DAYLIKE = [
  new RegExp(`^\\d{1,2}[-./ ](?:${MONTH})\\.?$`, 'i'),
  new RegExp(`^(?:${MONTH})\\.?[-./ ]\\d{1,4}$`, 'i'),
  /^\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}(:\d{2})?$/,
];
const FAULTS = /^#(REF|N\/A|VALUE|NAME|NUM|NULL|DIV\/0|SPILL|CALC)[!?]?$/i;
/** U+FFFD stands where a character was lost; the pairs are UTF-8 that was read as a single-byte encoding. */
const LOST = /\uFFFD/;
const MISREAD = /Ã[\u0080-\u00BF€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ¡-¿]|â€[\u0080-\u00BF™œ“”¦]|Â[\u00A0-\u00BF]/;
/** Numbers in spreadsheets keep 15 digits; what follows is made zero. */
const DIGITS_KEPT = 15;

/** Damage that no column can mend: a formula, a fault, a merged cell, lost characters, too much text. */
export function brokenCell(cell: Cell): Reading<never> | null {
  if (typeof cell === 'object' && cell !== null) {
    if ('formula' in cell)
      return bad('formula', `The cell is a formula (${shown(cell)}); copy the column and paste its values.`);
    if ('fault' in cell)
      return bad('sheet-fault', `The spreadsheet could not work this cell out (${cell.fault}); enter the value.`);
    if ('merged' in cell)
      return bad('merged', `The cell lies under merged cells (${cell.merged}); unmerge them and fill each row.`);
    return null;
  }
  if (typeof cell !== 'string') return null;
  if (cell.length > LONGEST_CELL)
    return bad('too-long', `The cell holds ${cell.length} characters; a cell holds at most ${LONGEST_CELL}.`);
  if (LOST.test(cell))
    return bad('broken-encoding', `${shown(cell)} has lost a character; save the file as "CSV UTF-8" and try again.`);
  if (MISREAD.test(cell))
    return bad(
      'broken-encoding',
      `${shown(cell)} was saved in one encoding and read in another; save the original as "CSV UTF-8".`,
    );
  if (FAULTS.test(cell.trim()))
    return bad('sheet-fault', `The spreadsheet could not work this cell out (${cell.trim()}); enter the value.`);
  return null;
}

/**
 * Damage done to what is a name, not a quantity: a part number, a serial, a telephone number. The original cannot be
 * known from what is left, so nothing is mended: the cell is refused, and the sentence says what happened to it.
 */
export function brokenName(cell: Cell): Reading<never> | null {
  if (typeof cell === 'object' && cell !== null && 'date' in cell)
    return bad(
      'became-a-day',
      `The spreadsheet made a day of it (${cell.date}); make the column text and enter it anew.`,
    );
  if (typeof cell === 'boolean')
    return bad('not-accepted', `${shown(cell)} is a yes or no; make the column text and enter it anew.`);
  if (typeof cell === 'number') return brokenNumber(cell);
  const text = textOfCell(cell).trim();
  if (SCIENTIFIC.test(text)) return scientific(text);
  if (DAYLIKE.some((day) => day.test(text)))
    return bad('became-a-day', `${shown(text)} looks like a day that a spreadsheet made of it; enter it anew as text.`);
  if (text.startsWith('='))
    return bad('formula', `The cell is a formula (${shown(text)}); copy the column and paste its values.`);
  if (/^\d+$/.test(text) && text.length > DIGITS_KEPT && /^0+$/.test(text.slice(DIGITS_KEPT))) return digitsLost(text);
  return null;
}

function brokenNumber(value: number): Reading<never> | null {
  if (!Number.isInteger(value))
    return bad('not-accepted', `"${value}" is a number with decimals; make the column text and enter it anew.`);
  if (Math.abs(value) >= 10 ** DIGITS_KEPT) return digitsLost(String(value));
  return null;
}

const scientific = (text: string) =>
  bad(
    'scientific-notation',
    `"${text}" is a number that a spreadsheet rewrote and cut; make the column text and enter the original.`,
  );

const digitsLost = (text: string) =>
  bad('digits-lost', `"${text}" has lost digits: a spreadsheet keeps ${DIGITS_KEPT}; enter it anew as text.`);

/** What a whole column tells about the names in it. */
export interface ColumnLook {
  /** Lengths of the numbers in it that begin with 0, and how many have each. */
  readonly zeroLed: ReadonlyMap<number, number>;
}

/**
 * A number that is shorter than every number of its column which begins with 0 has probably lost its zeros; so has
 * one that a workbook kept as a quantity among them. Null when nothing speaks for it.
 */
export function lostZeros(cell: Cell, { zeroLed }: ColumnLook): Reading<never> | null {
  const text = textOfCell(cell).trim();
  if (!/^[1-9]\d*$/.test(text) || zeroLed.size !== 1) return null;
  const [[length]] = [...zeroLed.keys()].map((one) => [one] as const) as [readonly [number]];
  if (text.length >= length) return null;
  return bad(
    'leading-zeros',
    `"${text}" has ${text.length} digits, and the others of this column that begin with 0 have ${length}; if a spreadsheet ate its zeros, enter it anew as text.`,
  );
}
