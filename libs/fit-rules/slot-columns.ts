import type { PartKey } from '../part-number';
import { columnDay, IntColumn } from './bulk-columns';
import type { SlotSegment } from './slot-segments';

/** What a segment says takes three numbers; see {@link SlotColumns}. */
const STRIDE = 3;
/** Stands where no part is named; no part has this number. */
const NO_PART = -2;
/** The bits of the first named part stand above those of parts that are not named. */
const FIRST_SHIFT = 8;
const OTHERS = (1 << FIRST_SHIFT) - 1;
/** Up to this many segments are walked through; more are halved. */
const FEW_SEGMENTS = 8;
/** Days below this are not counted without a branch: a difference of two days must not leave 32 bits. */
const LEAST_COUNTED = -1_000_000_000;

/** What is asked of many slots at once, one row per index; see {@link SlotColumns.bits}. */
export interface SlotRows {
  readonly slot: Int32Array;
  readonly part: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
}

/**
 * The segments of all slots in flat columns, so that looking one up touches little memory. The first build dates stand
 * by themselves, as most looks go past several. What a segment says stands beside: the first part it names, which is
 * nearly always the one that is asked for; the bits of that part and of parts it does not name; where its further names
 * begin. After the last segment stands an open one: further names of segment g end where those of g + 1 begin.
 */
export class SlotColumns {
  private readonly slotAt = new IntColumn();
  private readonly starts = new IntColumn();
  private readonly says = new IntColumn();
  /** Part number and bits, turn and turn about. */
  private readonly named = new IntColumn();

  constructor() {
    this.slotAt.push(0);
    this.openSegment();
  }

  /** How many slots there are. */
  get size(): number {
    return this.slotAt.length - 1;
  }

  /** Adds a slot and gives its number. */
  add(segments: readonly SlotSegment[], numberOf: (part: PartKey) => number): number {
    for (const { from, others, named } of segments) {
      // The open segment at the end is filled now; where its further names begin it knows already.
      const at = this.starts.length - 1;
      this.starts.values[at] = columnDay(from);
      let [first, firstBits] = [NO_PART, 0];
      for (const [part, bits] of named) {
        if (first === NO_PART) [first, firstBits] = [numberOf(part), bits];
        else {
          this.named.push(numberOf(part));
          this.named.push(bits);
        }
      }
      this.says.values[at * STRIDE] = first;
      this.says.values[at * STRIDE + 1] = others | (firstBits << FIRST_SHIFT);
      this.openSegment();
    }
    this.slotAt.push(this.starts.length - 1);
    return this.size - 1;
  }

  /** The bits of the part over every segment that `[from, to)` meets; 0 when the span is empty. */
  bits(slot: number, part: number, from: number, to: number): number {
    if (from >= to) return 0;
    const starts = this.starts.values;
    const end = this.slotAt.values[slot + 1]!;
    let at = this.slotAt.values[slot]!;
    if (end - at > FEW_SEGMENTS) at = halved(starts, at, end, from);
    else while (at + 1 < end && starts[at + 1]! <= from) at++;
    let bits = this.segmentBits(at, part);
    for (at++; at < end && starts[at]! < to; at++) bits |= this.segmentBits(at, part);
    return bits;
  }

  /**
   * The bits of rows 0 up to `count`; the columns do not grow meanwhile, so they are taken hold of once. Which segment
   * a day lies in is counted without a branch: a processor guesses wrong about it in most rows, and that costs more
   * than comparing with every start.
   */
  bitsOfColumns({ slot, part, builtFrom, builtTo }: SlotRows, count: number, bits: Uint8Array): void {
    const [slotAt, starts, says] = [this.slotAt.values, this.starts.values, this.says.values];
    for (let i = 0; i < count; i++) {
      const from = builtFrom[i]!;
      const to = builtTo[i]!;
      const first = slotAt[slot[i]!]!;
      const end = slotAt[slot[i]! + 1]!;
      if (from < LEAST_COUNTED || from >= to || end - first > FEW_SEGMENTS) {
        bits[i] = this.bits(slot[i]!, part[i]!, from, to);
        continue;
      }
      let at = first;
      // The sign bit is 1 where the start is at or before `from`.
      for (let next = first + 1; next < end; next++) at += (starts[next]! - from - 1) >>> 31;
      if (at + 1 < end && starts[at + 1]! < to) bits[i] = this.bits(slot[i]!, part[i]!, from, to);
      else if (says[at * STRIDE] === part[i]!) bits[i] = says[at * STRIDE + 1]! >> FIRST_SHIFT;
      else bits[i] = this.segmentBits(at, part[i]!);
    }
  }

  private segmentBits(segment: number, part: number): number {
    const says = this.says.values;
    const at = segment * STRIDE;
    if (says[at] === part) return says[at + 1]! >> FIRST_SHIFT;
    const named = this.named.values;
    const end = says[at + STRIDE + 2]!;
    for (let i = says[at + 2]!; i < end; i += 2) if (named[i] === part) return named[i + 1]!;
    return says[at + 1]! & OTHERS;
  }

  private openSegment(): void {
    this.starts.push(0);
    this.says.push(NO_PART);
    this.says.push(0);
    this.says.push(this.named.length);
  }
}

/** The segment that the day lies in, among those from `at` up to `end`. */
function halved(starts: Int32Array, at: number, end: number, day: number): number {
  let count = end - at;
  while (count > 1) {
    const half = count >> 1;
    if (starts[at + half]! <= day) {
      at += half;
      count -= half;
    } else count = half;
  }
  return at;
}
