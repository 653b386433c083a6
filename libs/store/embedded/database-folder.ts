import { randomBytes, randomUUID } from 'node:crypto';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { type EmbeddedProblem } from './embedded-problem';
import { makeOwnFolder, reachablePlace } from './reachable-place';
import { canWrite, type ServerUser } from './server-user';

const DATABASE = 'database';
/** Kept in the data folder when the database itself had to go elsewhere: its path. */
const ELSEWHERE = 'database-is-at';
const PASSWORD = 'database-password';
/** That of the programs, which own nothing in the database. */
const APP_PASSWORD = 'database-app-password';

/** Makes the data folder if need be and writes a file into it; a problem when it cannot. */
export function prepareDataFolder(folder: string): EmbeddedProblem | undefined {
  const trial = join(folder, `writable-${randomUUID()}`);
  try {
    // Only the data folder itself is closed to others, not the folders above it that are made on the way.
    mkdirSync(dirname(folder), { recursive: true });
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writeFileSync(trial, '');
    rmSync(trial);
    return undefined;
  } catch (error) {
    return { code: 'folder-not-writable', folder, reason: reasonOf(error as NodeJS.ErrnoException) };
  }
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EROFS: 'the file system is read-only',
  ENOTDIR: 'a file stands where the folder should be',
  EEXIST: 'a file stands where the folder should be',
  ENOSPC: 'the disk is full',
};

const reasonOf = (error: NodeJS.ErrnoException): string => REASONS[error.code ?? ''] ?? error.message;

/** Where the database of that data folder lies, without making or trying anything. */
export function placeOfDatabase(dataFolder: string): string {
  const pointer = join(dataFolder, ELSEWHERE);
  return existsSync(pointer) ? readFileSync(pointer, 'utf8').trim() : join(dataFolder, DATABASE);
}

export interface DatabaseFolder {
  readonly folder: string;
  /** Set when the database does not lie in the data folder: the sentence that says so. */
  readonly notice?: string;
}

/**
 * Where PostgreSQL's files of this data folder lie: in it, or, where the server's user cannot enter it, in a place
 * that user can, remembered in the data folder. A new data folder gets a new place, never an old one's.
 */
export function databaseFolder(dataFolder: string, user: ServerUser): DatabaseFolder {
  const inside = join(dataFolder, DATABASE);
  const pointer = join(dataFolder, ELSEWHERE);
  const remembered = existsSync(pointer) ? readFileSync(pointer, 'utf8').trim() : undefined;
  if (remembered === undefined && canKeepInside(user, dataFolder, inside)) return { folder: inside };
  const folder = remembered ?? join(reachablePlace(user), `database-${randomUUID()}`);
  makeOwnFolder(folder, user);
  if (remembered === undefined) writeFileSync(pointer, `${folder}\n`, { mode: 0o600 });
  return {
    folder,
    notice: `User '${user.name}', who runs the database, cannot enter '${dataFolder}'; the database is kept in '${folder}'.`,
  };
}

/** Tries it: the data folder is opened for passing through (not for listing), and closed again when that does not help. */
function canKeepInside(user: ServerUser, dataFolder: string, inside: string): boolean {
  makeOwnFolder(inside, user);
  if (canWrite(user, inside)) return true;
  const { mode } = statSync(dataFolder);
  chmodSync(dataFolder, mode | 0o011);
  if (canWrite(user, inside)) return true;
  chmodSync(dataFolder, mode);
  if (readdirSync(inside).length === 0) rmdirSync(inside);
  return false;
}

/** The password of the database's owner: random, made once, readable by this user alone. */
export function databasePassword(dataFolder: string): string | undefined {
  const file = join(dataFolder, PASSWORD);
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : undefined;
}

export function makeDatabasePassword(dataFolder: string): string {
  return makePassword(join(dataFolder, PASSWORD));
}

/** The password of the programs' login, made when it is first wanted. */
export function appPassword(dataFolder: string): string {
  const file = join(dataFolder, APP_PASSWORD);
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : makePassword(file);
}

function makePassword(file: string): string {
  const password = randomBytes(24).toString('base64url');
  writeFileSync(file, `${password}\n`, { mode: 0o600 });
  return password;
}
