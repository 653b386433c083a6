import { readFile } from 'node:fs/promises';
import type { Cell } from '../sheets';
import { SheetRefused } from './refusal';
import { scanSheetXml, type SheetMarks } from './scan-sheet-xml';
import { checkArchive, unpack } from './unpack';

const SHEET = /^xl\/worksheets\/[^/]+\.xml$/;

/** The first sheet of a workbook, its marks laid over its values. Refused when it is broken or too large unpacked. */
export async function readWorkbook(path: string): Promise<readonly (readonly Cell[])[]> {
  const file = await readFile(path);
  await checkArchive(file);
  const entries = await unpack(file, (name) => SHEET.test(name) || name === 'xl/workbook.xml' || name === RELATIONS);
  const first = firstSheet(entries);
  const marks = scanSheetXml(entries.get(first)!.toString('utf8'));
  return (await valuesOf(file)).map((row, at) => markedRow(row, at + 1, marks));
}

const RELATIONS = 'xl/_rels/workbook.xml.rels';

/** The part that holds the first sheet of the workbook's list. */
function firstSheet(entries: ReadonlyMap<string, Buffer>): string {
  const [book, relations] = ['xl/workbook.xml', RELATIONS].map((name) => entries.get(name)?.toString('utf8') ?? '');
  const id = /<sheet\b[^>]*\br:id="([^"]+)"/.exec(book!)?.[1];
  const relation = [...relations!.matchAll(/<Relationship\b[^>]*>/g)].find(([text]) =>
    text.includes(`Id="${id}"`),
  )?.[0];
  const target = /\bTarget="\/?(?:xl\/)?([^"]+)"/.exec(relation ?? '')?.[1];
  const name = target === undefined ? undefined : `xl/${target}`;
  if (name !== undefined && entries.has(name)) return name;
  throw new SheetRefused('The workbook is broken or no workbook; open it in a spreadsheet and save it again.');
}

type Value = string | number | boolean | Date | null;

async function valuesOf(file: Buffer): Promise<readonly (readonly Value[])[]> {
  // Loaded when the first workbook comes: programs that read text alone need not wait for it.
  const { readSheet } = await import('read-excel-file/node');
  try {
    // Blanks at the ends of a cell are looked at where the cell is read.
    return (await readSheet(file, { trim: false })) as unknown as Value[][];
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new SheetRefused(
      `The workbook cannot be read (${why.slice(0, 200)}); open it in a spreadsheet and save it again.`,
    );
  }
}

function markedRow(row: readonly Value[], number: number, { formulas, merged }: SheetMarks): readonly Cell[] {
  const plain = formulas.size === 0 && merged.size === 0;
  return row.map((value, at) => {
    const place = `${number} ${at + 1}`;
    const formula = plain ? undefined : formulas.get(place);
    if (formula !== undefined) return { formula };
    const range = plain ? undefined : merged.get(place);
    return range === undefined ? cellOf(value) : { merged: range };
  });
}

function cellOf(value: Value): Cell {
  if (!(value instanceof Date)) return value;
  const text = value.toISOString();
  return text.endsWith('T00:00:00.000Z') ? { date: text.slice(0, 10) } : text.slice(0, 19).replace('T', ' ');
}
