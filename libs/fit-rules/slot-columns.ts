import type { PartKey } from '../part-number';
import { columnDay, IntColumn } from './bulk-columns';
import type { SlotSegment } from './slot-segments';

/**
 * A segment takes five numbers: its first build date, the bits of parts it does not name, where its names begin, and the
 * first part it names with its bits, which is nearly always the one that is asked for.
 */
const STRIDE = 5;
/** Stands where no part is named; no part has this number. */
const NO_PART = -2;
/** Up to this many segments are walked through; more are halved. */
const FEW_SEGMENTS = 8;

/**
 * The segments of all slots in flat columns, so that looking one up touches little memory. After the last segment of a
 * slot stands one that begins where the next slot's names begin: further names of segment g end where those of g + 1 begin.
 */
export class SlotColumns {
  private readonly slotAt = new IntColumn();
  private readonly segments = new IntColumn();
  /** Part number and bits, turn and turn about. */
  private readonly named = new IntColumn();

  constructor() {
    this.slotAt.push(0);
    this.pushSegment(0, 0);
  }

  /** How many slots there are. */
  get size(): number {
    return this.slotAt.length - 1;
  }

  /** Adds a slot and gives its number. */
  add(segments: readonly SlotSegment[], numberOf: (part: PartKey) => number): number {
    for (const { from, others, named } of segments) {
      // The open segment at the end gets its beginning and its bits now; where its names begin it knows already.
      this.segments.values[this.segments.length - STRIDE] = columnDay(from);
      this.segments.values[this.segments.length - STRIDE + 1] = others;
      for (const [part, bits] of named) {
        const number = numberOf(part);
        if (this.segments.values[this.segments.length - STRIDE + 3] === NO_PART) this.putFirst(number, bits);
        else {
          this.named.push(number);
          this.named.push(bits);
        }
      }
      this.pushSegment(0, 0);
    }
    this.slotAt.push(this.segments.length - STRIDE);
    return this.size - 1;
  }

  /** The bits of the part over every segment that `[from, to)` meets; 0 when the span is empty. */
  bits(slot: number, part: number, from: number, to: number): number {
    if (from >= to) return 0;
    const segments = this.segments.values;
    const end = this.slotAt.values[slot + 1]!;
    let at = this.slotAt.values[slot]!;
    if (end - at > FEW_SEGMENTS * STRIDE) at = halved(segments, at, end, from);
    else while (at + STRIDE < end && segments[at + STRIDE]! <= from) at += STRIDE;
    let bits = this.segmentBits(segments, at, part);
    for (at += STRIDE; at < end && segments[at]! < to; at += STRIDE) bits |= this.segmentBits(segments, at, part);
    return bits;
  }

  private segmentBits(segments: Int32Array, at: number, part: number): number {
    if (segments[at + 3] === part) return segments[at + 4]!;
    const named = this.named.values;
    const end = segments[at + STRIDE + 2]!;
    for (let i = segments[at + 2]!; i < end; i += 2) if (named[i] === part) return named[i + 1]!;
    return segments[at + 1]!;
  }

  private pushSegment(from: number, others: number): void {
    this.segments.push(from);
    this.segments.push(others);
    this.segments.push(this.named.length);
    this.segments.push(NO_PART);
    this.segments.push(0);
  }

  private putFirst(part: number, bits: number): void {
    this.segments.values[this.segments.length - STRIDE + 3] = part;
    this.segments.values[this.segments.length - STRIDE + 4] = bits;
  }
}

/** Where the segment that the day lies in begins, among those from `at` up to `end`. */
function halved(segments: Int32Array, at: number, end: number, day: number): number {
  let count = (end - at) / STRIDE;
  while (count > 1) {
    const half = count >> 1;
    if (segments[at + half * STRIDE]! <= day) {
      at += half * STRIDE;
      count -= half;
    } else count = half;
  }
  return at;
}
