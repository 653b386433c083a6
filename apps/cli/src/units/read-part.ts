import {
  isPartKey,
  partKeyOf,
  readPartNumber,
  sayPartNumberProblem,
  splitPartKey,
  type NumberRules,
  type PartKey,
} from '../../../../libs/part-number';
import type { Book } from '../files/read-book';

export type PartReading =
  { readonly ok: true; readonly key: PartKey } | { readonly ok: false; readonly sentence: string };

/** A number that a spreadsheet took for a quantity and rewrote, such as 3.01E+05. */
const EATEN = /^\d([.,]\d+)?E\+\d+$/i;
const MOST_KEPT = 50_000;

/**
 * Reads part numbers as printed or typed: as the line's maker writes them, then as any other maker of the rulebook does
 * when its catalogue lists the part. `MAKER/NUMBER` is taken as a key when the rulebook knows the maker. Numbers once
 * read are remembered, up to a bound.
 */
export class PartReader {
  private readonly kept = new Map<string, PartReading>();

  constructor(private readonly book: Book) {}

  read(text: string, line: string): PartReading {
    const name = `${line}\n${text}`;
    let reading = this.kept.get(name);
    if (!reading) {
      if (this.kept.size >= MOST_KEPT) this.kept.clear();
      this.kept.set(name, (reading = this.readAfresh(text, line)));
    }
    return reading;
  }

  private readAfresh(text: string, line: string): PartReading {
    if (EATEN.test(text))
      return no(`"${text}" is a number that a spreadsheet rewrote; keep the column as text and enter the part again.`);
    const { makers, lines, parts } = this.book;
    if (isPartKey(text) && (makers.size === 0 || makers.has(splitPartKey(text).makerCode)))
      return { ok: true, key: text };
    const own = lines.get(line)?.maker ?? null;
    const all = own === null ? [...makers.values()] : [own, ...[...makers.values()].filter((one) => one !== own)];
    const keys = all.map((maker) => keyBy(text, maker));
    const listed = keys.find((key) => key !== null && parts.has(key));
    if (listed) return { ok: true, key: listed };
    if (own !== null && keys[0]) return { ok: true, key: keys[0] };
    if (own === null) return no(`"${text}" is in no catalogue of this rulebook; give it as MAKER/NUMBER.`);
    const reading = readPartNumber(text, own);
    return no(reading.ok ? `"${text}" is no part number.` : sayPartNumberProblem(text, reading.problem));
  }
}

function keyBy(text: string, maker: NumberRules): PartKey | null {
  const reading = readPartNumber(text, maker);
  return reading.ok ? partKeyOf(maker.makerCode, reading.number.canonical) : null;
}

function no(sentence: string): PartReading {
  return { ok: false, sentence };
}
