import type { Day } from '../day';
import { columnDay, IntColumn } from './bulk-columns';

/** What stands about one slot takes four numbers, so that one look at memory brings them all. */
const STRIDE = 4;
const PLACE = 0;
const FIRST_CUT = 1;
const CUT_COUNT = 2;
const THEN_AT = 3;

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
    const cuts = this.cuts.values;
    let [low, high] = [first, first + this.stretchCount(slot) - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (cuts[middle]! <= day) low = middle;
      else high = middle - 1;
    }
    return low - first;
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
