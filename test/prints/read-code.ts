import { execFileSync } from 'node:child_process';
import {
  BinaryBitmap,
  Code128Reader,
  DecodeHintType,
  GlobalHistogramBinarizer,
  RGBLuminanceSource,
} from '@zxing/library';
import { pdftoppmPath } from '../../libs/testing';

/** Dots to the inch of a printer of labels. */
const LABEL_DPI = 203;

/**
 * The text of the Code 128 on the first page of a PDF, drawn in the dots of a printer of labels by one program from
 * outside and read by another. Throws where there is none that can be read.
 */
export async function readCode128(pdf: Uint8Array): Promise<string> {
  const drawn = execFileSync(
    await pdftoppmPath(),
    ['-r', String(LABEL_DPI), '-gray', '-f', '1', '-l', '1', '-singlefile', '-'],
    { input: pdf, maxBuffer: 100_000_000 },
  );
  const { width, height, dots } = readPgm(drawn);
  const bitmap = new BinaryBitmap(new GlobalHistogramBinarizer(new RGBLuminanceSource(dots, width, height)));
  return new Code128Reader().decode(bitmap, new Map([[DecodeHintType.TRY_HARDER, true]])).getText();
}

/** A binary PGM: `P5`, width, height and the brightest value, each after a blank, then a byte for each dot (netpbm, pgm(5)). */
function readPgm(bytes: Buffer): { width: number; height: number; dots: Uint8ClampedArray } {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('Expected the dots of a page as a binary PGM.');
  return {
    width: Number(head[1]),
    height: Number(head[2]),
    dots: new Uint8ClampedArray(bytes.subarray(head[0].length)),
  };
}
