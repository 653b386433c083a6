import { randomUUID } from 'node:crypto';
import { chmodSync, chownSync, cpSync, existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { program, type ServerFiles } from './server-files';
import { canEnter, canRun, type ServerUser } from './server-user';

/** Folders that every user of a machine can enter; the first that can be made is taken. */
const PLACES = ['/var/lib/revright', join(tmpdir(), 'revright-server'), '/tmp/revright-server'];

/** Whether a folder belongs to us alone: in a place open to all, somebody else may have put one there before. */
const isOurs = (folder: string): boolean => statSync(folder).uid === process.getuid!();

/**
 * A folder of ours that the server's user can enter, for the case that root runs from a home closed to others.
 * Throws when no such place can be made.
 */
export function reachablePlace(user: ServerUser): string {
  for (const place of PLACES) {
    try {
      mkdirSync(place, { recursive: true, mode: 0o755 });
      if (isOurs(place)) chmodSync(place, 0o755);
      if (isOurs(place) && canEnter(user, place)) return place;
    } catch {
      continue;
    }
  }
  throw new Error(`none of ${PLACES.join(', ')} can be made and entered by user ${user.name}`);
}

/** The server's files where that user can run them: as installed, or copied once per version. */
export function reachableServerFiles(installed: ServerFiles, user: ServerUser): ServerFiles {
  if (canRun(user, program(installed, 'postgres'))) return installed;
  const folder = join(reachablePlace(user), `postgresql-${installed.version}`);
  if (!existsSync(folder)) copyWhole(installed.folder, folder);
  return { ...installed, folder };
}

/** Copies beside the target and renames, so that a broken-off copy is never taken for a whole one. */
function copyWhole(from: string, to: string): void {
  const beside = `${to}.${randomUUID()}`;
  cpSync(from, beside, { recursive: true, verbatimSymlinks: true });
  try {
    renameSync(beside, to);
  } catch (error) {
    rmSync(beside, { recursive: true, force: true });
    if (!existsSync(to)) throw error;
  }
}

/** Makes a folder that belongs to the server's user and that nobody else can read. */
export function makeOwnFolder(folder: string, user: ServerUser): void {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  if (user.uid !== undefined) chownSync(folder, user.uid, user.gid!);
}
