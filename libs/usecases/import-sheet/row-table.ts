import { hash } from 'node:crypto';

/** Words of 32 bits that are kept of a row: four of its key's hash, two of its text's, and its number. */
const WORDS = 7;
const [KEY_WORDS, TEXT_WORDS] = [4, 2];
const FIRST_PLACES = 1_024;

/** A row that spoke of something first, and whether it said the same. */
export interface EarlierRow {
  readonly n: number;
  readonly isSame: boolean;
}

/**
 * Which row of a file spoke of something first. A file may have a million rows and more, so of each 28 bytes are kept, in
 * a table of its own: keys are told apart by hashes of 128 bits, what was said of them by 64.
 */
export class RowTable {
  private table: Uint32Array = new Uint32Array(FIRST_PLACES * WORDS);
  private count = 0;

  /** The row that was put with this key; null where none was. */
  find(key: string, text: string): EarlierRow | null {
    const row = rowOf(key, text, 0);
    return this.at(placeOf(this.table, row), row);
  }

  /** Puts a row, numbered from 1; where its key is put already, that one stays and is the answer. */
  put(n: number, key: string, text: string): EarlierRow | null {
    const row = rowOf(key, text, n);
    const at = placeOf(this.table, row);
    const before = this.at(at, row);
    if (before !== null) return before;
    this.table.set(row, at);
    this.count++;
    if (this.count * 2 > this.table.length / WORDS) this.table = twiceAsLarge(this.table);
    return null;
  }

  private at(place: number, row: Uint32Array): EarlierRow | null {
    const n = this.table[place + WORDS - 1]!;
    return n === 0 ? null : { n, isSame: agree(this.table, place, row, KEY_WORDS, KEY_WORDS + TEXT_WORDS) };
  }
}

function rowOf(key: string, text: string, n: number): Uint32Array {
  const row = new Uint32Array(WORDS);
  const [ofKey, ofText] = [hashOf(key), hashOf(text)];
  for (let i = 0; i < KEY_WORDS; i++) row[i] = ofKey.readUInt32LE(i * 4);
  for (let i = 0; i < TEXT_WORDS; i++) row[KEY_WORDS + i] = ofText.readUInt32LE(i * 4);
  row[WORDS - 1] = n;
  return row;
}

const hashOf = (text: string): Buffer => hash('sha256', text, 'buffer');

/** Where the key of a row stands in the table, or the free place that it would take: one whose number is 0. */
function placeOf(table: Uint32Array, row: Uint32Array): number {
  const places = table.length / WORDS;
  for (let place = row[0]! % places; ; place = (place + 1) % places) {
    const at = place * WORDS;
    if (table[at + WORDS - 1] === 0 || agree(table, at, row, 0, KEY_WORDS)) return at;
  }
}

function agree(table: Uint32Array, at: number, row: Uint32Array, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (table[at + i] !== row[i]) return false;
  return true;
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
