import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

/**
 * The folder that holds package.json and prisma/, whether the code runs from source (Jest) or from dist/.
 * It is found by walking up, because the two differ in depth.
 */
export function repoRoot(): string {
  for (let folder = __dirname; ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'package.json')) && existsSync(join(folder, 'prisma', 'schema.prisma'))) return folder;
    if (folder === dirname(folder)) return resolve('.');
  }
}
