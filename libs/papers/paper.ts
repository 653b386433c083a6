import type { PaperSize } from '../contracts';

/** A piece of a line: plain, or set as a number (each letter and figure told apart), or strong. */
export type Piece = string | { readonly text: string; readonly number?: boolean; readonly strong?: boolean };
export type Line = Piece | readonly Piece[];

/** A picture with the words under it. `jpeg` is what is printed; `width` and `height` in points tell its shape. */
export interface Picture {
  readonly jpeg: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly words: string;
}

/** What stands on a page, from top to bottom. */
export type Block =
  | { readonly kind: 'title'; readonly left: readonly Line[]; readonly right: readonly Line[] }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly line: Line }
  | { readonly kind: 'list'; readonly items: readonly Line[] }
  | {
      readonly kind: 'table';
      readonly heads: readonly string[];
      readonly widths: readonly number[];
      /** cells of a row, or pictures that belong to the row above them */
      readonly rows: readonly (readonly Line[] | { readonly pictures: readonly Picture[] })[];
    }
  | { readonly kind: 'pictures'; readonly pictures: readonly Picture[] }
  | { readonly kind: 'caution'; readonly text: string }
  | { readonly kind: 'sign'; readonly text: string }
  /** Where the window of an envelope is. */
  | { readonly kind: 'address'; readonly from: string; readonly lines: readonly string[] };

/** Sheets that can be printed. Each list of blocks begins on a page of its own. */
export interface Paper {
  readonly title: string;
  readonly size: PaperSize;
  /** said at the foot of every page, beside the page's number */
  readonly foot: string;
  readonly pages: readonly (readonly Block[])[];
}

/** Labels on sheets of so many across and down; measures in millimetres from the sheet's upper left corner. */
export interface LabelLayout {
  readonly size: PaperSize;
  readonly across: number;
  readonly down: number;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  /** from one label's left (upper) edge to the next one's */
  readonly stepX: number;
  readonly stepY: number;
}

export interface Labels {
  readonly title: string;
  readonly layout: LabelLayout;
  readonly labels: readonly (readonly string[])[];
}
