import { choosePart, isPartKey, type PartKey } from '../../../../libs/part-number';
import type { Book } from '../files/read-book';

export type PartReading =
  { readonly ok: true; readonly key: PartKey } | { readonly ok: false; readonly sentence: string };

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
    const { makers, lines, parts } = this.book;
    if (makers.size === 0 && isPartKey(text)) return { ok: true, key: text };
    const own = lines.get(line)?.maker?.makerCode ?? null;
    const chosen = choosePart(text, [...makers.values()], own, (key) => (parts.has(key) ? 'listed' : null));
    return chosen.ok ? { ok: true, key: chosen.part.key } : chosen;
  }
}
