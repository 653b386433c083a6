import type { Reader } from './readers';

/** One column of a kind of spreadsheet. */
export interface Column<T = unknown> {
  /** As exports and templates head it. */
  readonly heading: string;
  /** Other headings it is known by in shops' own files. */
  readonly also: readonly string[];
  readonly required: boolean;
  readonly read: Reader<T>;
  /** As it stands in an export; reading it again gives the same value. */
  readonly write: (value: T) => string;
  /** What it holds, in a sentence for the guide and the page. */
  readonly says: string;
  /** As it stands in the worked line of the template. */
  readonly example: string;
}

interface ColumnWords<T> {
  readonly also?: readonly string[];
  readonly says: string;
  readonly example: string;
  readonly write?: (value: T) => string;
}

const plainText = (value: unknown): string => (typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value));
const asList = (value: unknown): string => (Array.isArray(value) ? value.map(plainText).join('; ') : plainText(value));

/** A column that may be blank or left out. */
export function column<T>(heading: string, read: Reader<T>, more: ColumnWords<T>): Column<T> {
  return { heading, read, required: false, also: more.also ?? [], write: asList, ...more };
}

/** A column without which a row says nothing. */
export function mustHave<T>(heading: string, read: Reader<T>, more: ColumnWords<T>): Column<T> & { required: true } {
  return { ...column(heading, read, more), required: true };
}

// eslint-disable-next-line @typescript-eslint/no-explicit-any -- a column's own type is not known here
export type Columns = Readonly<Record<string, Column<any>>>;

/** A row's values: null where the cell is blank, not there where no column of the file was chosen for it. */
export type RowOf<C extends Columns> = {
  readonly [K in keyof C]: C[K] extends Column<infer T> & { required: true }
    ? T
    : C[K] extends Column<infer T>
      ? T | null | undefined
      : never;
};

/** A kind of spreadsheet: its columns, and what ties the cells of a row together. */
export interface Kind<C extends Columns = Columns> {
  readonly title: string;
  /** What one row is, in a sentence. */
  readonly about: string;
  readonly columns: C;
  /** Rows with the same key speak of the same thing and are taken together. */
  readonly keyOf: (row: RowOf<C>) => string;
  /** What is wrong with the row as a whole; field and sentence. */
  readonly check?: (row: RowOf<C>) => readonly { readonly field: keyof C & string; readonly says: string }[];
  /** Columns of names: their cells are looked at for lost zeros. */
  readonly names: readonly (keyof C & string)[];
  /** Further worked lines of the template, by field. */
  readonly more?: readonly Partial<Record<keyof C & string, string>>[];
}

/** Keeps the columns' own types. */
export function kind<C extends Columns>(one: Kind<C>): Kind<C> {
  return one;
}
