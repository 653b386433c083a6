// Makes the database client from prisma/schema.prisma. Runs after every npm install, works without internet.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');
const schema = join(root, 'prisma', 'schema.prisma');

/** The generator's start file, or undefined where it is not installed (npm ci --omit=dev: the client was built before). */
function generator() {
  try {
    return createRequire(import.meta.url).resolve('prisma/build/index.js');
  } catch {
    return undefined;
  }
}

export function generateClient() {
  const cli = generator();
  if (cli === undefined || !existsSync(schema)) return;
  const run = spawnSync(process.execPath, [cli, 'generate', '--schema', schema, '--no-hints'], {
    cwd: root,
    encoding: 'utf8',
    // The native engine would be downloaded; generating needs none, so any program that answers will do.
    env: {
      ...process.env,
      PRISMA_SCHEMA_ENGINE_BINARY: process.platform === 'win32' ? process.execPath : '/bin/true',
      PRISMA_HIDE_UPDATE_MESSAGE: '1',
      CHECKPOINT_DISABLE: '1',
    },
  });
  if (run.status === 0) return;
  process.stderr.write(
    `The database client could not be made from prisma/schema.prisma:\n${run.stdout}${run.stderr}\n`,
  );
  process.exit(1);
}

if (process.argv[1] === import.meta.filename) generateClient();
