import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type MigrationList } from '@prisma/schema-engine-wasm';
import { repoRoot } from '../../config';
import { runsOutside, statementsOf } from './outside-a-transaction';

/** Where schema.prisma and migrations/ lie unless a spec names another folder. */
export const prismaFolder = (): string => join(repoRoot(), 'prisma');

/**
 * All migrations below `<folder>/migrations`, oldest first (their names begin with the time they were made). Throws when one
 * is marked as running outside a transaction and holds what must not.
 */
export function migrationList(folder: string): MigrationList {
  const baseDir = join(folder, 'migrations');
  const lockfile = join(baseDir, 'migration_lock.toml');
  return {
    baseDir,
    lockfile: {
      path: 'migration_lock.toml',
      content: existsSync(lockfile) ? readFileSync(lockfile, 'utf8') : null,
    },
    shadowDbInitScript: '',
    migrationDirectories: migrationNames(folder).map((name) => ({
      path: name,
      migrationFile: {
        path: 'migration.sql',
        content: { tag: 'ok', value: checked(readFileSync(join(baseDir, name, 'migration.sql'), 'utf8')) },
      },
    })),
  };
}

/** The names of the same, oldest first. */
export function migrationNames(folder: string): readonly string[] {
  const baseDir = join(folder, 'migrations');
  if (!existsSync(baseDir)) return [];
  return readdirSync(baseDir, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
}

function checked(sql: string): string {
  if (runsOutside(sql)) statementsOf(sql);
  return sql;
}
