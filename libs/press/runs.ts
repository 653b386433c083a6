import type { FontName } from './fonts';

/** Glyphs of the two files of the house's face, as read from the files themselves. */
const LATIN =
  /[\u0020-\u007e\u00a0-\u00ac\u00ae-\u00b4\u00b6-\u00ff\u0152\u0153\u2009\u2013\u2014\u2018-\u201a\u201c-\u201e\u2022\u2026\u2039\u203a\u20ac\u2122\u2212]/;
const MORE =
  /[\u0100-\u0107\u010a-\u0113\u0116-\u011b\u011e-\u0123\u0126\u0127\u012a-\u0130\u0132\u0133\u0136\u0137\u0139-\u013e\u0141-\u0148\u0150\u0151\u0154\u0155\u0158-\u015b\u015e-\u0165\u016a\u016b\u016e-\u017e\u0218-\u021b\u1e80-\u1e85\u1e9e\u1ef2\u1ef3]/;
const OTHER = /[\u0370-\u03ff\u0400-\u052f]/;

/** A stretch of text that one font file holds whole. */
export interface Run {
  readonly text: string;
  readonly font: FontName;
}

/**
 * Cuts a text where it needs another font file. A character that none of them holds is printed as '?', so that nobody
 * takes an empty place for a blank; control characters (a tab, a line's end) as a blank.
 */
export function runsOf(text: string, numbers: boolean): Run[] {
  const runs: { text: string; font: FontName }[] = [];
  for (const character of text.normalize('NFC')) {
    const one = runFor(character, numbers);
    const last = runs.at(-1);
    if (last?.font === one.font) last.text += one.text;
    else runs.push(one);
  }
  return runs;
}

function runFor(character: string, numbers: boolean): { text: string; font: FontName } {
  if (LATIN.test(character)) return { text: character, font: numbers ? 'Numbers' : 'Words' };
  if (MORE.test(character)) return { text: character, font: numbers ? 'NumbersMore' : 'WordsMore' };
  if (OTHER.test(character)) return { text: character, font: 'Other' };
  return { text: character <= '\u001f' ? ' ' : '?', font: numbers ? 'Numbers' : 'Words' };
}
