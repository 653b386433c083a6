import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Client, type Pool } from 'pg';
import { repoRoot } from '../../libs/config';
import { applyMigrations, withDatabaseName } from '../../libs/store/migrate';
import { folderInRun } from '../../libs/testing';

/**
 * The last migration of each version that shops may run on; a new version adds its own. Before the first version there are
 * two points: what stood when the first imports were kept, and when parts got their trade numbers.
 */
export const RELEASED = ['20261125124700_imports_are_kept_by_the_batch', '20261129083700_trade_numbers_of_parts'];

/** Changes of the kinds that a later version may bring to large tables, made as DEVELOPERS.md has it. */
const TO_COME: Readonly<Record<string, string>> = {
  '29990101000000_a_column': `ALTER TABLE ticket ADD COLUMN to_come INTEGER NOT NULL DEFAULT 0;`,
  '29990101000100_an_index': `-- outside a transaction
CREATE INDEX CONCURRENTLY audit_to_come ON audit_entry (noun, at);`,
  '29990101000200_a_constraint': `ALTER TABLE audit_entry ADD CONSTRAINT to_come CHECK (act <> '') NOT VALID;`,
  '29990101000300_validated': `ALTER TABLE audit_entry VALIDATE CONSTRAINT to_come;`,
  '29990101000400_a_long_one': `CREATE TABLE to_come AS SELECT noun, count(*) AS n FROM audit_entry, generate_series(1, 4) GROUP BY noun;
ALTER TABLE ticket ADD COLUMN to_come_too TEXT;`,
};

/** A folder with the migrations up to and with `last`; with all of them and the ones to come when it is null. */
export function migrationsUpTo(names: readonly string[], last: string | null): string {
  const folder = folderInRun('prisma');
  const from = join(repoRoot(), 'prisma', 'migrations');
  const to = join(folder, 'migrations');
  mkdirSync(to, { recursive: true });
  cpSync(join(from, 'migration_lock.toml'), join(to, 'migration_lock.toml'));
  for (const name of names)
    if (last === null || name <= last) cpSync(join(from, name), join(to, name), { recursive: true });
  if (last !== null) return folder;
  for (const [name, sql] of Object.entries(TO_COME)) {
    mkdirSync(join(to, name));
    writeFileSync(join(to, name, 'migration.sql'), `${sql}\n`);
  }
  return folder;
}

/** Makes a database of that name at an older state of its tables, with so many tickets and rows in the trail. */
export async function fillDatabase(
  pool: Pool,
  url: string,
  {
    name,
    folder,
    tickets,
    trail,
  }: { readonly name: string; readonly folder: string; readonly tickets: number; readonly trail: number },
): Promise<void> {
  await pool.query(`CREATE DATABASE ${name} TEMPLATE template0`);
  const own = withDatabaseName(url, name);
  await applyMigrations(own, folder);
  const client = new Client({ connectionString: own });
  await client.connect();
  // Rows as they lie, by nobody's hand: neither triggers nor keys are asked.
  await client.query(`SET session_replication_role = replica`);
  await client.query(`INSERT INTO location (id, code, name) VALUES (1, 'MAIN', 'Main shop')`);
  await client.query(
    `INSERT INTO owner (id, location_id, name, phone, consent) SELECT n, 1, 'Owner ' || n, '555 ' || n, TRUE FROM generate_series(1, $1::int) n`,
    [tickets],
  );
  await client.query(
    `INSERT INTO unit (id, owner_id, location_id, serial, serial_search, built, built_from, built_to)
     SELECT n, n, 1, 'S' || n, 'S' || n, '{[16000,16400)}', 16000, 16400 FROM generate_series(1, $1::int) n`,
    [tickets],
  );
  await client.query(
    `INSERT INTO ticket (id, number, location_id, unit_id, owner_id, complaint)
     SELECT n, 'T-' || n, 1, n, n, 'Does not start' FROM generate_series(1, $1::int) n`,
    [tickets],
  );
  await client.query(
    `INSERT INTO audit_entry (id, at, act, noun, row_key, unit_id, change, prev_hash, row_hash)
     SELECT n, now() - make_interval(secs => $1::int - n), 'changed', (ARRAY['ticket', 'unit', 'owner'])[1 + n % 3], n::text,
            1 + n % $2::int, jsonb_build_object('complaint', jsonb_build_array('before ' || n, 'after ' || n)), '\\x00', '\\x00'
     FROM generate_series(1, $1::int) n`,
    [trail, tickets],
  );
  for (const table of ['owner', 'unit', 'ticket'])
    await client.query(`SELECT setval(pg_get_serial_sequence($1, 'id'), $2::int)`, [table, tickets]);
  await client.query('ANALYZE');
  await client.end();
}
