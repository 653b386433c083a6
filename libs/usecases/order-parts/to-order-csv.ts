import type { OrderList } from '../../contracts';

const HEAD = ['supplier', 'part_number', 'name', 'order', 'pack_size', 'packs', 'free', 'coming', 'waited_for'];

/** The list of what to order as CSV (RFC 4180), by supplier, one line for each part. */
export function toOrderCsv({ lines }: OrderList): string {
  const rows = lines.map(({ supplier, part, order, packSize, free, coming, waited }) =>
    [supplier, part.number, part.name, order, packSize, order / packSize, free, coming, waited].map(cell),
  );
  return [HEAD, ...rows].map((row) => `${row.join(',')}\r\n`).join('');
}

/** A text that a spreadsheet would take for a formula is kept a text by an apostrophe before it. */
function cell(value: string | number): string {
  const text = typeof value === 'string' && /^[=+\-@\t\r]/.test(value) ? `'${value}` : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
