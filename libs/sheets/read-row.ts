import { isBlank, type Cell, type CellProblem } from './cell';
import type { Kind } from './column';
import { brokenCell, lostZeros, type ColumnLook } from './damage';
import type { Mapping } from './mapping';
import type { ReadHow } from './readers';

export type RowReading =
  | { readonly ok: true; readonly key: string; readonly values: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly problems: readonly CellProblem[] };

/** How a file is read: which columns, and what the whole of each column told. */
export interface FileReading extends ReadHow {
  readonly mapping: Mapping;
  /** By column of the file. */
  readonly looks: readonly ColumnLook[];
}

/** Reads the cells of a row as one of its kind; a bad row is refused with everything that is wrong with it. */
export function readRow(kind: Kind, cells: readonly Cell[], how: FileReading): RowReading {
  const problems: CellProblem[] = [];
  const values: Record<string, unknown> = {};
  for (const [field, { read, required, heading }] of Object.entries(kind.columns)) {
    const at = how.mapping[field] ?? null;
    if (at === null) continue;
    const cell = cells[at] ?? null;
    if (isBlank(cell)) {
      values[field] = null;
      if (required) problems.push({ field, code: 'missing', says: `${heading} is blank; it must be there.` });
      continue;
    }
    const isName = kind.names.includes(field);
    const look = how.looks[at];
    const reading = brokenCell(cell) ?? (isName && look ? lostZeros(cell, look) : null) ?? read(cell, how);
    if (reading.ok) values[field] = reading.value;
    else problems.push({ field, code: reading.code, says: reading.says });
  }
  if (problems.length > 0) return { ok: false, problems };
  const wrong = kind.check?.(values as never) ?? [];
  if (wrong.length > 0)
    return { ok: false, problems: wrong.map(({ field, says }) => ({ field, code: 'not-accepted', says })) };
  return { ok: true, key: kind.keyOf(values as never), values };
}
