/** Beginnings that a spreadsheet takes for a formula or a command. */
const FORMULA = /^[\s]*[=+\-@\t\r|%]/;

/**
 * Rows as CSV (RFC 4180): every value in quotes, lines ended by CR LF, with the mark by which spreadsheets know UTF-8. A
 * value that a spreadsheet would run as a formula gets an apostrophe in front, by which it is shown as text.
 */
export function csv(rows: readonly (readonly string[])[]): string {
  return `\uFEFF${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}

function cell(value: string): string {
  const plain = FORMULA.test(value) ? `'${value}` : value;
  return `"${plain.replaceAll('"', '""')}"`;
}
