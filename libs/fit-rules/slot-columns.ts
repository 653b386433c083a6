import type { PartKey } from '../part-number';
import { columnDay, IntColumn } from './bulk-columns';
import type { SlotSegment } from './slot-segments';

/** A segment takes three numbers: its first build date, the bits of parts it does not name, where its names begin. */
const STRIDE = 3;

/**
 * The segments of all slots in flat columns, so that looking one up touches little memory. After the last segment of a
 * slot stands one that begins where the next slot's names begin: names of segment g end where those of g + 1 begin.
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
        this.named.push(numberOf(part));
        this.named.push(bits);
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
    let count = (end - at) / STRIDE;
    while (count > 1) {
      const half = count >> 1;
      if (segments[at + half * STRIDE]! <= from) {
        at += half * STRIDE;
        count -= half;
      } else count = half;
    }
    let bits = this.segmentBits(segments, at, part);
    for (at += STRIDE; at < end && segments[at]! < to; at += STRIDE) bits |= this.segmentBits(segments, at, part);
    return bits;
  }

  private segmentBits(segments: Int32Array, at: number, part: number): number {
    const named = this.named.values;
    const end = segments[at + STRIDE + 2]!;
    for (let i = segments[at + 2]!; i < end; i += 2) if (named[i] === part) return named[i + 1]!;
    return segments[at + 1]!;
  }

  private pushSegment(from: number, others: number): void {
    this.segments.push(from);
    this.segments.push(others);
    this.segments.push(this.named.length);
  }
}
