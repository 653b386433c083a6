import { pipeline } from 'node:stream/promises';
import { Client, type ClientBase } from 'pg';
import { from } from 'pg-copy-streams';
import { verifyTrail } from '../audit/verify-trail';
import { APP_ROLE } from '../audit/work-as-app';
import { takeSessionLock } from '../migrate/advisory-lock';
import { MIGRATION_LOCK } from '../migrate/apply-migrations';
import { migrationScripts, TABLE_OF_MIGRATIONS, type MigrationScript } from '../migrate/migration-scripts';
import { ArchiveRefused, checkArchive, eachPiece } from './archive';
import { beginAnew } from './begin-anew';
import type { Manifest } from './manifest';
import { copyOut, quoted, speakPlainly, tablesOf, type TableShape } from './tables-of';

export type RestoreResult =
  { readonly ok: true; readonly manifest: Manifest } | { readonly ok: false; readonly problem: string };

/**
 * Puts a backup into an empty database, as its owner: the tables as the backup's migrations made them, every row, every
 * sequence. All of it is one transaction, which is kept only when the rows are the same as in the backup by their
 * checksums, the trail of changes is whole and the walls between locations stand. The caller then migrates it
 * (`prepareDatabase`). An expected refusal is answered as a sentence, and the database is as it was.
 */
export async function restoreBackup(ownerUrl: string, file: string): Promise<RestoreResult> {
  try {
    const manifest = await checkArchive(file);
    const scripts = scriptsFor(manifest, migrationScripts());
    await withOwner(ownerUrl, async (client) => {
      await refuseUnlessEmpty(client);
      await client.query('BEGIN');
      await speakPlainly(client);
      await load(client, file, manifest, scripts);
      await client.query('COMMIT');
      // The planner knows nothing of the new tables yet.
      await client.query('ANALYZE');
    });
    return { ok: true, manifest };
  } catch (error) {
    if (error instanceof ArchiveRefused || error instanceof RestoreRefused)
      return { ok: false, problem: error.message };
    throw error;
  }
}

/** Why a backup was not put in, in one sentence. */
class RestoreRefused extends Error {}

/** The session's end takes back what was begun and not ended. */
async function withOwner(ownerUrl: string, work: (client: Client) => Promise<void>): Promise<void> {
  const client = new Client({ connectionString: ownerUrl, application_name: 'revright restore' });
  client.on('error', () => undefined);
  await client.connect();
  try {
    // So that no program that starts meanwhile migrates the same database.
    await takeSessionLock(client, MIGRATION_LOCK);
    await work(client);
  } finally {
    await client.end();
  }
}

async function refuseUnlessEmpty(client: ClientBase): Promise<void> {
  const { rows } = await client.query<{ name: string }>(
    `SELECT relname AS name FROM pg_class WHERE relnamespace = 'public'::regnamespace AND relkind IN ('r', 'p', 'v', 'm', 'S')
     ORDER BY relkind = 'r' DESC, relname LIMIT 1`,
  );
  if (rows.length === 0) return;
  throw new RestoreRefused(
    `A backup goes into an empty database only, and this one holds the table ${rows[0]!.name}; make a new one, or name another folder with REVRIGHT_DATA.`,
  );
}

/** The migrations the backup's tables were made by. A backup that knows one which this program does not is newer. */
function scriptsFor(manifest: Manifest, known: readonly MigrationScript[]): readonly MigrationScript[] {
  const byName = new Map(known.map((script) => [script.name, script]));
  return manifest.migrations.map(({ name, checksum }) => {
    const script = byName.get(name);
    if (!script)
      throw new RestoreRefused(
        `The backup was made by a newer Revright: this one does not know its migration ${name}.`,
      );
    if (script.checksum !== checksum)
      throw new RestoreRefused(
        `The backup was made by another Revright: its migration ${name} is not the one known here.`,
      );
    return script;
  });
}

async function load(
  client: ClientBase,
  file: string,
  manifest: Manifest,
  scripts: readonly MigrationScript[],
): Promise<void> {
  await client.query(TABLE_OF_MIGRATIONS);
  await client.query(`SELECT set_config('revright.loading', 'on', true)`);
  for (const { sql } of scripts) await client.query(sql);
  // A migration may have set the eyes of this transaction to its own needs.
  await client.query(`SELECT set_config('revright.sight', 'all', true), set_config('search_path', 'public', true)`);
  const shapes = await shapesFor(client, manifest);
  const walls = await wallsOf(client);
  await bare(client, shapes, walls);
  await copyIn(client, file, shapes);
  await setSequences(client, manifest);
  await sameAsBackup(client, manifest, shapes);
  await dress(client, shapes, walls);
  await trailIsWhole(client, manifest);
  await wallsStand(client, walls);
  await client.query(`SELECT set_config('revright.loading', '', true)`);
  await beginAnew(client, manifest);
}

async function shapesFor(client: ClientBase, manifest: Manifest): Promise<readonly TableShape[]> {
  const shapes = await tablesOf(client);
  const said = (tables: readonly { name: string; columns: readonly string[] }[]) =>
    tables.map(({ name, columns }) => `${name} (${columns.join(', ')})`).toSorted();
  const [made, wanted] = [said(shapes), said(manifest.tables)];
  const odd = wanted.find((table) => !made.includes(table)) ?? made.find((table) => !wanted.includes(table));
  if (odd !== undefined) throw new RestoreRefused(`The backup's migrations do not make the tables it holds: ${odd}.`);
  return shapes;
}

