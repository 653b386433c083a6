import Papa from 'papaparse';

export type OutRow = Readonly<Record<string, unknown>>;

/**
 * Rows as CSV text, each ending in a line end. A cell that a spreadsheet would run as a formula gets a quote mark in
 * front, so a part number or a note from a stranger stays text. Lists and objects are written as JSON.
 */
export function csvText(columns: readonly string[], rows: readonly OutRow[], delimiter = ','): string {
  if (rows.length === 0) return '';
  const cells = rows.map((row) => columns.map((column) => cellText(row[column])));
  return `${Papa.unparse(cells, { delimiter, newline: '\n', escapeFormulae: true })}\n`;
}

/** The heading of a CSV file. */
export function csvHeading(columns: readonly string[], delimiter = ','): string {
  return `${Papa.unparse([[...columns]], { delimiter, newline: '\n', escapeFormulae: true })}\n`;
}

/** Rows as JSON lines. */
export function jsonLinesText(rows: readonly OutRow[]): string {
  return rows.map((row) => `${JSON.stringify(row)}\n`).join('');
}

function cellText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return value;
  return typeof value === 'number' || typeof value === 'boolean' ? String(value) : JSON.stringify(value);
}
