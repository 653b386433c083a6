import type { PoolClient } from 'pg';
import { to as copyTo } from 'pg-copy-streams';

/** Streams what a query answers, in the text form of COPY, piece by piece; pieces end anywhere. */
export async function copyOut(client: PoolClient, query: string, take: (piece: Buffer) => void): Promise<void> {
  const stream = client.query(copyTo(`COPY (${query}) TO STDOUT`));
  for await (const piece of stream) take(piece as Buffer);
}

const [TAB, NEWLINE, MINUS, BACKSLASH, ZERO] = [9, 10, 45, 92, 48];

/**
 * Reads rows of whole numbers without making a text of any: each finished row is handed over in one array that is used
 * again. A column that is null reads as `missing`.
 */
export class NumberRows {
  private readonly row: Int32Array;
  private column = 0;
  private value = 0;
  private negative = false;
  private isMissing = false;

  constructor(
    columns: number,
    private readonly missing: number,
    private readonly done: (row: Int32Array) => void,
  ) {
    this.row = new Int32Array(columns);
  }

  take(piece: Buffer): void {
    for (const byte of piece) {
      if (byte >= ZERO && byte <= 57) this.value = this.value * 10 + (byte - ZERO);
      else if (byte === TAB) this.endColumn();
      else if (byte === NEWLINE) {
        this.endColumn();
        this.column = 0;
        this.done(this.row);
      } else if (byte === MINUS) this.negative = true;
      else if (byte === BACKSLASH) this.isMissing = true;
    }
  }

  private endColumn(): void {
    this.row[this.column++] = this.isMissing ? this.missing : this.negative ? -this.value : this.value;
    this.value = 0;
    this.negative = false;
    this.isMissing = false;
  }
}
