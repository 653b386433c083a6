import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

/** Whether a process with this id runs, also when it belongs to another user. One that is dead but still listed does not. */
export const isRunning = (pid: number): boolean => isListed(pid) && !isDeadButListed(pid);

const isListed = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
};

/**
 * Whether the process has ended but its parent has not fetched its exit code. In a container whose first program
 * fetches none, it stays so for ever.
 */
export function isDeadButListed(pid: number): boolean {
  try {
    return statOf(pid)[0] === 'Z';
  } catch {
    return ask(pid, 'state').startsWith('Z');
  }
}

const ask = (pid: number, column: string): string => {
  const answer = spawnSync('ps', ['-ww', '-o', `${column}=`, '-p', String(pid)], { encoding: 'utf8' });
  return answer.status === 0 ? answer.stdout.trim() : '';
};

/** The command line of a process; empty when it is not running. */
export function commandOf(pid: number): string {
  try {
    return readProc(pid, 'cmdline').replaceAll('\0', ' ').trim();
  } catch {
    return ask(pid, 'command');
  }
}

/**
 * A text that tells this process from a later one that was given the same id: when it began.
 * Empty when it is not running or the system does not tell.
 */
export function birthOf(pid: number): string {
  try {
    return statOf(pid)[19] ?? '';
  } catch {
    return ask(pid, 'lstart');
  }
}

/** Waits until the process is gone; false when it still runs after that many milliseconds. */
export async function isGoneWithin(pid: number, milliseconds: number): Promise<boolean> {
  const end = Date.now() + milliseconds;
  while (isRunning(pid)) {
    if (Date.now() > end) return false;
    await pause(25);
  }
  return true;
}

/** The fields of /proc/<pid>/stat after the program's name, the state first. The name itself may hold spaces. */
function statOf(pid: number): readonly string[] {
  const stat = readProc(pid, 'stat');
  return stat.slice(stat.lastIndexOf(')') + 2).split(' ');
}

const readProc = (pid: number, file: 'cmdline' | 'stat'): string => readFileSync(`/proc/${pid}/${file}`, 'utf8');

const STOPPED_WITHIN_MS = 20_000;

/**
 * Stops a server. PostgreSQL at the first signal ends open sessions and writes everything; one that does not answer
 * is ended hard, and recovers at its next start.
 */
export async function stopProcess(pid: number): Promise<void> {
  for (const signal of ['SIGINT', 'SIGQUIT', 'SIGKILL'] as const) {
    try {
      process.kill(pid, signal);
    } catch {
      return;
    }
    if (await isGoneWithin(pid, STOPPED_WITHIN_MS)) return;
  }
}
