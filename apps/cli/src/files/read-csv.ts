import Papa from 'papaparse';
import { Refusal } from '../refusal';
import { countLines } from './decode';

/** One row as it stands in the file, with the line it begins on. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A row longer than this is no row of a table but a quote that was never closed. */
const LONGEST_ROW = 1_000_000;
const DELIMITERS = [',', ';', '\t'];

/**
 * Reads CSV text piece by piece and hands out whole rows, so that a file of any size needs little memory. Blank lines
 * are passed over. Quotes that do not close are refused with their line.
 */
export async function* csvRows(
  pieces: AsyncIterable<string>,
  name: string,
  delimiter: (start: string) => string,
): AsyncGenerator<readonly CsvRow[]> {
  let [held, line] = ['', 1];
  let parser: Papa.Parser | null = null;
  for await (const piece of pieces) {
    held += piece;
    // The heading tells the delimiter, so it must be there whole.
    if (parser === null && !held.includes('\n') && held.length <= LONGEST_ROW) continue;
    parser ??= new Papa.Parser({ delimiter: delimiter(held), newline: '\n' });
    const { rows, read, lines } = rowsIn(parser, held, line, name, true);
    held = held.slice(read);
    line += lines;
    if (held.length > LONGEST_ROW) throw new Refusal(`${name}:${line}: a quote is opened here and never closed.`);
    if (rows.length > 0) yield rows;
  }
  if (held === '') return;
  parser ??= new Papa.Parser({ delimiter: delimiter(held), newline: '\n' });
  const { rows } = rowsIn(parser, held, line, name, false);
  if (rows.length > 0) yield rows;
}

interface Parsed {
  readonly data: readonly string[][];
  readonly errors: readonly { readonly code: string; readonly row: number }[];
  readonly meta: { readonly cursor: number };
}

function rowsIn(parser: Papa.Parser, text: string, line: number, name: string, more: boolean) {
  const { data, errors, meta } = parser.parse(text, 0, more) as Parsed;
  const rows: CsvRow[] = [];
  const bad = errors.find(({ row }) => row < data.length);
  let at = line;
  for (const [index, cells] of data.entries()) {
    if (index === bad?.row)
      throw new Refusal(
        bad.code === 'MissingQuotes'
          ? `${name}:${at}: a quote is opened here and never closed.`
          : `${name}:${at}: a quote stands inside a quoted cell; write it twice ("") there.`,
      );
    if (cells.length > 1 || cells[0]!.trim() !== '') rows.push({ line: at, cells });
    at++;
    for (const cell of cells) if (cell.includes('\n')) at += countLines(cell);
  }
  return { rows, read: meta.cursor, lines: at - line };
}

/** The delimiter of a file by its heading: whichever of comma, semicolon and tab stands there most often. */
export function delimiterOf(start: string): string {
  const heading = start.slice(0, start.indexOf('\n') === -1 ? undefined : start.indexOf('\n')).replace(/"[^"]*"/g, '');
  const count = (mark: string) => heading.split(mark).length;
  return DELIMITERS.reduce((best, one) => (count(one) > count(best) ? one : best));
}
