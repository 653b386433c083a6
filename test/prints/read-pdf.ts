import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { repoRoot } from '../../libs/config';

/** A page of a PDF as a reader sees it: its size in millimetres, and its text in the order it was set. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly text: string;
  /** Each stretch of text with the left end of its base line, in millimetres from the page's upper left corner. */
  readonly items: readonly { readonly text: string; readonly x: number; readonly y: number }[];
  /** Each picture with its upper left corner, in millimetres from the page's own. */
  readonly images: readonly {
    readonly width: number;
    readonly height: number;
    readonly x: number;
    readonly y: number;
  }[];
}

/** Opens a PDF with a reader that knows nothing of how it was made. */
export function readPdf(bytes: Uint8Array): { readonly title: string; readonly pages: readonly ReadPage[] } {
  const read = execFileSync(process.execPath, [join(repoRoot(), 'test', 'prints', 'pdf-reader.mjs')], {
    input: bytes,
    maxBuffer: 50_000_000,
  });
  return JSON.parse(read.toString()) as ReturnType<typeof readPdf>;
}
