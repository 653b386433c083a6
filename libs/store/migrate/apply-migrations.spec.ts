import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderInRun, withDatabase, type SpecDatabase } from '../../testing';
import { applyMigrations } from './apply-migrations';
import { migrationList, prismaFolder } from './migration-list';
import { schemaDiff } from './schema-diff';
import { migrationScripts } from './migration-scripts';
import { wholeOrNotAtAll } from './unfinished-migrations';

const SCHEMA = `
datasource db {
  provider = "postgresql"
}
model Rule {
  id      Int    @id @default(autoincrement())
  part    String
  builtIn Unsupported("daterange") @map("built_in")
  @@index([builtIn], type: Gist)
}`;

const FIRST = `
CREATE EXTENSION IF NOT EXISTS btree_gist;
CREATE TABLE "Rule" (
  "id" SERIAL NOT NULL,
  "part" TEXT NOT NULL,
  "built_in" daterange NOT NULL,
  CONSTRAINT "Rule_pkey" PRIMARY KEY ("id")
);
CREATE INDEX "Rule_built_in_idx" ON "Rule" USING GIST ("built_in");`;

/** What schema.prisma has no words for. */
const BY_HAND = `
ALTER TABLE "Rule" ADD CONSTRAINT rule_part_not_blank CHECK (btrim(part) <> '');
ALTER TABLE "Rule" ADD CONSTRAINT rule_no_overlap EXCLUDE USING gist (part WITH =, built_in WITH &&);
CREATE UNIQUE INDEX rule_open_ended ON "Rule" (part) WHERE upper_inf(built_in);
CREATE FUNCTION rule_keep() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'rules are never deleted; close them instead';
END;
$$;
CREATE TRIGGER rule_keep BEFORE DELETE ON "Rule" FOR EACH ROW EXECUTE FUNCTION rule_keep();`;

/** A prisma folder with that schema and those migrations. */
function prismaFolderWith(schema: string, migrations: Record<string, string>): string {
  const folder = folderInRun('prisma');
  writeFileSync(join(folder, 'schema.prisma'), schema);
  for (const [name, sql] of Object.entries(migrations)) {
    mkdirSync(join(folder, 'migrations', name), { recursive: true });
    writeFileSync(join(folder, 'migrations', name, 'migration.sql'), sql);
  }
  writeFileSync(join(folder, 'migrations', 'migration_lock.toml'), 'provider = "postgresql"\n');
  return folder;
}

const TIMEOUT_MS = 60_000;

describe('the migrations of the product', () => {
  const database = withDatabase({ empty: true });

  it(
    'lead exactly to schema.prisma',
    async () => {
      expect(await schemaDiff(database.url)).toBeUndefined();
    },
    TIMEOUT_MS,
  );

  it(
    'run once when two programs start at the same time on an empty database',
    async () => {
      const names = migrationList(prismaFolder()).migrationDirectories.map(({ path }) => path);

      const applied = await Promise.all([applyMigrations(database.url), applyMigrations(database.url)]);

      expect(applied.toSorted((a, b) => b.length - a.length)).toEqual([names, []]);
      const { rows } = await database.pool.query(
        'SELECT migration_name AS name FROM _prisma_migrations WHERE finished_at IS NOT NULL ORDER BY started_at',
      );
      expect(rows).toEqual(names.map((name) => ({ name })));
    },
    TIMEOUT_MS,
  );

  it('leave no database behind from comparing', async () => {
    const { rows } = await database.pool.query(`SELECT datname FROM pg_database WHERE datname LIKE 'prisma_migrate%'`);
    expect(rows).toEqual([]);
  });
});

