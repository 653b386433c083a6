import type { Connection, PoolClient, Submittable } from 'pg';

/** Told of a row: it stands in `bytes` from `from` up to, not including, the line end at `to`; only until it returns. */
export type TakeRow = (bytes: Buffer, from: number, to: number) => void;

const [COPY_DATA, COPY_DONE, ERROR] = [0x64, 0x63, 0x45];
/** A message begins with its kind and four bytes of length. */
const HEAD = 5;
const NO_BYTES = Buffer.alloc(0);

/** Streams what a query answers, row by row, in the text form of COPY. Throws what the database or `take` says. */
export async function copyRows(client: PoolClient, query: string, take: TakeRow): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    client.query(new CopyRows(`COPY (${query}) TO STDOUT`, take, resolve, reject));
  });
}

type PieceListener = (piece: Buffer) => void;

/**
 * Reads the connection's bytes itself for as long as rows come, as the driver would make an object of each. States:
 * waiting for its turn -> reading (`submit`) -> handed back, at the end of the rows or at an error: the driver reads on.
 */
class CopyRows implements Submittable {
  private connection: Connection | null = null;
  private driver: PieceListener | null = null;
  private rest: Buffer = NO_BYTES;
  private problem: unknown = null;

  constructor(
    private readonly text: string,
    private readonly take: TakeRow,
    private readonly done: () => void,
    private readonly failed: (error: unknown) => void,
  ) {}

  submit(connection: Connection): void {
    this.connection = connection;
    const { stream } = connection;
    this.driver = stream.listeners('data')[0] as PieceListener;
    stream.removeListener('data', this.driver);
    stream.on('data', this.read);
    connection.query(this.text);
  }

  private readonly read = (piece: Buffer): void => {
    const bytes = this.rest.length === 0 ? piece : Buffer.concat([this.rest, piece]);
    const { length } = bytes;
    let at = 0;
    while (at + HEAD <= length) {
      const kind = bytes[at];
      if (kind === COPY_DONE || kind === ERROR) return this.handBack(bytes.subarray(at));
      const end = at + 1 + bytes.readUInt32BE(at + 1);
      if (end > length) break;
      if (kind === COPY_DATA) this.takeRow(bytes, at + HEAD, end - 1);
      at = end;
    }
    this.rest = at === length ? NO_BYTES : bytes.subarray(at);
  };

  /** Whoever is told must not break the reading off in the middle: the rows that are under way come all the same. */
  private takeRow(bytes: Buffer, from: number, to: number): void {
    if (this.problem !== null) return;
    try {
      this.take(bytes, from, to);
    } catch (error) {
      this.problem = error;
    }
  }

  private handBack(bytes: Buffer): void {
    const { stream } = this.connection!;
    stream.removeListener('data', this.read);
    stream.on('data', this.driver!);
    this.driver!(bytes);
  }

  handleError(error: Error): void {
    this.failed(this.problem ?? error);
  }

  handleReadyForQuery(): void {
    if (this.problem === null) this.done();
    else this.failed(this.problem);
  }

  handleCommandComplete(): void {
    // The rows themselves are the answer.
  }
}
