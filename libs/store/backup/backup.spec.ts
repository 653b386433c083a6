import { cpSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { Client, Pool } from 'pg';
import { day } from '../../day';
import { makeDemoShop } from '../../demo';
import { folderInRun, openDatabase, withDatabase, type OpenDatabase } from '../../testing';
import { verifyTrail } from '../audit/verify-trail';
import { applyMigrations } from '../migrate/apply-migrations';
import { prismaFolder } from '../migrate/migration-list';
import { schemaDiff } from '../migrate/schema-diff';
import { withDatabaseName } from '../migrate';
import { openStore } from '../open-store';
import { seedIfEmpty } from '../seed';
import { pieceName, writeArchive } from './archive';
import { makeBackup, restoreBackup } from './index';

jest.setTimeout(120_000);

const folder = folderInRun('backup');
const fileOf = (name: string): string => join(folder, `${name}.tar.gz`);

/** A hash of every row of every table, made by the database itself and by none of the code under test. */
async function picture(pool: Pool): Promise<Record<string, string>> {
  const client = await pool.connect();
  try {
    await client.query(`SELECT set_config('revright.sight', 'all', false)`);
    const { rows: tables } = await client.query<{ name: string }>(
      `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY 1`,
    );
    const all: Record<string, string> = {};
    for (const { name } of tables) {
      const { rows } = await client.query<{ text: string }>(
        `SELECT count(*) || ' ' || coalesce(md5(string_agg(h, '' ORDER BY h)), '') AS text FROM (SELECT md5(t::text) AS h FROM "${name}" t) x`,
      );
      all[name] = rows[0]!.text;
    }
    return all;
  } finally {
    client.release(true);
  }
}

/** What a restore changes by intent. */
const ANEW = [
  'audit_entry',
  'session',
  'sign_in_step',
  'invitation',
  'api_token',
  'webhook',
  'webhook_delivery',
].concat(['outbox', 'recheck_chunk', 'callback_mail']);
const untouched = (all: Record<string, string>) =>
  Object.fromEntries(Object.entries(all).filter(([name]) => !ANEW.includes(name)));

async function intoEmpty<T>(work: (empty: OpenDatabase) => Promise<T>): Promise<T> {
  const empty = await openDatabase({ empty: true });
  try {
    return await work(empty);
  } finally {
    await empty.close();
  }
}

const tablesIn = async (pool: Pool): Promise<number> =>
  (await pool.query(`SELECT 1 FROM pg_class WHERE relnamespace = 'public'::regnamespace`)).rowCount!;

/** Each column that draws from a sequence, with the sequence's last number and the highest in the column. */
const SEQUENCES = `
  SELECT c.relname AS name, s.last_value::int AS last,
    (xpath('//m/text()', query_to_xml(format('SELECT max(%I) AS m FROM %I', a.attname, c.relname), false, true, '')))[1]::text::int AS highest
  FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
  JOIN pg_sequences s ON format('%I.%I', s.schemaname, s.sequencename) = pg_get_serial_sequence(format('%I', c.relname), a.attname)
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'`;

const GUARDS = `
  SELECT c.relname, c.relrowsecurity, c.relforcerowsecurity, c.relacl::text,
         array_agg(t.tgname || ' ' || t.tgenabled::text ORDER BY t.tgname) AS triggers
  FROM pg_class c LEFT JOIN pg_trigger t ON t.tgrelid = c.oid AND NOT t.tgisinternal
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'S') GROUP BY c.oid ORDER BY 1`;

describe('a shop, backed up and put back', () => {
  const database = withDatabase();
  let before: Record<string, string>;

  beforeAll(async () => {
    const store = openStore({ url: database.url, poolSize: 2 });
    await seedIfEmpty(store, () => makeDemoShop(1, day('2026-11-20')));
    await store.close();
    await database.pool.query(`
      INSERT INTO session (token_hash, person_id, expires_at) VALUES ('a', (SELECT min(id) FROM person), now() + interval '1 hour');
      INSERT INTO outbox (topic, payload, leased_until) VALUES ('recheck', '{"recheckId": 1}', now() + interval '1 day');
      WITH p AS (INSERT INTO photo (name, ticket_id, stage, width, height, sha256, sent_sha256)
                 SELECT 'a.jpg', min(id), 'intake', 2, 3, 'x', 'y' FROM ticket RETURNING id)
      INSERT INTO photo_file (photo_id, size, data) SELECT id, 'full', decode(repeat('00ff0a5c', 600000), 'hex') FROM p;
      UPDATE owner SET name = E'tab\\tline\\nback\\\\slash \\\\N end' WHERE id = (SELECT max(id) FROM owner);
      INSERT INTO callback (unit_id, owner_id) SELECT u.id, u.owner_id FROM unit u
        WHERE NOT EXISTS (SELECT FROM callback c WHERE c.unit_id = u.id) ORDER BY u.id LIMIT 1;
      INSERT INTO callback_mail (callback_id, wording, recipient, subject, text, html, state)
        SELECT max(c.id), s, 'a@example.org', 'b', 'c', 'd', s FROM callback c, unnest('{queued,sending,sent}'::text[]) s GROUP BY s;
      INSERT INTO api_token (name, prefix, token_hash, scopes, person_id, expires_at)
        SELECT 'till', 'rv', 'hash', '{look-up}', min(id), now() + interval '1 year' FROM person;
      INSERT INTO webhook (url, events, sealed) VALUES ('https://receiver.example/', '{}', '');
      INSERT INTO webhook_event (type, data) VALUES ('trial', '{}');
      INSERT INTO webhook_delivery (webhook_id, event_id) SELECT h.id, e.id FROM webhook h, webhook_event e;`);
    before = await picture(database.pool);
    expect(await makeBackup(database.url, fileOf('shop'))).toMatchObject({ ok: true });
  });

  it('is one file that nobody else may read, with nothing left beside it', () => {
    expect(statSync(fileOf('shop')).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder)).toEqual(['shop.tar.gz']);
  });

  describe('put into an empty database', () => {
    const restored = withDatabase({ empty: true });
    let after: Record<string, string>;

    beforeAll(async () => {
      expect(await restoreBackup(restored.url, fileOf('shop'))).toMatchObject({ ok: true });
      after = await picture(restored.pool);
    });

    it('is the same row for row, with its trail whole, and goes on from there', async () => {
      expect(untouched(after)).toEqual(untouched(before));
      expect(await applyMigrations(restored.url)).toEqual([]);
      const { rows } = await restored.pool.query<{ name: string; last: number; highest: number }>(SEQUENCES);
      expect(rows.length).toBeGreaterThan(20);
      expect(rows.filter(({ last, highest }) => last < highest)).toEqual([]);
      await restored.pool.query(
        `INSERT INTO owner (location_id, name, phone, consent) SELECT min(id), 'New', '555 0199', false FROM location`,
      );
      expect((await verifyTrail(restored.pool)).fault).toBeNull();
    });

    it('lets no letter go a second time, nobody in with an old sign-in, and holds no work back', async () => {
      const { rows } = await restored.pool.query(`
        SELECT (SELECT array_agg(wording || ' ' || state ORDER BY wording) FROM callback_mail) AS mails,
               (SELECT count(*)::int FROM session) AS sessions,
               (SELECT count(*)::int FROM outbox WHERE leased_until IS NOT NULL AND dispatched_at IS NULL) AS held,
               (SELECT count(*)::int FROM audit_entry WHERE act = 'restored') AS said`);
      const mails = ['queued unclear', 'sending unclear', 'sent sent'];
      expect(rows[0]).toEqual({ mails, sessions: 0, held: 0, said: 1 });
    });

    it('opens to no token of before, posts no event by itself, and gives none an id that was seen', async () => {
      const { rows } = await restored.pool.query(`
        SELECT (SELECT count(*)::int FROM api_token WHERE revoked_at IS NULL) AS tokens,
               (SELECT count(*)::int FROM webhook WHERE active) AS active,
               (SELECT array_agg(state) FROM webhook_delivery) AS deliveries,
               nextval('webhook_event_id_seq') > 100000000 AS far`);
      expect(rows[0]).toEqual({ tokens: 0, active: 0, deliveries: ['set-aside'], far: true });
    });

    it('has triggers, walls and grants as they were', async () => {
      const [is, was] = [await restored.pool.query(GUARDS), await database.pool.query(GUARDS)];
      expect(is.rows).toEqual(was.rows);
    });
  });

  it('travels by an owner who is no superuser too, who stands behind the walls himself', async () => {
    const [login, name] = ['keeper_of_backups', 'spec_of_keeper'];
    await database.pool.query(`CREATE ROLE ${login} LOGIN PASSWORD 'only-for-tests'`);
    await database.pool.query(`CREATE DATABASE ${name} OWNER ${login} TEMPLATE template0`);
    const url = new URL(withDatabaseName(database.url, name));
    [url.username, url.password] = [login, 'only-for-tests'];
    const pool = new Pool({ connectionString: url.href, max: 1 });
    try {
      expect(await restoreBackup(url.href, fileOf('shop'))).toMatchObject({ ok: true });
      expect((await pool.query('SELECT 1 FROM owner')).rowCount).toBe(0);
      expect(untouched(await picture(pool))).toEqual(untouched(before));
      const again = await makeBackup(url.href, fileOf('again'));
      const rowsOf = (table: string) => again.ok && again.manifest.tables.find((one) => one.name === table)!.rows;
      expect(rowsOf('unit')).toBe(Number(before['unit']!.split(' ')[0]));
    } finally {
      await pool.end();
      await database.pool.query(`DROP DATABASE ${name} WITH (FORCE)`);
      await database.pool.query(`DROP ROLE ${login}`);
    }
  });

  it('is refused where anything is already, and nothing is changed', async () => {
    expect(await restoreBackup(database.url, fileOf('shop'))).toEqual({
      ok: false,
      problem: expect.stringMatching(
        /^A backup goes into an empty database only, and this one holds the table /,
      ) as string,
    });
    expect(await picture(database.pool)).toEqual(before);
  });

  it('leaves nothing under its name, nor beside it, when it reads otherwise than it was written', async () => {
    const file = fileOf('written-wrong');
    const [sha256, none] = ['0'.repeat(64), { rows: 0, head: null }];
    const unit = { name: 'unit', columns: ['id'], rows: 1, sha256 };
    const wrong = {
      format: 'revright-backup',
      version: 1,
      takenAt: '2026-11-20T00:00:00.000Z',
      postgres: '18',
    } as const;
    const written = writeArchive(file, async (put) => {
      await put(pieceName('unit', 1), Buffer.from('1\n'));
      const migrations = [{ name: 'first', checksum: sha256 }];
      return { ...wrong, migrations, rulebookRevision: null, trail: none, tables: [unit], sequences: [] };
    });
    await expect(written).rejects.toThrow('is damaged: its table unit is not as it was written');
    expect(readdirSync(folder).filter((name) => name.startsWith('written-wrong'))).toEqual([]);
  });

  it('is refused when a byte of it is another, before anything is touched', async () => {
    const whole = readFileSync(fileOf('shop'));
    const text = gunzipSync(whole);
    const at = text.indexOf('tables/owner/000001.copy') + 512;
    const changed = Buffer.from(text);
    changed[at + 40]! ^= 1;
    const bad: Record<string, Buffer> = {
      'changed inside': gzipSync(changed, { level: 1 }),
      'broken packing': Buffer.concat([whole.subarray(0, 5_000), Buffer.alloc(50, 7), whole.subarray(5_050)]),
      'something else': Buffer.from('a letter'),
      'with another manifest': gzipSync(
        Buffer.from(text.toString('latin1').replace('"rulebookRevision"', '"rulebookRevisiom"'), 'latin1'),
        { level: 1 },
      ),
    };
    await intoEmpty(async ({ url, pool }) => {
      for (const [name, bytes] of Object.entries(bad)) {
        writeFileSync(fileOf(name), bytes);
        const result = await restoreBackup(url, fileOf(name));
        expect({ name, ...result }).toMatchObject({
          ok: false,
          problem: expect.stringMatching(/damaged|no backup|no whole backup/) as string,
        });
      }
      expect(await restoreBackup(url, fileOf('nowhere'))).toMatchObject({
        ok: false,
        problem: expect.stringMatching(/^There is no file/) as string,
      });
      expect(await tablesIn(pool)).toBe(0);
    });
  });

  it('is refused wherever it was cut short, in one sentence and before anything is touched', async () => {
    const whole = readFileSync(fileOf('shop'));
    const lengths = [
      0,
      1,
      9,
      10,
      600,
      ...Array.from({ length: 12 }, (_, n) => Math.floor((whole.length * n) / 12)).slice(1),
    ];
    await intoEmpty(async ({ url, pool }) => {
      for (const length of [...lengths, whole.length - 9, whole.length - 1]) {
        writeFileSync(fileOf('cut'), whole.subarray(0, length));
        expect({ length, ...(await restoreBackup(url, fileOf('cut'))) }).toEqual({
          length,
          ok: false,
          problem: `${fileOf('cut')} is cut short: it ends before the backup does; take another, or copy it anew.`,
        });
      }
      expect(await tablesIn(pool)).toBe(0);
    });
  });

  it('shows the programs alone nothing to copy, and says who may', async () => {
    await database.pool.query(`ALTER ROLE revright_app LOGIN PASSWORD 'only-for-tests'`);
    const url = new URL(database.url);
    [url.username, url.password] = ['revright_app', 'only-for-tests'];
    expect(await makeBackup(url.href, fileOf('app'))).toMatchObject({
      ok: false,
      problem: expect.stringContaining('MIGRATION_DATABASE_URL') as string,
    });
    expect(existsSync(fileOf('app'))).toBe(false);
  });
});