describe('a migration', () => {
  const database = withDatabase({ empty: true });

  it(
    'may hold by hand what the schema cannot say, without a false difference',
    async () => {
      const folder = prismaFolderWith(SCHEMA, { '1_first': FIRST, '2_by_hand': BY_HAND });
      expect(await applyMigrations(database.url, folder)).toEqual(['1_first', '2_by_hand']);
      expect(await schemaDiff(database.url, folder)).toBeUndefined();
      await database.pool.query(`INSERT INTO "Rule" (part, built_in) VALUES ('A', '[2020-01-01,2021-01-01)')`);
      await expect(database.pool.query('DELETE FROM "Rule"')).rejects.toThrow('rules are never deleted');
      await expect(
        database.pool.query(`INSERT INTO "Rule" (part, built_in) VALUES ('A', '[2020-06-01,)')`),
      ).rejects.toThrow('rule_no_overlap');
    },
    TIMEOUT_MS,
  );

  it(
    'that is missing shows up as the SQL that is missing',
    async () => {
      const wider = SCHEMA.replace('part    String', 'part    String\n  note String?');
      const folder = prismaFolderWith(wider, { '1_first': FIRST });
      expect(await schemaDiff(database.url, folder)).toContain('ADD COLUMN     "note" TEXT');
    },
    TIMEOUT_MS,
  );
});

describe('a migration that fails', () => {
  const database = withDatabase({ empty: true });

  it(
    'is rolled back whole, says why, stops the ones after it, and is tried again when mended',
    async () => {
      const folder = prismaFolderWith(SCHEMA, {
        '1_first': FIRST,
        '2_wrong': 'CREATE TABLE half (); SELECT 1/0;',
        '3_later': 'CREATE TABLE later ();',
      });
      await expect(applyMigrations(database.url, folder)).rejects.toThrow(/division by zero/);
      await expect(applyMigrations(database.url, folder)).rejects.toThrow(/2_wrong/);
      expect(await tablesOf(database.pool)).toEqual(['Rule', '_prisma_migrations']);

      writeFileSync(join(folder, 'migrations', '2_wrong', 'migration.sql'), 'CREATE TABLE half ();');
      expect(await applyMigrations(database.url, folder)).toEqual(['2_wrong', '3_later']);
      expect(await tablesOf(database.pool)).toEqual(['Rule', '_prisma_migrations', 'half', 'later']);
    },
    TIMEOUT_MS,
  );
});

describe('a program killed while it migrates', () => {
  const database = withDatabase({ empty: true });
  const folder = (): string => prismaFolderWith(SCHEMA, { '1_first': FIRST, '2_next': 'CREATE TABLE next ();' });

  it(
    'in the middle of a migration has that one tried again',
    async () => {
      await applyMigrations(database.url, folder());
      // The state such a kill leaves: begun, not finished, and nothing of it there.
      await database.pool.query(
        `DROP TABLE next; UPDATE _prisma_migrations SET finished_at = NULL WHERE migration_name = '2_next'`,
      );
      expect(await applyMigrations(database.url, folder())).toEqual(['2_next']);
      expect(await tablesOf(database.pool)).toContain('next');
    },
    TIMEOUT_MS,
  );

  it('right after a migration has it noted as finished, because the note is part of it', async () => {
    await database.pool.query(
      `INSERT INTO _prisma_migrations (id, checksum, migration_name) VALUES ('3', 'unknown', '3_more')`,
    );
    await database.pool.query(wholeOrNotAtAll('CREATE TABLE more () -- and a remark at the end'));
    const { rows } = await database.pool.query(
      `SELECT finished_at IS NOT NULL AS finished FROM _prisma_migrations WHERE migration_name = '3_more'`,
    );
    expect(rows).toEqual([{ finished: true }]);
  });
});

const BESIDE = `-- outside a transaction
-- Parts are looked up while rules are written.
CREATE INDEX CONCURRENTLY "rule_by_part" ON "Rule" (part);
CREATE UNIQUE INDEX CONCURRENTLY rule_once ON "Rule" (part, built_in);
`;

