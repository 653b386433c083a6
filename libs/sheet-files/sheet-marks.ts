import { SheetRefused } from './refusal';
import { hearXml } from './xml-events';

export const MOST_COLUMNS = 250;
export const MOST_ROWS = 1_048_576;
const MOST_MERGED = 200_000;

/** What stands behind a sheet's cells: which places lie under merged ones, as `row column` from 1, to the range. */
export interface SheetMarks {
  readonly merged: ReadonlyMap<string, string>;
}

/** Walks a sheet's XML for its marks, and refuses one whose cells lie further out than any table of ours. */
export async function sheetMarks(xml: AsyncIterable<string>): Promise<SheetMarks> {
  const ranges: string[] = [];
  let column = 0;
  await hearXml(xml, {
    open(name, attributes) {
      if (name === 'c') checkPlace(attributes['r'], (column = columnAfter(column, attributes['r'])));
      else if (name === 'row') {
        column = 0;
        checkRow(attributes['r']);
      } else if (name === 'mergeCell') ranges.push(attributes['ref'] ?? '');
      if (ranges.length > MOST_MERGED) throw mergedAllOver();
    },
  });
  return { merged: mergedPlaces(ranges) };
}

/** The column of a cell, from 1: the one its place names, else the one after the cell before it. */
export function columnAfter(before: number, place: string | undefined): number {
  const letters = place === undefined ? null : /^[A-Z]+/.exec(place);
  return letters ? columnNumber(letters[0].slice(0, 8)) : before + 1;
}

function checkPlace(place: string | undefined, column: number): void {
  const row = /\d+$/.exec(place ?? '')?.[0] ?? '0';
  if (column <= MOST_COLUMNS && Number(row) <= MOST_ROWS) return;
  throw new SheetRefused(
    `Cell ${place?.slice(0, 20) ?? `${column} of a row`} holds something; a table has at most ${MOST_COLUMNS} columns and ${MOST_ROWS} rows.`,
  );
}

/** A row may come without cells: what stands before it is handed out blank, so its number alone must have an end. */
function checkRow(number: string | undefined): void {
  if (number === undefined || Number(number) <= MOST_ROWS) return;
  throw new SheetRefused(`The sheet has a row ${number.slice(0, 20)}; a table has at most ${MOST_ROWS} rows.`);
}

const mergedAllOver = () => new SheetRefused('The sheet is merged all over; unmerge its cells first.');

function mergedPlaces(ranges: readonly string[]): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  for (const range of ranges) {
    const found = /^([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})$/.exec(range);
    if (!found) continue;
    const [left, top, right, bottom] = [
      columnNumber(found[1]!),
      Number(found[2]),
      columnNumber(found[3]!),
      Number(found[4]),
    ];
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= Math.min(right, MOST_COLUMNS); column++) {
        if (row !== top || column !== left) places.set(`${row} ${column}`, range);
        if (places.size > MOST_MERGED) throw mergedAllOver();
      }
  }
  return places;
}

/** `A` is 1, `AA` is 27. */
function columnNumber(letters: string): number {
  let number = 0;
  for (let at = 0; at < letters.length; at++) number = number * 26 + letters.charCodeAt(at) - 64;
  return number;
}
