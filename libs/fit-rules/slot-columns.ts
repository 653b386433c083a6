import type { PartKey } from '../part-number';
import { AFTER_ALL, BEFORE_ALL, columnDay, IntColumn } from './bulk-columns';
import type { SlotSegment } from './slot-segments';

/** What a segment says takes two numbers; see {@link SlotColumns}. */
const STRIDE = 2;
/** Stands where no part is named; no part has this number. */
const NO_PART = -2;
/** The bits of the first named part stand above those of parts that are not named. */
const FIRST_SHIFT = 8;
const OTHERS = (1 << FIRST_SHIFT) - 1;
/** Up to this many segments are counted through; more are halved. */
const FEW_SEGMENTS = 8;
/** The days that part the segments of one slot: one less than there are. */
const MOST_CUTS = FEW_SEGMENTS - 1;
/** The cuts of a slot, and after them where its segments begin, counted from {@link AFTER_ALL}. */
const CUTS_STRIDE = MOST_CUTS + 1;

/** What is asked of many slots at once, one row per index; see {@link SlotColumns.bits}. */
export interface SlotRows {
  readonly slot: Int32Array;
  readonly part: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
}

/** Rows that are to be written down: those with just these bits. There is room for all of them and one more. */
export interface Sought {
  readonly bits: number;
  readonly rows: Int32Array;
}

/** No row has such bits. */
export const NOTHING_SOUGHT: Sought = { bits: -1, rows: new Int32Array(1) };

/**
 * The segments of all slots in flat columns, so that looking one up touches little memory. The first build dates stand
 * by themselves. What a segment says stands beside: the first part it names, which is nearly always the one that is
 * asked for, and the bits of that part and of parts it does not name. After the last segment stands an open one:
 * further names of segment g end where those of g + 1 begin.
 */
export class SlotColumns {
  private readonly slotAt = new IntColumn();
  private readonly starts = new IntColumn();
  private readonly says = new IntColumn();
  private readonly namedAt = new IntColumn();
  /** Part number and bits, turn and turn about. */
  private readonly named = new IntColumn();
  /**
   * The days that part a slot's segments once more, equally many for every slot, so that counting them has no end to
   * guess; see {@link CUTS_STRIDE}. A slot with more segments than fit, or with a day beyond counting, has
   * {@link BEFORE_ALL} throughout.
   */
  private readonly cuts = new IntColumn();

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
    this.addCuts(segments.slice(1).map(({ from }) => columnDay(from)));
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
   * The bits of rows 0 up to `count`, as `codeOfBits` has a code for them, into `codes`. Gives how many of the rows are
   * sought; they are written down.
   *
   * The columns do not grow meanwhile, so they are taken hold of once. Which segment a day lies in is counted without a
   * branch: a processor guesses wrong about it in most rows, and that costs more than comparing with every cut.
   */
  codesOfColumns(
    { slot, part, builtFrom, builtTo }: SlotRows,
    count: number,
    codeOfBits: Uint8Array,
    codes: Uint8Array,
    sought: Sought,
  ): number {
    const [cuts, says] = [this.cuts.values, this.says.values];
    const { bits: soughtBits, rows: found } = sought;
    let foundCount = 0;
    for (let i = 0; i < count; i++) {
      const own = slot[i]!;
      const from = builtFrom[i]!;
      const to = builtTo[i]!;
      const cut = own * CUTS_STRIDE;
      const next = from + 1;
      // The sign bit is 1 where the cut is at or before `from`.
      const passed =
        ((cuts[cut]! - next) >>> 31) +
        ((cuts[cut + 1]! - next) >>> 31) +
        ((cuts[cut + 2]! - next) >>> 31) +
        ((cuts[cut + 3]! - next) >>> 31) +
        ((cuts[cut + 4]! - next) >>> 31) +
        ((cuts[cut + 5]! - next) >>> 31) +
        ((cuts[cut + 6]! - next) >>> 31);
      let bits: number;
      if (from < BEFORE_ALL || from >= AFTER_ALL || from >= to || cuts[cut + passed]! < to) {
        bits = this.bits(own, part[i]!, from, to);
      } else {
        const at = cuts[cut + MOST_CUTS]! - AFTER_ALL + passed;
        bits = says[at * STRIDE] === part[i]! ? says[at * STRIDE + 1]! >> FIRST_SHIFT : this.segmentBits(at, part[i]!);
      }
      codes[i] = codeOfBits[bits]!;
      // Written in any case and counted only where it is sought: one branch less to guess.
      found[foundCount] = i;
      foundCount += bits === soughtBits ? 1 : 0;
    }
    return foundCount;
  }

  private segmentBits(segment: number, part: number): number {
    const says = this.says.values;
    const at = segment * STRIDE;
    if (says[at] === part) return says[at + 1]! >> FIRST_SHIFT;
    const named = this.named.values;
    const end = this.namedAt.values[segment + 1]!;
    for (let i = this.namedAt.values[segment]!; i < end; i += 2) if (named[i] === part) return named[i + 1]!;
    return says[at + 1]! & OTHERS;
  }

  private openSegment(): void {
    this.starts.push(0);
    this.says.push(NO_PART);
    this.says.push(0);
    this.namedAt.push(this.named.length);
  }

  private addCuts(own: readonly number[]): void {
    const counted = own.length <= MOST_CUTS && own.every((day) => day > BEFORE_ALL && day < AFTER_ALL);
    for (let i = 0; i < MOST_CUTS; i++) this.cuts.push(counted ? (own[i] ?? AFTER_ALL) : BEFORE_ALL);
    this.cuts.push(counted ? AFTER_ALL + this.slotAt.values[this.slotAt.length - 1]! : BEFORE_ALL);
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
