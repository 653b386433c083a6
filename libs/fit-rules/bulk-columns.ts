/** A column of whole numbers that grows by doubling. `values` is replaced when it grows: read it afresh. */
export class IntColumn {
  values = new Int32Array(1024);
  length = 0;

  push(value: number): void {
    if (this.length === this.values.length) {
      const larger = new Int32Array(this.length * 2);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[this.length++] = value;
  }
}

/** Stand for an open side of a span of build dates in the columns of the fast path. */
export const OPEN_START = -2_147_483_648;
export const OPEN_END = 2_147_483_647;
/** In a column of fitting days: it came with the unit, so it is taken as fitted on the build day. */
export const CAME_WITH_UNIT = -2_147_483_648;

/** Days are compared by counting only between these two: a difference of two of them must not leave 32 bits. */
export const BEFORE_ALL = -1_000_000_000;
export const AFTER_ALL = 1_000_000_000;

/** A day, or an open side, as a column holds it. */
export function columnDay(day: number): number {
  return day === -Infinity ? OPEN_START : day === Infinity ? OPEN_END : day;
}
