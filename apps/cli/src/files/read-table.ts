import { Refusal } from '../refusal';
import { countLines } from '../../../../libs/sheet-files';
import { textOf } from './decode';
import { why, type Input } from './open-input';
import { csvRows, delimiterOf, type CsvRow } from './read-csv';

/** One row of a table, its values under the names the tool knows: lower case, words joined by `_`. */
export interface TableRow {
  readonly line: number;
  readonly values: Readonly<Record<string, unknown>>;
}

export interface Table {
  readonly name: string;
  readonly kind: 'csv' | 'json-lines';
  /** Column names as the file writes them, in order; of JSON lines those of the first object. */
  readonly columns: readonly string[];
  /** The delimiter of a CSV file; a comma for JSON lines. */
  readonly delimiter: string;
  readonly rows: AsyncIterable<readonly (TableRow | BadRow)[]>;
}

/** A row that is no row of this table. */
export interface BadRow {
  readonly line: number;
  readonly problem: string;
}

/** The name the tool knows a column by: `Fitted on`, `fittedOn` and `fitted_on` are one. */
export function columnName(typed: string): string {
  return typed
    .trim()
    .replace(/([a-z])([A-Z])/g, '$1_$2')
    .toLowerCase()
    .replace(/[\s-]+/g, '_');
}

/** Opens a table and reads its heading; CSV or JSON lines, by its first character. */
export async function openTable(input: Input, onRead: (bytes: number) => void): Promise<Table> {
  const pieces = textOf(counted(input, onRead), input.name);
  const start = await firstWords(pieces);
  if (start === '') throw new Refusal(`${input.name} is empty; give a heading and rows, or JSON lines.`);
  const whole = withFirst(start, pieces);
  const mark = start.trimStart()[0];
  if (mark === '[')
    throw new Refusal(`${input.name} is a JSON list; give one object per line (JSON lines) or CSV instead.`);
  return mark === '{' ? jsonTable(whole, input.name) : csvTable(whole, input.name);
}

/** The text up to a piece that holds more than blanks; empty when there is none. */
async function firstWords(pieces: AsyncIterator<string>): Promise<string> {
  let start = '';
  for (let next = await pieces.next(); !next.done; next = await pieces.next()) {
    start += next.value;
    if (start.trim() !== '') return start;
  }
  return '';
}

async function* counted({ bytes, name }: Input, onRead: (bytes: number) => void): AsyncGenerator<Uint8Array> {
  try {
    for await (const piece of bytes) {
      onRead(piece.length);
      yield piece;
    }
  } catch (error) {
    throw new Refusal(`${name} cannot be read: ${why(error)}.`);
  }
}

async function* withFirst(first: string, rest: AsyncIterable<string>): AsyncGenerator<string> {
  yield first;
  yield* rest;
}

async function csvTable(pieces: AsyncIterable<string>, name: string): Promise<Table> {
  let delimiter = ',';
  const batches = csvRows(pieces, name, (start) => (delimiter = delimiterOf(start)));
  const first = await batches.next();
  if (first.done) throw new Refusal(`${name} is empty; give a heading and rows.`);
  const [heading, ...rest] = first.value;
  const columns = heading!.cells.map((cell) => cell.trim());
  const names = columns.map(columnName);
  const twice = names.find((one, i) => one !== '' && names.indexOf(one) !== i);
  if (twice !== undefined) throw new Refusal(`${name}:1: column "${twice}" stands in the heading twice.`);
  async function* rows(): AsyncGenerator<readonly (TableRow | BadRow)[]> {
    yield rest.map((row) => tableRow(row, names));
    for await (const batch of batches) yield batch.map((row) => tableRow(row, names));
  }
  return { name, kind: 'csv', columns, delimiter, rows: rows() };
}

function tableRow({ line, cells }: CsvRow, names: readonly string[]): TableRow | BadRow {
  if (cells.length !== names.length)
    return { line, problem: `the row has ${cells.length} cells, and the heading has ${names.length} columns.` };
  const values: Record<string, unknown> = {};
  for (let i = 0; i < names.length; i++) values[names[i]!] = withoutGuard(cells[i]!);
  return { line, values };
}

/** Takes off the quote mark that keeps a spreadsheet from running a cell as a formula; this tool writes it too. */
function withoutGuard(cell: string): string {
  return cell.startsWith("'") && /^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell;
}

async function jsonTable(pieces: AsyncIterable<string>, name: string): Promise<Table> {
  const batches = jsonRows(pieces, name);
  const first = await batches.next();
  const rows = first.done ? [] : first.value;
  const top = rows.find((row): row is TableRow => 'values' in row);
  async function* all(): AsyncGenerator<readonly (TableRow | BadRow)[]> {
    yield rows;
    yield* batches;
  }
  return { name, kind: 'json-lines', columns: Object.keys(top?.values ?? {}), delimiter: ',', rows: all() };
}

/** A line longer than this is no row of a table. */
const LONGEST_LINE = 10_000_000;

async function* jsonRows(pieces: AsyncIterable<string>, name: string): AsyncGenerator<readonly (TableRow | BadRow)[]> {
  let [held, line] = ['', 1];
  for await (const piece of pieces) {
    held += piece;
    const end = held.lastIndexOf('\n') + 1;
    if (held.length - end > LONGEST_LINE)
      throw new Refusal(`${name}:${line}: the line is too long; give one object per line.`);
    if (end === 0) continue;
    yield jsonLines(held.slice(0, end), line);
    line += countLines(held.slice(0, end));
    held = held.slice(end);
  }
  if (held.trim() !== '') yield jsonLines(held, line);
}

function jsonLines(text: string, line: number): (TableRow | BadRow)[] {
  return text.split('\n').flatMap((one, i) => (one.trim() === '' ? [] : [jsonLine(one, line + i)]));
}

function jsonLine(text: string, line: number): TableRow | BadRow {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
      return { line, values: Object.fromEntries(Object.entries(value).map(([key, one]) => [columnName(key), one])) };
    }
    return { line, problem: 'the line holds no JSON object; give one object per line.' };
  } catch (error) {
    return { line, problem: `the line is no JSON: ${(error as Error).message}.` };
  }
}
