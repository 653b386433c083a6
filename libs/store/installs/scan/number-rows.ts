/** Stands for a null; no id, place or day is ever this. */
export const MISSING = -2_147_483_648;

const [TAB, NEWLINE, MINUS, BACKSLASH, ZERO] = [9, 10, 45, 92, 48];

/** Rows of whole numbers, read without making a text of any and laid one behind the other; room grows by doubling. */
export class NumberRows {
  values: Int32Array;
  count = 0;

  constructor(readonly columns: number) {
    this.values = new Int32Array(4_096 * columns);
  }

  /** Without rows, with the room it had. */
  cleared(): this {
    this.count = 0;
    return this;
  }

  /** A row in the text form of COPY. A column that is null reads as MISSING. */
  readonly take = (bytes: Buffer, from: number, to: number): void => {
    let next = this.count * this.columns;
    if (next === this.values.length) this.grow();
    const { values } = this;
    let [value, negative] = [0, false];
    for (let at = from; at <= to; at++) {
      const byte = bytes[at]!;
      if (byte >= ZERO && byte < ZERO + 10) value = value * 10 + (byte - ZERO);
      else if (byte === TAB || byte === NEWLINE) {
        values[next++] = negative ? -value : value;
        value = 0;
        negative = false;
      } else if (byte === MINUS) negative = true;
      else if (byte === BACKSLASH) value = MISSING;
    }
    this.count++;
  };

  private grow(): void {
    const larger = new Int32Array(this.values.length * 2);
    larger.set(this.values);
    this.values = larger;
  }
}
