import { Readable, Writable } from 'node:stream';
import { run } from '../run';

/** What one command line printed and how it ended. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

class Sink extends Writable {
  readonly pieces: string[] = [];

  constructor(readonly isTTY: boolean) {
    super({ decodeStrings: false });
  }

  override _write(piece: string | Buffer, _encoding: string, done: () => void): void {
    this.pieces.push(piece.toString());
    done();
  }

  get text(): string {
    return this.pieces.join('');
  }
}

/** Runs a command line in this process, with given text on stdin; `terminal` makes stderr one. */
export async function runCli(args: readonly string[], stdin: string | Buffer = '', terminal = false): Promise<Ran> {
  const [stdout, stderr] = [new Sink(false), new Sink(terminal)];
  const code = await run(args, { stdin: Readable.from([Buffer.from(stdin)]), stdout, stderr });
  return { code, out: stdout.text, err: stderr.text };
}

/** Splits a command line as a shell does, as far as the documentation needs: blanks and double quotes. */
export function wordsOf(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare!);
}
