import type { Day } from '../day';
import { BEFORE_ALL, columnDay, IntColumn } from './bulk-columns';

/** What stands about one slot takes four numbers, so that one look at memory brings them all. */
const STRIDE = 4;
const PLACE = 0;
const FIRST_CUT = 1;
const CUT_COUNT = 2;
const THEN_AT = 3;
/** Up to this many stretches are counted through; more are halved. */
const FEW_STRETCHES = 8;

/**
 * Per slot the slots by the papers of other days, in flat columns: a part that does not belong today is looked at again
 * by the papers of the day it was fitted.
 */
export class ThenSlots {
  /** Where the in-force cuts of each place begin; those of place p end where those of p + 1 begin. */
  private readonly cutsAt = new IntColumn();
  private readonly cuts = new IntColumn();
  /** Per slot: its place, its place's cuts, and where its slots by stretch begin (-1 until one is asked for). */
  private readonly about = new IntColumn();
  private readonly then = new IntColumn();

  constructor() {
    this.cutsAt.push(0);
  }

  /** Adds a place with the days that part its stretches; the first is -Infinity. */
  addPlace(cuts: readonly Day[]): void {
    for (const cut of cuts) this.cuts.push(columnDay(cut));
    this.cutsAt.push(this.cuts.length);
  }

  /** Adds the next slot. */
  addSlot(place: number): void {
    const first = this.cutsAt.values[place]!;
    this.about.push(place);
    this.about.push(first);
    this.about.push(this.cutsAt.values[place + 1]! - first);
    this.about.push(-1);
  }

  placeOfSlot(slot: number): number {
    return this.about.values[slot * STRIDE + PLACE]!;
  }

  stretchCount(slot: number): number {
    return this.about.values[slot * STRIDE + CUT_COUNT]!;
  }

  /** First day of a stretch, as columns hold days. */
  startOf(slot: number, stretch: number): number {
    return this.cuts.values[this.about.values[slot * STRIDE + FIRST_CUT]! + stretch]!;
  }

  /** The stretch that the day lies in. */
  stretchAt(slot: number, day: number): number {
    const first = this.about.values[slot * STRIDE + FIRST_CUT]!;
    const count = this.stretchCount(slot);
    const cuts = this.cuts.values;
    if (count <= FEW_STRETCHES) return countedTo(cuts, first, count, day);
    let [low, high] = [first, first + count - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (cuts[middle]! <= day) low = middle;
      else high = middle - 1;
    }
    return low - first;
  }

  /** Whether the stretch ends before `day` does, so that `[.., day)` reaches into the next one. */
  endsBefore(slot: number, stretch: number, day: number): boolean {
    return stretch + 1 < this.stretchCount(slot) && this.startOf(slot, stretch + 1) < day;
  }

  /** The slot by the papers of the stretch; -1 until it is put. */
  get(slot: number, stretch: number): number {
    const at = this.about.values[slot * STRIDE + THEN_AT]!;
    return at === -1 ? -1 : this.then.values[at + stretch]!;
  }

  put(slot: number, stretch: number, then: number): void {
    if (this.about.values[slot * STRIDE + THEN_AT] === -1) {
      this.about.values[slot * STRIDE + THEN_AT] = this.then.length;
      for (let i = this.stretchCount(slot); i > 0; i--) this.then.push(-1);
    }
    this.then.values[this.about.values[slot * STRIDE + THEN_AT]! + stretch] = then;
  }
}

/** Counted without a branch, like the segments of a slot; the first cut is the open start. */
function countedTo(cuts: Int32Array, first: number, count: number, day: number): number {
  if (day < BEFORE_ALL) return 0;
  let stretch = 0;
  for (let next = first + 1; next < first + count; next++) stretch += (cuts[next]! - day - 1) >>> 31;
  return stretch;
}
