import { closeSync, openSync, readFileSync, rmSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { birthOf, isRunning } from './running-process';

/** One running copy per data folder. The file names the holder, so that one left by a dead copy is recognised. */
const LOCK = 'in-use-by';
const TAKING_OVER_IS_STALE_AFTER_MS = 10_000;

export type LockResult =
  { readonly ok: true; readonly release: () => void } | { readonly ok: false; readonly pid: number };

/**
 * Takes the folder for this process. A lock whose holder is gone (killed, power cut) is taken over; taking over is
 * itself guarded by a second file, so that of two copies that start at once only one wins.
 * Throws what the file system throws when the folder cannot be written to.
 */
export async function lockFolder(folder: string): Promise<LockResult> {
  const lock = join(folder, LOCK);
  for (;;) {
    if (create(lock, `${process.pid} ${birthOf(process.pid)}`)) {
      return { ok: true, release: () => rmSync(lock, { force: true }) };
    }
    const holder = holderOf(lock);
    if (typeof holder === 'number') return { ok: false, pid: holder };
    if (holder === 'gone') removeStale(lock);
    await pause(20);
  }
}

/** Removes the lock of a dead holder, unless another copy is doing so at this moment. */
function removeStale(lock: string): void {
  const takeover = `${lock}.taking`;
  if (create(takeover, String(process.pid))) {
    if (holderOf(lock) === 'gone') rmSync(lock, { force: true });
    rmSync(takeover, { force: true });
  } else if (ageOf(takeover) > TAKING_OVER_IS_STALE_AFTER_MS) {
    rmSync(takeover, { force: true });
  }
}

/** Makes the file with that text, or answers false when it exists. */
function create(file: string, text: string): boolean {
  try {
    const handle = openSync(file, 'wx', 0o600);
    writeSync(handle, text);
    closeSync(handle);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/**
 * The id of the running holder; 'gone' when it died or its id now belongs to another process;
 * 'writing' while a copy that has just made the file has not put its id in yet.
 */
function holderOf(lock: string): number | 'gone' | 'writing' {
  const [, pid, birth] = /^(\d+) (.*)$/.exec(read(lock)) ?? [];
  if (pid === undefined) return ageOf(lock) < 1_000 ? 'writing' : 'gone';
  return isRunning(Number(pid)) && birthOf(Number(pid)) === birth ? Number(pid) : 'gone';
}

const read = (file: string): string => {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
};

const ageOf = (file: string): number => Date.now() - (statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0);
