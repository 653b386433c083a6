import type { CellFault, CellProblem } from '../../sheets';
import type { Actor } from '../actor';
import type { Clock } from '../clock';
import type { ReadSheetRow, Tables, WeighedRow } from '../ports/index';

/** What the work on a kind is given. In a dry run `tx` is only read from. */
export interface KindContext {
  readonly tx: Tables;
  readonly actor: Actor;
  readonly clock: Clock;
  readonly publish: boolean;
}

/**
 * One file's work on a kind of spreadsheet: whole groups of rows are weighed against what the shop holds, and what was
 * weighed last is written. A dry run only weighs; an import weighs and writes by the same code.
 */
export interface KindRun {
  weigh(rows: readonly ReadSheetRow[]): Promise<readonly WeighedRow[]>;
  write(): Promise<void>;
  /** What follows from all that was written, such as a recheck; answers its id. Not called when nothing changed. */
  finish(): Promise<number | null>;
}

export type OpenKind = (context: KindContext) => Promise<KindRun>;

export const added = (n: number): WeighedRow => ({ n, outcome: 'add', problems: [] });
export const changed = (n: number): WeighedRow => ({ n, outcome: 'change', problems: [] });
export const same = (n: number): WeighedRow => ({ n, outcome: 'same', problems: [] });

export function rejected(n: number, ...problems: readonly CellProblem[]): WeighedRow {
  return { n, outcome: null, problems };
}

export const problem = (field: string | null, code: CellFault, says: string): CellProblem => ({ field, code, says });

/** What a value becomes: the file's where it says something of it, else what is there, else what is usual. */
export function settled<T>(given: T | null | undefined, kept: T | undefined, usual: T): T {
  if (given === undefined) return kept ?? usual;
  return given ?? usual;
}

/** True when two values of plain data are alike, whatever the order of their fields. */
export function alike(a: unknown, b: unknown): boolean {
  return canonical(a) === canonical(b);
}

export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) =>
    typeof one === 'object' && one !== null && !Array.isArray(one)
      ? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)))
      : one,
  );
}
