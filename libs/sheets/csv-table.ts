/**
 * Rows as CSV (RFC 4180): CRLF, quotes doubled. A text that a spreadsheet would take for a formula gets an apostrophe before
 * it, since names are typed by people; a plain number, a negative one too, is left alone.
 */
export function csvTable(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

const FORMULA = /^(?:[=@\t\r]|[+-](?!\d+(?:\.\d+)?$))/;

function cell(value: string | number): string {
  const text = String(value);
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
