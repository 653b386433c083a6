import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { embeddedProblemSentence } from '../embedded/embedded-problem';
import { startEmbedded } from '../embedded/start-embedded';
import { prismaFolder } from './migration-list';
import { schemaDiff } from './schema-diff';

/** `npm run migration -- what it does`: writes the SQL from the migrations to schema.prisma as a new migration. */
async function main(words: readonly string[]): Promise<string> {
  const name = words
    .join('_')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '_');
  if (!/[a-z]/.test(name)) return 'Say what the migration does, in letters: npm run migration -- add owner phone';
  const sql = await onThrowAwayServer((url) => schemaDiff(url));
  if (sql === undefined) return 'The migrations and schema.prisma agree; there is nothing to migrate.';
  const time = new Date().toISOString().replaceAll(/\D/g, '').slice(0, 14);
  const folder = join(prismaFolder(), 'migrations', `${time}_${name}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'migration.sql'), sql);
  return `Written: ${join(folder, 'migration.sql')}. Read it, and add by hand what schema.prisma cannot say.`;
}

async function onThrowAwayServer<T>(task: (url: string) => Promise<T>): Promise<T> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'revright-migration-'));
  const result = await startEmbedded({ dataFolder, durable: false });
  if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
  try {
    return await task(result.server.url);
  } finally {
    await result.server.stop();
    rmSync(dataFolder, { recursive: true, force: true });
  }
}

main(process.argv.slice(2)).then(
  (sentence) => process.stdout.write(`${sentence}\n`),
  (error: unknown) => {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  },
);