describe('a backup of an older schema', () => {
  it('is put back as it was made and then migrated, and one of a newer schema is refused', async () => {
    const older = folderInRun('older-prisma');
    cpSync(prismaFolder(), older, { recursive: true });
    const names = readdirSync(join(older, 'migrations'))
      .filter((name) => /^\d/.test(name))
      .sort();
    const later = names.slice(-2);
    for (const name of later) rmSync(join(older, 'migrations', name), { recursive: true });
    await intoEmpty(async ({ url, pool }) => {
      await applyMigrations(url, older);
      await pool.query(`INSERT INTO location (code, name) VALUES ('MAIN', 'Main shop')`);
      await makeBackup(url, fileOf('older'));
      await pool.query(`
        INSERT INTO _prisma_migrations (id, checksum, finished_at, migration_name)
        VALUES ('new', repeat('a', 64), now(), '29990101000000_later')`);
      await makeBackup(url, fileOf('newer'));
    });
    await intoEmpty(async ({ url, pool }) => {
      expect(await restoreBackup(url, fileOf('newer'))).toEqual({
        ok: false,
        problem: 'The backup was made by a newer Revright: this one does not know its migration 29990101000000_later.',
      });
      expect(await tablesIn(pool)).toBe(0);
      expect(await restoreBackup(url, fileOf('older'))).toMatchObject({ ok: true });
      expect(await applyMigrations(url)).toEqual(later);
      expect(await schemaDiff(url)).toBeUndefined();
      expect((await pool.query('SELECT name FROM location')).rows).toEqual([{ name: 'Main shop' }]);
    });
  });
});

