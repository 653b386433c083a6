import { isBlank, textOfCell, type Cell } from '../sheets';
import { csvRecords, delimiterOf } from './csv-rows';
import { findEncoding, startOf, textOf, type Encoding } from './encoding';
import { readWorkbook } from './read-workbook';
import { SheetRefused } from './refusal';
import { MOST_COLUMNS, MOST_ROWS } from './sheet-marks';

/** A row of the file as a spreadsheet numbers it: the first is 1. */
export interface SheetRow {
  readonly n: number;
  readonly cells: readonly Cell[];
}

/** A file that is open: its headings, how it was read, and its rows in pieces. */
export interface OpenSheet {
  readonly format: 'csv' | 'xlsx';
  readonly encoding: Encoding | null;
  /** False where the encoding is a guess that a person should look at. */
  readonly encodingCertain: boolean;
  readonly delimiter: string | null;
  readonly headings: readonly string[];
  readonly rows: AsyncIterable<readonly SheetRow[]>;
}

/** Opens a CSV file or a workbook by what is in it, not by its name; the first row that is not blank is the heading. */
export async function openSheet(path: string, name: string, encoding?: Encoding): Promise<OpenSheet> {
  const start = await startOf(path, 8);
  if (start.length === 0) throw new SheetRefused('The file is empty; give a heading and rows.');
  const format = formatOf(start, name);
  if (format === 'xlsx') {
    const rows = numbered(readWorkbook(path));
    return { format, encoding: null, encodingCertain: true, delimiter: null, ...(await withHeadings(rows)) };
  }
  const found = encoding ? { encoding, certain: true } : await findEncoding(path);
  let delimiter = ',';
  const refuse = (line: number, says: string) => new SheetRefused(`Line ${line}: ${says}`);
  const records = csvRecords(withoutNul(textOf(path, found.encoding)), {
    delimiter: (text) => (delimiter = delimiterOf(text)),
    refuse,
  });
  const opened = await withHeadings(numbered(cellsOf(records)));
  return { format, encoding: found.encoding, encodingCertain: found.certain, delimiter, ...opened };
}

const OTHERS: readonly (readonly [string, string])[] = [
  ['d0cf11e0', 'an old workbook (.xls); save it as .xlsx or CSV'],
  ['25504446', 'a PDF'],
  ['89504e47', 'a picture'],
  ['ffd8ff', 'a picture'],
  ['47494638', 'a picture'],
  ['1f8b', 'an archive'],
  ['52617221', 'an archive'],
  ['377abcaf', 'an archive'],
  ['7f454c46', 'a program'],
  ['4d5a', 'a program'],
];

function formatOf(start: Buffer, name: string): 'csv' | 'xlsx' {
  const hex = start.toString('hex');
  const isZip = hex.startsWith('504b0304');
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? '';
  const other = OTHERS.find(([magic]) => hex.startsWith(magic));
  // "MZ" can begin a heading; with a zero after it, it does not.
  if (other && (other[0] !== '4d5a' || start.includes(0)))
    throw new SheetRefused(`The file is ${other[1]}; give CSV or XLSX.`);
  if (isZip && ending !== 'xlsx' && ending !== 'xlsm')
    throw new SheetRefused(
      `The file is named .${ending || '(nothing)'} but is an archive or a workbook; a workbook is named .xlsx.`,
    );
  if (!isZip && (ending === 'xlsx' || ending === 'xlsm'))
    throw new SheetRefused(
      `The file is named .${ending}, but is no workbook; open it in a spreadsheet and save it again.`,
    );
  if (!isZip && ending !== '' && !['csv', 'txt', 'tsv'].includes(ending))
    throw new SheetRefused(`The file is named .${ending}; give a CSV file (.csv, .txt, .tsv) or a workbook (.xlsx).`);
  return isZip ? 'xlsx' : 'csv';
}

async function* cellsOf(records: AsyncIterable<readonly { cells: readonly string[] }[]>) {
  for await (const batch of records) yield batch.map(({ cells }) => cells as readonly Cell[]);
}

/** A zero character cannot be kept; it stands as a lost one, so that the cell is named. */
async function* withoutNul(pieces: AsyncIterable<string>): AsyncGenerator<string> {
  for await (const piece of pieces) yield piece.includes('\0') ? piece.replaceAll('\0', '\uFFFD') : piece;
}

/** Gives each row its number; blank rows have one but are passed over. */
async function* numbered(batches: AsyncIterable<readonly (readonly Cell[])[]>): AsyncGenerator<readonly SheetRow[]> {
  let n = 0;
  for await (const batch of batches) {
    const rows: SheetRow[] = [];
    for (const cells of batch) {
      n++;
      if (n > MOST_ROWS) throw new SheetRefused(`The file has more than ${MOST_ROWS} rows; split it.`, true);
      if (!cells.every(isBlank)) rows.push({ n, cells });
    }
    if (rows.length > 0) yield rows;
  }
}

async function withHeadings(batches: AsyncGenerator<readonly SheetRow[]>) {
  const first = await batches.next();
  const [heading, ...rest] = first.done ? [] : first.value;
  if (!heading) throw new SheetRefused('The file holds nothing; give a heading and rows.');
  const headings = heading.cells.map((cell) => textOfCell(cell).trim());
  while (headings.length > 0 && headings[headings.length - 1] === '') headings.pop();
  if (headings.length > MOST_COLUMNS)
    throw new SheetRefused(`The heading has ${headings.length} columns; a table has at most ${MOST_COLUMNS}.`);
  async function* rows(): AsyncGenerator<readonly SheetRow[]> {
    if (rest.length > 0) yield rest;
    yield* batches;
  }
  return { headings, rows: rows() };
}
