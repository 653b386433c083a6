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
