import { randomBytes } from 'node:crypto';
import { linkSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Config } from './read-config';

/**
 * The 32 bytes that secrets are sealed with: those of the environment, else those of the file `key` in the data folder,
 * which is made when there is none. It is made whole or not at all, so that two processes that start together end up
 * with the same one. Throws one sentence when the file holds anything else, or when there is neither key nor folder.
 */
export function keyOf({ key, dataFolder }: Partial<Pick<Config, 'key' | 'dataFolder'>>): Buffer {
  if (key !== undefined) return Buffer.from(key, 'hex');
  if (dataFolder === undefined) throw new Error('The program was started without a key.');
  const file = join(dataFolder, 'key');
  const text = (readIfThere(file) ?? made(file)).trim();
  if (!/^[0-9a-f]{64}$/i.test(text)) throw new Error(`The file ${file} holds no key of 64 hexadecimal digits.`);
  return Buffer.from(text, 'hex');
}

/** The key from before the key was changed, for as long as the environment names it. */
export function keyBeforeOf({ keyBefore }: Partial<Pick<Config, 'keyBefore'>>): Buffer | undefined {
  return keyBefore === undefined ? undefined : Buffer.from(keyBefore, 'hex');
}

function made(file: string): string {
  mkdirSync(join(file, '..'), { recursive: true, mode: 0o700 });
  const draft = `${file}.${randomBytes(6).toString('hex')}`;
  writeFileSync(draft, `${randomBytes(32).toString('hex')}\n`, { mode: 0o600 });
  try {
    linkSync(draft, file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  } finally {
    rmSync(draft);
  }
  return readFileSync(file, 'utf8');
}

function readIfThere(file: string): string | null {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}
