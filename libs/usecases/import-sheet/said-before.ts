import { createHash } from 'node:crypto';
import type { WeighedRow } from '../ports/index';
import { canonical, problem, rejected, same } from './kind-work';

/** Words of 32 bits that are kept of a row: four of its key's hash, two of its text's, and its number. */
const WORDS = 7;
const [KEY_WORDS, TEXT_WORDS] = [4, 2];
const FIRST_PLACES = 1_024;

/**
 * Remembers which row said something first, so that a second one that says otherwise is found. A file may have a million
 * rows and more, so of each 28 bytes are kept, in a table of its own: two rows are taken for the same by hashes of 128 and
 * 64 bits.
 */
export class SaidBefore {
  private table: Uint32Array = new Uint32Array(FIRST_PLACES * WORDS);
  private count = 0;

  /** Null when the row is the first to speak of it; else `same`, or a problem. */
  look(n: number, key: string, values: unknown, what: string): WeighedRow | null {
    const row = rowOf(key, canonical(values), n);
    const at = placeOf(this.table, row);
    const before = this.table[at + WORDS - 1]!;
    if (before === 0) {
      this.table.set(row, at);
      this.count++;
      if (this.count * 2 > this.table.length / WORDS) this.table = twiceAsLarge(this.table);
      return null;
    }
    const saysSame = Array.from({ length: TEXT_WORDS }, (_, i) => KEY_WORDS + i).every(
      (i) => this.table[at + i] === row[i],
    );
    if (saysSame) return same(n);
    return rejected(
      n,
      problem(null, 'twice', `Row ${before} speaks of ${what} already, and says otherwise; keep one.`),
    );
  }
}

/** Rows are numbered from 1, so a number of 0 is a place that is free. */
function rowOf(key: string, text: string, n: number): Uint32Array {
  const row = new Uint32Array(WORDS);
  const [ofKey, ofText] = [hashOf(key), hashOf(text)];
  for (let i = 0; i < KEY_WORDS; i++) row[i] = ofKey.readUInt32LE(i * 4);
  for (let i = 0; i < TEXT_WORDS; i++) row[KEY_WORDS + i] = ofText.readUInt32LE(i * 4);
  row[WORDS - 1] = n;
  return row;
}

const hashOf = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Where the key of a row stands in the table, or the free place that it would take. */
function placeOf(table: Uint32Array, row: Uint32Array): number {
  const places = table.length / WORDS;
  for (let place = row[0]! % places; ; place = (place + 1) % places) {
    const at = place * WORDS;
    if (table[at + WORDS - 1] === 0) return at;
    let same = true;
    for (let i = 0; same && i < KEY_WORDS; i++) same = table[at + i] === row[i];
    if (same) return at;
  }
}

function twiceAsLarge(table: Uint32Array): Uint32Array {
  const larger = new Uint32Array(table.length * 2);
  for (let at = 0; at < table.length; at += WORDS) {
    if (table[at + WORDS - 1] === 0) continue;
    const row = table.subarray(at, at + WORDS);
    larger.set(row, placeOf(larger, row));
  }
  return larger;
}
