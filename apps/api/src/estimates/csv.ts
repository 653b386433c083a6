/**
 * Rows as CSV (RFC 4180): CRLF, quotes doubled. A cell a spreadsheet would take for a formula gets a quote before it,
 * since names are typed by people; a plain negative number is left alone.
 */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

const FORMULA = /^(?:[=@\t\r]|[+-](?!\d+(?:\.\d+)?$))/;

function cell(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
