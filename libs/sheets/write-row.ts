import type { Kind } from './column';
import { withGuard, withNameGuard } from './readers';

/** The cells of a row for an export, in the order of the kind's columns, guarded against running as formulas. */
export function writeRow(kind: Kind, values: Readonly<Record<string, unknown>>): readonly string[] {
  return Object.entries(kind.columns).map(([field, { write }]) => {
    const value = values[field];
    if (value === null || value === undefined) return '';
    return kind.names.includes(field) ? withNameGuard(write(value)) : withGuard(write(value));
  });
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
