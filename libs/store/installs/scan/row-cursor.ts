const [TAB, MINUS, BACKSLASH, ZERO, N] = [9, 45, 92, 48, 78];
/** Bytes from here on belong to characters of several. */
const BEYOND_ASCII = 128;

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
    let [seen, escaped] = [0, false];
    for (; to < end; to++) {
      const byte = bytes[to]!;
      if (byte === TAB) break;
      seen |= byte;
      if (byte === BACKSLASH) escaped = true;
    }
    this.at = to + 1;
    if (escaped && to - from === 2 && bytes[from + 1] === N) return null;
    // Nearly every text is of plain characters, and those take half as long to read as such.
    const text = bytes.toString(seen < BEYOND_ASCII ? 'latin1' : 'utf8', from, to);
    return escaped ? text.replace(/\\(.)/gs, (_, one: string) => ESCAPED[one] ?? one) : text;
  }
}
