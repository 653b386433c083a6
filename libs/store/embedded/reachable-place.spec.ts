import { chmodSync, cpSync, mkdirSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { folderInRun } from '../../testing';
import { databaseFolder } from './database-folder';
import { reachableServerFiles } from './reachable-place';
import { installedServerFiles, program } from './server-files';
import { canRun, canWrite, serverUser } from './server-user';

const isRoot = process.getuid?.() === 0;
const user = serverUser()!;
const installed = installedServerFiles()!;
const made: string[] = [];

/** A folder inside one that only its owner may enter, like a home. */
function insideClosedHome(): string {
  const home = folderInRun('home');
  chmodSync(home, 0o700);
  const folder = join(home, 'clone');
  mkdirSync(folder);
  return folder;
}

afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

describe(`the database's user (${isRoot ? 'another one than root' : 'who runs this'})`, () => {
  it('is never root', () => {
    expect(user.uid ?? process.getuid?.()).not.toBe(0);
  });

  it('can run the server files, which are copied when they lie in a closed home', () => {
    const folder = insideClosedHome();
    mkdirSync(join(folder, 'bin'));
    cpSync(program(installed, 'initdb'), join(folder, 'bin', 'postgres'));
    const files = reachableServerFiles({ folder, version: `0-spec-${process.pid}` }, user);
    if (files.folder !== folder) made.push(files.folder);
    expect(files.folder === folder).toBe(!isRoot);
    expect(canRun(user, program(files, 'postgres'))).toBe(true);
  });

  it('can write where the database is kept, which is outside of a closed home, said and remembered', () => {
    const data = insideClosedHome();
    const first = databaseFolder(data, user);
    if (dirname(first.folder) !== data) made.push(first.folder);
    expect(canWrite(user, first.folder)).toBe(true);
    expect(databaseFolder(data, user)).toEqual(first);
    expect(first.notice).toEqual(
      isRoot
        ? `User '${user.name}', who runs the database, cannot enter '${data}'; the database is kept in '${first.folder}'.`
        : undefined,
    );
  });

  it('gets the database inside the data folder where that can be passed through', () => {
    const data = folderInRun('data');
    chmodSync(data, 0o700);
    expect(databaseFolder(data, user)).toEqual({ folder: join(data, 'database') });
    expect(canWrite(user, join(data, 'database'))).toBe(true);
    // Opened for passing through, not for listing.
    expect(statSync(data).mode & 0o044).toBe(0);
  });
});
