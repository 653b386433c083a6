import Papa from 'papaparse';

/** One record with the line it begins on; a record of blanks alone has none of its own. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface CsvReading {
  /** The delimiter, told from the beginning of the text. */
  readonly delimiter: (start: string) => string;
  /** Makes the error that ends the reading, for a line and what is wrong there. */
  readonly refuse: (line: number, says: string) => Error;
}

/** A record longer than this is no row of a table but a quote that was never closed. */
const LONGEST_ROW = 1_000_000;
const DELIMITERS = [',', ';', '\t'];

/**
 * Reads CSV text piece by piece and hands out whole records, blank ones too, so that a file of any size needs little
 * memory. Line ends must be `\n`. Quotes that do not close are refused with their line.
 */
export async function* csvRecords(
  pieces: AsyncIterable<string>,
  { delimiter, refuse }: CsvReading,
): AsyncGenerator<readonly CsvRecord[]> {
  let [held, line] = ['', 1];
  let parser: Papa.Parser | null = null;
  for await (const piece of pieces) {
    held += piece;
    // The heading tells the delimiter, so it must be there whole.
    if (parser === null && !held.trimStart().includes('\n') && held.length <= LONGEST_ROW) continue;
    parser ??= new Papa.Parser({ delimiter: delimiter(held), newline: '\n' });
    const { rows, read, lines } = recordsIn(parser, held, line, refuse, true);
    held = held.slice(read);
    line += lines;
    if (held.length > LONGEST_ROW) throw refuse(line, 'a quote is opened here and never closed.');
    if (rows.length > 0) yield rows;
  }
  if (held === '') return;
  parser ??= new Papa.Parser({ delimiter: delimiter(held), newline: '\n' });
  const { rows } = recordsIn(parser, held, line, refuse, false);
  if (rows.length > 0) yield rows;
}

interface Parsed {
  readonly data: readonly string[][];
  readonly errors: readonly { readonly code: string; readonly row: number }[];
  readonly meta: { readonly cursor: number };
}

function recordsIn(parser: Papa.Parser, text: string, line: number, refuse: CsvReading['refuse'], more: boolean) {
  const { data, errors, meta } = parser.parse(text, 0, more) as Parsed;
  const rows: CsvRecord[] = [];
  const bad = errors.find(({ row }) => row < data.length);
  let at = line;
  for (const [index, cells] of data.entries()) {
    if (index === bad?.row)
      throw refuse(
        at,
        bad.code === 'MissingQuotes'
          ? 'a quote is opened here and never closed.'
          : 'a quote stands inside a quoted cell; write it twice ("") there.',
      );
    rows.push({ line: at, cells });
    at++;
    for (const cell of cells) if (cell.includes('\n')) at += countLines(cell);
  }
  return { rows, read: meta.cursor, lines: at - line };
}

/** The delimiter of a file by its heading: whichever of comma, semicolon and tab stands there most often. */
export function delimiterOf(start: string): string {
  const text = start.trimStart();
  const heading = text.slice(0, text.indexOf('\n') === -1 ? undefined : text.indexOf('\n')).replace(/"[^"]*"/g, '');
  const count = (mark: string) => heading.split(mark).length;
  return DELIMITERS.reduce((best, one) => (count(one) > count(best) ? one : best));
}

/** How many line ends the text holds. */
export function countLines(text: string): number {
  let count = 0;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) count++;
  return count;
}