describe('a backup taken while the shop works', () => {
  const database = withDatabase();

  it('holds one moment: the sums of the shelf are those of its movements', async () => {
    await database.pool.query(`
      INSERT INTO location (code, name) VALUES ('MAIN', 'Main shop');
      INSERT INTO maker (code, name, number_rules) VALUES ('HOLM', 'Holmgard', '{}');
      INSERT INTO part (key, maker_id, number, canonical, name) SELECT 'HOLM/' || n, 1, n, n, 'Pin' FROM generate_series(1, 40) n;
      INSERT INTO shelf_item (location_id, part_id) SELECT 1, id FROM part`);
    let working = true;
    let written = 0;
    const writer = (async () => {
      const client = new Client({ connectionString: database.url });
      await client.connect();
      for (; working; written++)
        await client.query(
          `INSERT INTO shelf_movement (item_id, location_id, kind, pieces, reason) SELECT id, 1, 'receive', 3, 'in' FROM shelf_item`,
        );
      await client.end();
    })();
    while (written < 3) await new Promise((resolve) => setTimeout(resolve, 10));
    const first = written;
    const made = await makeBackup(database.url, fileOf('working'));
    working = false;
    await writer;
    expect(written).toBeGreaterThan(first);
    expect(made.ok).toBe(true);
    await intoEmpty(async ({ url, pool }) => {
      expect(await restoreBackup(url, fileOf('working'))).toMatchObject({ ok: true });
      const { rows } = await pool.query<{ moved: number; unlike: number }>(`
        SELECT count(*)::int AS unlike, (SELECT count(*)::int FROM shelf_movement) AS moved
        FROM shelf_item i WHERE on_hand <> (SELECT sum(pieces) FROM shelf_movement m WHERE m.item_id = i.id)`);
      expect(rows[0]!.unlike).toBe(0);
      expect(rows[0]!.moved).toBeGreaterThan(0);
      expect(rows[0]!.moved % 40).toBe(0);
    });
  });
});
