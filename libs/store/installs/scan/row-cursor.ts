const [TAB, MINUS, BACKSLASH, ZERO, N] = [9, 45, 92, 48, 78];

/** How COPY writes characters that would end a column or a row. */
const ESCAPED: Readonly<Record<string, string>> = { t: '\t', n: '\n', r: '\r', b: '\b', f: '\f', v: '\v' };

/** Reads the columns of a row in the text form of COPY, one after the other. */
export class RowCursor {
  private bytes: Buffer = Buffer.alloc(0);
  private at = 0;
  private end = 0;

  /** Goes to the first column of the row that stands in `bytes` from `from` up to, not including, its line end at `to`. */
  readonly begin = (bytes: Buffer, from: number, to: number): this => {
    this.bytes = bytes;
    this.at = from;
    this.end = to;
    return this;
  };

  /** The next column, a whole number that is never null. */
  number(): number {
    const { bytes, end } = this;
    const negative = bytes[this.at] === MINUS;
    let value = 0;
    let at = negative ? this.at + 1 : this.at;
    for (; at < end && bytes[at] !== TAB; at++) value = value * 10 + (bytes[at]! - ZERO);
    this.at = at + 1;
    return negative ? -value : value;
  }

  /** The next column as a text; null where it is null. */
  text(): string | null {
    const { bytes, end, at: from } = this;
    let to = from;
    while (to < end && bytes[to] !== TAB) to++;
    this.at = to + 1;
    if (to - from === 2 && bytes[from] === BACKSLASH && bytes[from + 1] === N) return null;
    const text = bytes.toString('utf8', from, to);
    return text.includes('\\') ? text.replace(/\\(.)/gs, (_, one: string) => ESCAPED[one] ?? one) : text;
  }
}