describe('a migration that runs beside the work', () => {
  const database = withDatabase({ empty: true });
  const folder = (): string => prismaFolderWith(SCHEMA, { '1_first': FIRST, '2_beside': BESIDE });
  const indexes = async () =>
    (
      await database.pool.query<{ text: string }>(
        `SELECT c.relname || CASE WHEN i.indisvalid THEN '' ELSE ' (half made)' END AS text
         FROM pg_index i JOIN pg_class c ON c.oid = i.indexrelid WHERE c.relname LIKE 'rule_%' ORDER BY 1`,
      )
    ).rows.map(({ text }) => text);

  it(
    'is taken up where it broke off, and makes an index anew that was left half made',
    async () => {
      await applyMigrations(database.url, prismaFolderWith(SCHEMA, { '1_first': FIRST }));
      await database.pool.query(
        `INSERT INTO "Rule" (part, built_in) SELECT 'A', '[2020-01-01,2021-01-01)' FROM generate_series(1, 2)`,
      );
      await expect(applyMigrations(database.url, folder())).rejects.toThrow(/rule_once/);
      expect(await indexes()).toEqual(['rule_by_part', 'rule_once (half made)']);
      await database.pool.query(`DELETE FROM "Rule" WHERE id = 2`);
      expect(await applyMigrations(database.url, folder())).toEqual(['2_beside']);
      expect(await indexes()).toEqual(['rule_by_part', 'rule_once']);
    },
    TIMEOUT_MS,
  );

  it(
    'does not wait for ever when two programs start at once',
    async () => {
      await database.pool.query(
        `DROP INDEX rule_by_part, rule_once; DELETE FROM _prisma_migrations WHERE migration_name = '2_beside'`,
      );
      const applied = await Promise.all([
        applyMigrations(database.url, folder()),
        applyMigrations(database.url, folder()),
      ]);
      expect(applied.flat()).toEqual(['2_beside']);
      expect(await indexes()).toEqual(['rule_by_part', 'rule_once']);
    },
    TIMEOUT_MS,
  );

  it(
    'is refused when it holds anything that cannot be begun again',
    async () => {
      const wrong = prismaFolderWith(SCHEMA, {
        '1_first': FIRST,
        '3_wrong': '-- outside a transaction\nDROP TABLE "Rule";',
      });
      await expect(applyMigrations(database.url, wrong)).rejects.toThrow(/may hold only CREATE INDEX CONCURRENTLY/);
    },
    TIMEOUT_MS,
  );

  it('makes the same indexes inside of a restore', () => {
    expect(migrationScripts(folder()).at(-1)!.sql).toBe(
      'CREATE INDEX "rule_by_part" ON "Rule" (part);\nCREATE UNIQUE INDEX rule_once ON "Rule" (part, built_in);',
    );
  });
});

describe('a migration that meets the work of the shop', () => {
  const database = withDatabase({ empty: true });

  it(
    'lets it go first, and tries again',
    async () => {
      await applyMigrations(database.url, prismaFolderWith(SCHEMA, { '1_first': FIRST }));
      const worker = await database.pool.connect();
      await worker.query('BEGIN');
      await worker.query('SELECT * FROM "Rule"');
      const migrating = applyMigrations(
        database.url,
        prismaFolderWith(SCHEMA, { '1_first': FIRST, '2_note': 'ALTER TABLE "Rule" ADD COLUMN note TEXT' }),
      );
      // Gives up its place in the line once, with the worker still at it; then whoever came later is through.
      const steppedBack = `SELECT 1 FROM pg_stat_database WHERE datname = current_database() AND xact_rollback > $1`;
      const { rows } = await database.pool.query<{ n: string }>(
        'SELECT xact_rollback AS n FROM pg_stat_database WHERE datname = current_database()',
      );
      while (!(await database.pool.query(steppedBack, [rows[0]!.n])).rowCount)
        await new Promise((resolve) => setTimeout(resolve, 50));
      await database.pool.query('SELECT * FROM "Rule"');
      await worker.query('COMMIT');
      worker.release();
      expect(await migrating).toEqual(['2_note']);
    },
    TIMEOUT_MS,
  );
});

/** The names of all tables, in order. */
async function tablesOf(pool: SpecDatabase['pool']): Promise<readonly string[]> {
  const { rows } = await pool.query<{ name: string }>(
    `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY 1`,
  );
  return rows.map(({ name }) => name);
}
