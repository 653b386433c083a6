import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { birthOf, isRunning, lockFolder, stopProcess } from '../store/embedded';

/**
 * Everything that one test run starts is noted in one folder, because the processes that run the spec files come and
 * go: who needs a service first starts it, the others find it there, and the end of the run stops it.
 */
const PREFIX = 'revright-test-';
const VARIABLE = 'REVRIGHT_TEST_RUN';
const RUNNER = 'runner';

/** Root's databases run as another user, who may not be able to enter root's own temporary folder. */
const place = (): string => (process.getuid?.() === 0 ? '/tmp' : tmpdir());

/** Makes the folder of this run and tells the processes of the run about it. */
export function openRun(): void {
  const folder = mkdtempSync(join(place(), PREFIX));
  chmodSync(folder, 0o711);
  writeFileSync(join(folder, RUNNER), String(process.pid));
  process.env[VARIABLE] = folder;
}

/** The folder of this run. A program that is no test run (a bench) opens one of its own first. */
export function runFolder(): string {
  const folder = process.env[VARIABLE];
  if (folder === undefined) throw new Error('no test run is open: call openRun() first');
  return folder;
}

/** A new folder inside the run's, which the database's user may pass through; it goes when the run ends. */
export function folderInRun(name: string): string {
  mkdirSync(join(runFolder(), 'folders'), { recursive: true });
  const folder = mkdtempSync(join(runFolder(), 'folders', `${name}-`));
  chmodSync(folder, 0o711);
  return folder;
}

/** Does the task while no other process of this run does one. */
export async function oneAtATime<T>(task: () => T | Promise<T>): Promise<T> {
  const guard = join(runFolder(), 'guard');
  mkdirSync(guard, { recursive: true });
  for (;;) {
    const lock = await lockFolder(guard);
    if (lock.ok) {
      try {
        return await task();
      } finally {
        lock.release();
      }
    }
    await pause(50);
  }
}

/** Notes a process to stop at the end of the run, with its birth, since its id may be another's by then. */
export function noteProcess(pid: number): void {
  mkdirSync(join(runFolder(), 'processes'), { recursive: true });
  writeFileSync(join(runFolder(), 'processes', String(pid)), birthOf(pid));
}

/** Stops what was noted in that run's folder and removes it. */
export async function closeRun(folder: string): Promise<void> {
  const noted = join(folder, 'processes');
  const pids = existsSync(noted) ? readdirSync(noted).map(Number) : [];
  await Promise.all(
    pids.filter((pid) => birthOf(pid) === readFileSync(join(noted, String(pid)), 'utf8')).map(stopProcess),
  );
  rmSync(folder, { recursive: true, force: true });
}

/** Clears up after earlier runs that were killed: what they started would run for ever. */
export async function closeDeadRuns(): Promise<void> {
  const folders = readdirSync(place()).filter((name) => name.startsWith(PREFIX));
  for (const folder of folders.map((name) => join(place(), name))) {
    const runner = join(folder, RUNNER);
    if (existsSync(runner) && !isRunning(Number(readFileSync(runner, 'utf8')))) await closeRun(folder);
  }
}
