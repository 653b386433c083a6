import type { Cell, CellProblem, DayOrder, Mapping, SheetKind } from '../../sheets';

/** How a person wants a file to be read. */
export interface SheetChoice {
  readonly mapping: Mapping;
  readonly dayOrder: DayOrder | null;
  /** Papers are published at once, and not only kept as drafts. */
  readonly publish: boolean;
}

/** What a dry run found or an import did, in rows. */
export interface SheetOutcome {
  readonly add: number;
  readonly change: number;
  readonly same: number;
  readonly rejected: number;
  readonly recheckId: number | null;
}

export type SheetState = 'reading' | 'read' | 'looked' | 'done';

/** How a file was taken in. */
export interface SheetFile {
  readonly format: 'csv' | 'xlsx';
  readonly encoding: string | null;
  readonly encodingCertain: boolean;
  readonly delimiter: string | null;
  readonly headings: readonly string[];
  /** By column, what {@link ColumnsSeen} of libs/sheets keeps. */
  readonly looks: readonly (readonly (readonly [number, number])[])[];
  /** The order in which the file writes days, where it tells. */
  readonly dayOrder: DayOrder | null;
}

export interface SheetRecord extends SheetFile {
  readonly id: number;
  readonly personId: number;
  readonly kind: SheetKind;
  readonly fileName: string;
  readonly state: SheetState;
  readonly version: number;
  readonly choice: SheetChoice | null;
  readonly rows: number;
  readonly doing: string | null;
  readonly progress: number;
  readonly outcome: SheetOutcome | null;
}

/** A row as it stands in the file, under the number a spreadsheet gives it. */
export interface RawRow {
  readonly n: number;
  readonly cells: readonly Cell[];
}

/** What a row says, once it is read. */
export interface ReadSheetRow {
  readonly n: number;
  readonly key: string;
  readonly values: Readonly<Record<string, unknown>>;
}

/** What would become of a row. */
export interface WeighedRow {
  readonly n: number;
  readonly outcome: 'add' | 'change' | 'same' | null;
  readonly problems: readonly CellProblem[];
}

export interface RejectedRow extends RawRow {
  readonly problems: readonly CellProblem[];
}

/** Files that were brought, and their rows while they are worked on. */
export interface SheetStore {
  insert(sheet: { personId: number; kind: SheetKind; fileName: string }): Promise<number>;
  addRows(id: number, rows: readonly RawRow[]): Promise<void>;
  /** Marks the file as taken in; `rows` is how many there are. */
  taken(id: number, file: SheetFile & { readonly rows: number }): Promise<void>;
  /** Null also for the file of another person, and for one older than a day. */
  find(id: number, personId: number): Promise<SheetRecord | null>;
  /** Keeps every other work on the file out until the transaction ends; false when one is under way. */
  hold(id: number): Promise<boolean>;
  /** Tells how far the work is; to be called outside the work's own transaction, or nobody sees it. */
  progress(id: number, doing: string | null, rows: number): Promise<void>;
  /** The first rows in order of number. */
  firstRows(id: number, limit: number): Promise<readonly RawRow[]>;
  /** All rows in order of number, some at a time; in a transaction alone. */
  rows(id: number): AsyncIterable<readonly RawRow[]>;
  /** Keeps what rows say, or why they are rejected, in the place of what an earlier look kept. */
  keepReadings(id: number, rows: readonly (ReadSheetRow | Omit<RejectedRow, 'cells'>)[]): Promise<void>;
  /** Rows that could be read, in order of key and number, some whole groups at a time; in a transaction alone. */
  groups(id: number): AsyncIterable<readonly ReadSheetRow[]>;
  /** Forgets what an earlier weighing held against rows that could be read. */
  forgetProblems(id: number): Promise<void>;
  /** Keeps why those of the weighed rows are rejected that are. */
  keepProblems(id: number, rows: readonly WeighedRow[]): Promise<void>;
  rejected(id: number, afterRow: number, limit: number): Promise<readonly RejectedRow[]>;
  /** Ends a dry run or an import: raises the version. */
  conclude(id: number, state: 'looked' | 'done', choice: SheetChoice, outcome: SheetOutcome): Promise<void>;
  /** Throws away the rows that were imported; rejected ones stay for the list of them. */
  dropGoodRows(id: number): Promise<void>;
  remove(id: number): Promise<void>;
  /** Removes files and rows older than a day; answers how many files. */
  removeOld(): Promise<number>;
}
