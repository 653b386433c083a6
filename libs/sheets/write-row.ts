import { isBlank, textOfCell, type Cell } from './cell';
import type { Column, Kind } from './column';
import { brokenCell } from './damage';
import { withGuard, withNameGuard, withoutGuard, type ReadHow } from './readers';

/** The cells of a row for an export, in the order of the kind's columns, guarded against running as formulas. */
export function writeRow(kind: Kind, values: Readonly<Record<string, unknown>>): readonly string[] {
  return Object.entries(kind.columns).map(([field, { write }]) => {
    const value = values[field];
    if (value === null || value === undefined) return '';
    return kind.names.includes(field) ? withNameGuard(write(value)) : withGuard(write(value));
  });
}

/** Stands for a cell whose damage text cannot show; spreadsheets know it as "not available", and it is never read. */
const NOT_AVAILABLE = '#N/A';

/**
 * The cell as it stands in a list of rejected rows. As text, a formula, a day in a column of part numbers or a place
 * under a merged cell would be taken for whole when the list comes back; where the column named refused the cell
 * itself and would accept its text, a mark that is always refused stands in its place.
 */
export function reportedCell(cell: Cell, column: Column | undefined, how: ReadHow): string {
  const text = withGuard(withoutGuard(textOfCell(cell)));
  if (!column) return text;
  const refused = (one: Cell) => brokenCell(one) !== null || !column.read(one, how).ok;
  return refused(cell) && (isBlank(text) || !refused(text)) ? NOT_AVAILABLE : text;
}

/** The headings of an export or a template. */
export function headingsFor(kind: Kind): readonly string[] {
  return Object.values(kind.columns).map(({ heading }) => heading);
}

/** The worked lines of a kind's template. */
export function workedLines(kind: Kind): readonly (readonly string[])[] {
  const first = Object.fromEntries(Object.entries(kind.columns).map(([field, { example }]) => [field, example]));
  const lines = [first, ...(kind.more ?? []).map((one) => ({ ...first, ...one }))];
  return lines.map((line) =>
    Object.keys(kind.columns).map((field) => withGuard((line as Record<string, string>)[field] ?? '')),
  );
}

/** One row of comma-separated text, without its line end. */
export function csvLine(cells: readonly string[]): string {
  return cells.map((cell) => (/[",;\r\n\t]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(',');
}
