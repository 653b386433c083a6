import { SheetRefused } from './refusal';

/** What a workbook's sheet says beside its values: cells that are formulas, and which lie under merged cells. */
export interface SheetMarks {
  /** `row column`, from 1, to the formula's text or to the range it lies under. */
  readonly formulas: ReadonlyMap<string, string>;
  readonly merged: ReadonlyMap<string, string>;
  readonly ranges: readonly string[];
}

export const MOST_COLUMNS = 250;
export const MOST_ROWS = 1_048_576;
const MOST_MERGED = 200_000;

/** Reads the marks of a sheet's XML, and refuses a sheet whose cells lie further out than any table of ours. */
export function scanSheetXml(xml: string): SheetMarks {
  const formulas = new Map<string, string>();
  const cell = /<c\b([^>]*?)(\/>|>([\s\S]*?)<\/c>)/g;
  for (let found = cell.exec(xml); found; found = cell.exec(xml)) {
    const address = /\br="([A-Z]{1,3})(\d{1,7})"/.exec(found[1]!);
    if (!address) continue;
    const [column, row] = [columnNumber(address[1]!), Number(address[2])];
    if (column > MOST_COLUMNS || row > MOST_ROWS)
      throw new SheetRefused(
        `Cell ${address[1]}${address[2]} holds something; a table has at most ${MOST_COLUMNS} columns and ${MOST_ROWS} rows.`,
      );
    const formula = found[3] === undefined ? null : /<f\b[^>]*?(?:\/>|>([\s\S]*?)<\/f>)/.exec(found[3]);
    if (formula) formulas.set(`${row} ${column}`, `=${(formula[1] ?? '').slice(0, 100)}`);
  }
  const ranges = [...xml.matchAll(/<mergeCell\b[^>]*\bref="([A-Z]{1,3}\d{1,7}:[A-Z]{1,3}\d{1,7})"/g)].map(
    (one) => one[1]!,
  );
  return { formulas, merged: mergedPlaces(ranges), ranges };
}

function mergedPlaces(ranges: readonly string[]): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  for (const range of ranges) {
    const [, a, b, c, d] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(range)!;
    const [left, top, right, bottom] = [columnNumber(a!), Number(b), columnNumber(c!), Number(d)];
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= Math.min(right, MOST_COLUMNS); column++) {
        if (row !== top || column !== left) places.set(`${row} ${column}`, range);
        if (places.size > MOST_MERGED) throw new SheetRefused('The sheet is merged all over; unmerge its cells first.');
      }
  }
  return places;
}

/** `A` is 1, `AA` is 27. */
function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}