/** A table behind a wall, and whether the wall is one for its owner too. */
interface Wall {
  readonly name: string;
  readonly forced: boolean;
}

async function wallsOf(client: ClientBase): Promise<readonly Wall[]> {
  const { rows } = await client.query<Wall>(
    `SELECT relname AS name, relforcerowsecurity AS forced FROM pg_class
     WHERE relnamespace = 'public'::regnamespace AND relkind = 'r' AND relrowsecurity ORDER BY relname`,
  );
  return rows;
}

/**
 * Rows go in as they are: the triggers that would add to the trail or to the sums of the shelf have done so already, when
 * the rows were new. PostgreSQL copies nothing through a wall, not even for its owner. All of it is seen by this
 * transaction alone, and undone before its end.
 */
async function bare(client: ClientBase, shapes: readonly TableShape[], walls: readonly Wall[]): Promise<void> {
  for (const { name } of shapes) await client.query(`ALTER TABLE ${quoted(name)} DISABLE TRIGGER USER`);
  for (const { name, forced } of walls)
    if (forced) await client.query(`ALTER TABLE ${quoted(name)} NO FORCE ROW LEVEL SECURITY`);
  // What the migrations put into the new tables is in the backup too, as it became.
  await client.query(`TRUNCATE ${shapes.map(({ name }) => quoted(name)).join(', ')}`);
}

async function dress(client: ClientBase, shapes: readonly TableShape[], walls: readonly Wall[]): Promise<void> {
  for (const { name } of shapes) await client.query(`ALTER TABLE ${quoted(name)} ENABLE TRIGGER USER`);
  for (const { name, forced } of walls)
    if (forced) await client.query(`ALTER TABLE ${quoted(name)} FORCE ROW LEVEL SECURITY`);
}

async function copyIn(client: ClientBase, file: string, shapes: readonly TableShape[]): Promise<void> {
  const lists = new Map(shapes.map(({ name, columns }) => [name, columns.map(quoted).join(', ')]));
  await eachPiece(file, async (table, piece) => {
    await pipeline(piece, client.query(from(`COPY ${quoted(table)} (${lists.get(table)}) FROM STDIN`)));
  });
}

async function setSequences(client: ClientBase, { sequences }: Manifest): Promise<void> {
  await client.query(`SELECT setval(s.name::regclass, s.last) FROM unnest($1::text[], $2::bigint[]) AS s(name, last)`, [
    sequences.map(({ name }) => quoted(name)),
    sequences.map(({ last }) => last),
  ]);
}

async function sameAsBackup(client: ClientBase, { tables }: Manifest, shapes: readonly TableShape[]): Promise<void> {
  const wanted = new Map(tables.map((table) => [table.name, table]));
  for (const shape of shapes) {
    const [is, was] = [await copyOut(client, shape), wanted.get(shape.name)!];
    if (is.rows !== was.rows || is.sha256 !== was.sha256)
      throw new RestoreRefused(
        `The table ${shape.name} came out as ${is.rows} rows that are not the ${was.rows} of the backup.`,
      );
  }
}

async function trailIsWhole(client: ClientBase, { trail }: Manifest): Promise<void> {
  const { rows, head, fault } = await verifyTrail(client);
  if (fault)
    throw new RestoreRefused(`Row ${fault.id} of the trail in the backup is not as it was written: ${fault.why}.`);
  if (rows !== trail.rows || (trail.head !== null && head !== trail.head))
    throw new RestoreRefused(`The trail came out with ${rows} rows, but the backup has ${trail.rows}.`);
}

/** Who looks with nobody's eyes sees nothing: neither the owner, nor the role of the programs. */
async function wallsStand(client: ClientBase, walls: readonly Wall[]): Promise<void> {
  const { rows } = await client.query<{ open: string[] | null }>(
    `SELECT array_agg(c.relname::text) AS open FROM pg_class c JOIN unnest($1::text[], $2::bool[]) AS w(name, forced)
       ON c.relname = w.name AND c.relnamespace = 'public'::regnamespace
     WHERE NOT c.relrowsecurity OR c.relforcerowsecurity <> w.forced
        OR NOT EXISTS (SELECT FROM pg_policy p WHERE p.polrelid = c.oid)`,
    [walls.map(({ name }) => name), walls.map(({ forced }) => forced)],
  );
  const { open } = rows[0]!;
  if (open) throw new RestoreRefused(`The wall between locations does not stand around ${open.join(', ')}.`);
  await client.query('SAVEPOINT looked');
  await client.query(`SELECT set_config('revright.sight', '', true)`);
  await client.query(
    `SELECT set_config('role', rolname, true) FROM pg_roles WHERE rolname = $1 AND pg_has_role(oid, 'MEMBER')`,
    [APP_ROLE],
  );
  const { rows: role } = await client.query<{ name: string; above: boolean }>(
    `SELECT current_user AS name, rolsuper OR rolbypassrls AS above FROM pg_roles WHERE rolname = current_user`,
  );
  // A superuser stands above every wall, and tells nothing about it.
  if (!role[0]!.above)
    for (const { name, forced } of walls) {
      if (!forced && role[0]!.name !== APP_ROLE) continue;
      const { rowCount } = await client.query(`SELECT 1 FROM ${quoted(name)} LIMIT 1`);
      if (rowCount) throw new RestoreRefused(`The wall between locations lets rows of ${name} through.`);
    }
  await client.query('ROLLBACK TO SAVEPOINT looked');
}
