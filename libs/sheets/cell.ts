/**
 * One cell as it stood in the file. CSV gives text only; a workbook also numbers, yes/no and days, and marks what no
 * value can be taken from: a formula, a fault such as #REF!, a place under a merged cell.
 */
export type Cell =
  | string
  | number
  | boolean
  | null
  | { readonly date: string }
  | { readonly formula: string }
  | { readonly fault: string }
  | { readonly merged: string };

/** What damage a spreadsheet or a wrong encoding has done, or what is wrong with a value; stable for programs. */
export const CELL_FAULTS = [
  'missing',
  'not-accepted',
  'too-long',
  'scientific-notation',
  'digits-lost',
  'leading-zeros',
  'became-a-day',
  'day-number',
  'day-order',
  'formula',
  'sheet-fault',
  'merged',
  'broken-encoding',
  'ambiguous-number',
  'not-on-file',
  'twice',
  'conflict',
] as const;
export type CellFault = (typeof CELL_FAULTS)[number];

/** Why a cell is not accepted. `field` is the column's; null speaks of the whole row. */
export interface CellProblem {
  readonly field: string | null;
  readonly code: CellFault;
  /** One sentence naming the value and what would be accepted. */
  readonly says: string;
}

export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly code: CellFault; readonly says: string };

export const good = <T>(value: T): Reading<T> => ({ ok: true, value });
export const bad = (code: CellFault, says: string): Reading<never> => ({ ok: false, code, says });

/** A spreadsheet holds at most so many characters in a cell. */
export const LONGEST_CELL = 32_767;

/** The cell as a person sees it, for messages and for the list of rejected rows. */
export function textOfCell(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'string') return cell;
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if ('date' in cell) return cell.date;
  if ('formula' in cell) return cell.formula;
  return 'fault' in cell ? cell.fault : '';
}

/** True for a cell that says nothing. A place under a merged cell is not blank: nobody knows what it says. */
export function isBlank(cell: Cell | undefined): boolean {
  return cell === undefined || cell === null || (typeof cell === 'string' && cell.trim() === '');
}

/** The value in quotes, cut to a length a sentence can bear. */
export function shown(cell: Cell): string {
  const text = textOfCell(cell).replace(/\s+/g, ' ').trim();
  return `"${text.length > 60 ? `${text.slice(0, 57)}...` : text}"`;
}
