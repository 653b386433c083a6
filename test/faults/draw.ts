/** Numbers drawn from a seed: the same seed gives the same faults at the same moments of the plan. */
export class Draw {
  constructor(private state: number) {}

  /** A whole number from 0 up to, not including, `below` (mulberry32, public domain). */
  below(below: number): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * below);
  }

  oneOf<T>(all: readonly T[]): T {
    return all[this.below(all.length)]!;
  }
}
