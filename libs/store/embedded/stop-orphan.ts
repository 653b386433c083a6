import { readFileSync, rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { isDeadButListed, isRunning, stopProcess } from './running-process';
import { isServerOf, serverNote } from './server-note';

const HELPERS_END_WITHIN_MS = 10_000;

/**
 * Clears the way for a new server where an earlier copy of us was killed. A server it left behind is stopped: only a
 * process that was started on this very folder is touched, since the id noted in the folder may by now belong to
 * another. A server that is dead but still listed would keep PostgreSQL from starting for as long as it is listed, so
 * its note is removed once none of its helpers uses its memory any more.
 */
export async function stopOrphan(folder: string): Promise<void> {
  const note = serverNote(folder);
  if (!note) return;
  const { pid, memory } = note;
  if (isServerOf(folder, note)) await stopProcess(pid);
  if (isRunning(pid) || !isDeadButListed(pid)) return;
  const end = Date.now() + HELPERS_END_WITHIN_MS;
  while (memory !== undefined && isInUse(memory) && Date.now() < end) await pause(50);
  if (memory === undefined || !isInUse(memory)) rmSync(note.file, { force: true });
}

/** Whether any process is still attached to that block of System V shared memory. */
function isInUse(id: string): boolean {
  try {
    const rows = readFileSync('/proc/sysvipc/shm', 'utf8')
      .split('\n')
      .map((row) => row.trim().split(/\s+/));
    const attached = rows[0]!.indexOf('nattch');
    return rows.some((row) => row[1] === id && row[attached] !== '0');
  } catch {
    return false;
  }
}
