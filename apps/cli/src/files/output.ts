import { once } from 'node:events';
import { createWriteStream, renameSync, rmSync } from 'node:fs';
import type { Writable } from 'node:stream';
import { Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { why } from './open-input';

/** Where an answer goes. */
export interface Output {
  write(text: string): Promise<void>;
  /** Ends a good run: only now does a file stand under its name. */
  keep(): Promise<void>;
  /** Ends a run that broke off: no half file is left behind. */
  drop(): void;
}

/**
 * Opens stdout, or the file at `path`. A file is written beside its place and put there when it is whole, so that
 * nobody reads half an answer and a broken run leaves the old file as it was.
 */
export function openOutput(path: string | undefined, { stdout }: Surroundings): Output {
  if (path === undefined || path === '-')
    return { write: (text) => writeTo(stdout, text), keep: nothing, drop: () => {} };
  const draft = `${path}.${process.pid}.part`;
  const stream = createWriteStream(draft);
  const remove = (): void => rmSync(draft, { force: true });
  process.once('exit', remove);
  let broken: Error | null = null;
  stream.on('error', (error) => (broken = error));
  const refuse = () => {
    if (broken) throw new Refusal(`${path} cannot be written: ${why(broken)}.`);
  };
  return {
    async write(text) {
      refuse();
      await writeTo(stream, text).catch(() => {});
      refuse();
    },
    async keep() {
      await new Promise<void>((done) => stream.end(() => done()).on('error', () => done()));
      refuse();
      renameSync(draft, path);
      process.off('exit', remove);
    },
    drop() {
      stream.destroy();
      remove();
      process.off('exit', remove);
    },
  };
}

const nothing = (): Promise<void> => Promise.resolve();

/** Waits while the reader is slower than the writer, which is what keeps memory flat. */
async function writeTo(stream: Writable, text: string): Promise<void> {
  if (!stream.write(text)) await once(stream, 'drain');
}

/** Writes one whole answer. */
export async function writeAnswer(path: string | undefined, around: Surroundings, text: string): Promise<void> {
  const output = openOutput(path, around);
  try {
    await output.write(text.endsWith('\n') ? text : `${text}\n`);
    await output.keep();
  } catch (error) {
    output.drop();
    throw error;
  }
}
