import { Client, type ClientBase } from 'pg';
import { pieceName, writeArchive, type Put } from './archive';
import { BACKUP_VERSION, type Manifest, type TableOfBackup } from './manifest';
import { copyOut, speakPlainly, tablesOf, type TableShape } from './tables-of';

/** Bytes of rows that are gathered before they are written away. */
const PIECE_BYTES = 4_000_000;
const LINE_END = 10;

export type BackupResult =
  { readonly ok: true; readonly manifest: Manifest } | { readonly ok: false; readonly problem: string };

/**
 * Copies the whole shop, photos included, into one file, as it stood at one moment, while everybody goes on working. Asks
 * for the address of the owner of the tables: nobody else may read them all. The file is read again before
 * it gets its name, and what it holds compared with its checksums. Nothing is left behind when it fails.
 */
export async function makeBackup(ownerUrl: string, file: string): Promise<BackupResult> {
  const client = new Client({ connectionString: ownerUrl, application_name: 'revright backup' });
  client.on('error', () => undefined);
  await client.connect();
  try {
    const problem = await whyNot(client);
    if (problem !== null) return { ok: false, problem };
    await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    await speakPlainly(client);
    // Without it the walls between locations would show no row at all, and not say so.
    await client.query(`SELECT set_config('revright.sight', 'all', true)`);
    const manifest = await writeArchive(file, (put) => copyAll(client, put));
    await client.query('COMMIT');
    return { ok: true, manifest };
  } finally {
    await client.end();
  }
}

async function whyNot(client: ClientBase): Promise<string | null> {
  const { rows } = await client.query<{ made: boolean; owns: boolean; login: string }>(`
    SELECT to_regclass('public._prisma_migrations') IS NOT NULL AS made, current_user AS login,
           bool_and(pg_has_role(current_user, c.relowner, 'USAGE')) AS owns
    FROM pg_class c WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'`);
  const { made, owns, login } = rows[0]!;
  if (!made) return 'The database holds no shop yet; there is nothing to back up.';
  if (owns) return null;
  return `The login ${login} does not own the tables and may not copy them all; set MIGRATION_DATABASE_URL to the address of their owner.`;
}

async function copyAll(client: ClientBase, put: Put): Promise<Manifest> {
  const shapes = await tablesOf(client);
  const tables: TableOfBackup[] = [];
  for (const shape of shapes) tables.push(await copyTable(client, put, shape));
  return { ...(await stateOf(client)), tables };
}

/** A table goes into the archive in pieces of whole rows, so that no more than one of them is held. */
async function copyTable(client: ClientBase, put: Put, shape: TableShape): Promise<TableOfBackup> {
  let [held, bytesHeld, n] = [[] as Buffer[], 0, 0];
  const writeAway = async (content: Buffer): Promise<void> => {
    if (content.length > 0) await put(pieceName(shape.name, ++n), content);
  };
  const table = await copyOut(client, shape, async (bytes) => {
    held.push(bytes);
    bytesHeld += bytes.length;
    if (bytesHeld < PIECE_BYTES || !bytes.includes(LINE_END)) return;
    const all = Buffer.concat(held);
    const cut = all.lastIndexOf(LINE_END) + 1;
    [held, bytesHeld] = [[all.subarray(cut)], all.length - cut];
    await writeAway(all.subarray(0, cut));
  });
  await writeAway(Buffer.concat(held));
  return table;
}

interface State {
  takenAt: string;
  postgres: string;
  migrations: Manifest['migrations'];
  rulebookRevision: number | null;
  trailRows: number;
  trailHead: string | null;
}

async function stateOf(client: ClientBase): Promise<Omit<Manifest, 'tables'>> {
  const { rows } = await client.query<State>(`
    SELECT to_char(now() AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "takenAt",
      current_setting('server_version') AS postgres,
      (SELECT jsonb_agg(jsonb_build_object('name', m.migration_name, 'checksum', m.checksum) ORDER BY m.migration_name)
       FROM _prisma_migrations m WHERE m.finished_at IS NOT NULL AND m.rolled_back_at IS NULL) AS migrations,
      (SELECT max(id) FROM rulebook_revision) AS "rulebookRevision",
      (SELECT count(*)::int FROM audit_entry) AS "trailRows",
      (SELECT encode(row_hash, 'hex') FROM audit_entry ORDER BY id DESC LIMIT 1) AS "trailHead"`);
  const { trailRows, trailHead, ...more } = rows[0]!;
  // A sequence knows no snapshot: it may be ahead of the rows, never behind them.
  const { rows: sequences } = await client.query<{ name: string; last: string }>(
    `SELECT sequencename AS name, last_value::text AS last FROM pg_sequences
     WHERE schemaname = 'public' AND last_value IS NOT NULL ORDER BY 1`,
  );
  const trail = { rows: trailRows, head: trailHead };
  return { format: 'revright-backup', version: BACKUP_VERSION, ...more, trail, sequences };
}
