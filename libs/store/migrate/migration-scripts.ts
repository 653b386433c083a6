import { createHash } from 'node:crypto';
import { migrationList, prismaFolder } from './migration-list';
import { insideAfterAll, runsOutside } from './outside-a-transaction';

/** A migration as it can be run within somebody else's transaction, on a database where nobody works. */
export interface MigrationScript {
  readonly name: string;
  /** SHA-256 of its file, in hexadecimal: what Prisma keeps beside the name. */
  readonly checksum: string;
  readonly sql: string;
}

/** All migrations this program knows, oldest first. */
export function migrationScripts(folder: string = prismaFolder()): readonly MigrationScript[] {
  return migrationList(folder).migrationDirectories.map(({ path, migrationFile: { content } }) => {
    if (content.tag !== 'ok') throw new Error(`The migration ${path} cannot be read.`);
    const sql = runsOutside(content.value) ? insideAfterAll(content.value) : content.value;
    return { name: path, checksum: createHash('sha256').update(content.value).digest('hex'), sql };
  });
}

/** The table in which Prisma keeps what was applied, as its engine makes it. */
export const TABLE_OF_MIGRATIONS = `CREATE TABLE _prisma_migrations (
  id VARCHAR(36) PRIMARY KEY NOT NULL, checksum VARCHAR(64) NOT NULL, finished_at TIMESTAMPTZ,
  migration_name VARCHAR(255) NOT NULL, logs TEXT, rolled_back_at TIMESTAMPTZ,
  started_at TIMESTAMPTZ NOT NULL DEFAULT now(), applied_steps_count INTEGER NOT NULL DEFAULT 0)`;
