import { createReadStream, statSync } from 'node:fs';
import { Refusal } from '../refusal';
import type { Surroundings } from '../surroundings';
import { textOf } from './decode';

const PIECE = 256 * 1024;

/** Something to read: a file by its path, or stdin for `-`. */
export interface Input {
  /** As it is called in messages. */
  readonly name: string;
  /** Null where it is not known beforehand. */
  readonly size: number | null;
  readonly bytes: AsyncIterable<Uint8Array>;
}

/** Opens a file or stdin; what cannot be opened is refused in one sentence. */
export function openInput(path: string, { stdin }: Surroundings): Input {
  if (path === '-') return { name: 'stdin', size: null, bytes: stdin as AsyncIterable<Uint8Array> };
  try {
    const found = statSync(path);
    if (found.isDirectory()) throw new Refusal(`${path} is a folder; give a file.`);
    return { name: path, size: found.size, bytes: createReadStream(path, { highWaterMark: PIECE }) };
  } catch (error) {
    throw error instanceof Refusal ? error : new Refusal(`${path} cannot be read: ${why(error)}.`);
  }
}

/** The whole text of a file that is not large, such as a rulebook. */
export async function readText(path: string, around: Surroundings): Promise<{ name: string; text: string }> {
  const input = openInput(path, around);
  const pieces: string[] = [];
  try {
    for await (const piece of textOf(input.bytes, input.name)) pieces.push(piece);
  } catch (error) {
    throw error instanceof Refusal ? error : new Refusal(`${path} cannot be read: ${why(error)}.`);
  }
  return { name: input.name, text: pieces.join('') };
}

/** The reason the machine gives, in plain words. */
export function why(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return 'there is no such file';
  if (code === 'EACCES' || code === 'EPERM') return 'you may not open it';
  if (code === 'ENOSPC') return 'the disk is full';
  return message;
}
