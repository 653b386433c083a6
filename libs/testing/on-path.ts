import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Full path of the first of these programs that is on PATH, or undefined. */
export function onPath(...names: readonly string[]): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isProgram);
}

const isProgram = (file: string): boolean => {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};
