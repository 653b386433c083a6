import { Pool, type PoolClient } from 'pg';
import { openStore, type OpenStore } from '../../libs/store';
import { letAppIn, prepareDatabase } from '../../libs/store/migrate';
import { actingAs, asProgram, type Sight } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { ApiShop } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
/** The programs' own login, as a forged statement would use it. */
let app: Pool;
let appUrl: string;
let store: OpenStore;

const MAIN = 1;
const FAR = 2;
const WALLED = [
  ...['owner', 'unit', 'install', 'ticket', 'flag', 'callback', 'evidence', 'unit_note', 'place_record', 'pick'],
  ...['ticket_event', 'verdict_change', 'callback_reason', 'callback_attempt', 'callback_mail'],
  ...['shelf_item', 'shelf_movement', 'shelf_order', 'shelf_pull', 'part_wait', 'estimate'],
  ...['photo', 'photo_file'],
];

/** Statements in one transaction that looks with those eyes; nothing of it stays. */
async function looking<T>(sight: Sight | null, look: (client: PoolClient) => Promise<T>): Promise<T> {
  const client = await app.connect();
  try {
    await client.query('BEGIN');
    if (sight !== null) await client.query(`SELECT set_config('revright.sight', $1, true)`, [String(sight)]);
    return await look(client);
  } finally {
    await client.query('ROLLBACK');
    client.release();
  }
}

const countOf = async (client: PoolClient, table: string): Promise<number> =>
  (await client.query<{ n: number }>(`SELECT count(*)::int AS n FROM ${table}`)).rows[0]!.n;

/** One row of every kind that stands behind the wall, of the far location and of the main one. */
async function oneOfEverything(location: number): Promise<void> {
  const one = async (sql: string, values: unknown[]) =>
    (await db.pool.query<{ id: number }>(`${sql} RETURNING id`, values)).rows[0]!.id;
  const owner = await one(`INSERT INTO owner (location_id, name, phone) VALUES ($1, 'Signe Dahl', '555 7701')`, [
    location,
  ]);
  const unit = await one(
    `INSERT INTO unit (owner_id, line_id, model_id, serial, serial_search, built, built_from, built_to)
     VALUES ($1, 1, 1, '1701' || $2::int, '1701' || $2::int, '{}', 0, 0)`,
    [owner, location],
  );
  const ticket = await one(
    `INSERT INTO ticket (number, location_id, unit_id, owner_id) VALUES ('26-90' || $1::int, $1, $2, $3)`,
    [location, unit, owner],
  );
  const callback = await one('INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2)', [unit, owner]);
  await db.pool.query(`
    INSERT INTO install (unit_id, position_id, place, record_id, ticket_id, line_id, part_id, built_from, built_to)
      VALUES (${unit}, 1, 1, 0, ${ticket}, 1, 1, 0, 0);
    INSERT INTO flag (ticket_id, unit_id, position_id, place, verdict, severity, reason)
      VALUES (${ticket}, ${unit}, 1, 1, 'wrong', 3, '{}');
    INSERT INTO evidence (unit_id, kind, data) VALUES (${unit}, 'first-seen', '{}');
    INSERT INTO unit_note (unit_id, source_id, position_id, place, detail) SELECT ${unit}, id, 1, 1, '{}' FROM source LIMIT 1;
    INSERT INTO place_record (ticket_id, unit_id, position_id, place, side, part_id) VALUES (${ticket}, ${unit}, 1, 1, 'found', 1);
    INSERT INTO pick (ticket_id, part_id, quantity, purpose) VALUES (${ticket}, 1, 1, 'fit');
    INSERT INTO ticket_event (ticket_id, kind) VALUES (${ticket}, 'opened');
    INSERT INTO verdict_change (unit_id, position_id, place, ticket_id, to_verdict, revision) VALUES (${unit}, 1, 1, ${ticket}, 'wrong', 1);
    INSERT INTO callback_reason (callback_id, source_id, position_id, place, verdict, action, detail)
      SELECT ${callback}, id, 1, 1, 'wrong', 'call-back', '{}' FROM source LIMIT 1;
    INSERT INTO callback_attempt (callback_id, how, outcome) VALUES (${callback}, 'phone', 'no-answer');
    INSERT INTO callback_mail (callback_id, wording, recipient, subject, text, html) VALUES (${callback}, 'w', 'a@b.example', 's', 't', 'h');
    INSERT INTO shelf_item (location_id, part_id) VALUES (${location}, 1);
    INSERT INTO shelf_movement (item_id, location_id, kind, pieces)
      SELECT id, location_id, 'opening', 3 FROM shelf_item WHERE location_id = ${location};
    INSERT INTO shelf_order (item_id, location_id, pieces)
      SELECT id, location_id, 5 FROM shelf_item WHERE location_id = ${location};
    INSERT INTO photo (name, ticket_id, stage, width, height, sha256, sent_sha256) VALUES ('p${ticket}', ${ticket}, 'intake', 1, 1, '', '');
    INSERT INTO photo_file (photo_id, size, data) SELECT id, 'full', '' FROM photo WHERE ticket_id = ${ticket};
    INSERT INTO estimate (ticket_id, revision, lines, currency, tax_name, tax_basis_points, tax_included, net_minor, tax_minor, total_minor)
      VALUES (${ticket}, 1, '[]', 'EUR', 'VAT', 0, true, 0, 0, 0);
    INSERT INTO part_wait (ticket_id, location_id, part_id, pieces) VALUES (${ticket}, ${location}, 1, 1);
    INSERT INTO part_notice (source_id, part_id, kind, still_good, sentences)
      SELECT id, 1, 'barred', FALSE, '{}' FROM source LIMIT 1 ON CONFLICT DO NOTHING;
    INSERT INTO shelf_pull (notice_id, item_id, location_id, pieces, bin)
      SELECT n.id, i.id, i.location_id, 3, 'A1' FROM part_notice n, shelf_item i WHERE i.location_id = ${location};
  `);
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  const address = new URL(db.url);
  [address.username, address.password] = ['revright_app', 'a password of its own / with signs'];
  appUrl = address.toString();
  await letAppIn(db.url, appUrl);
  app = new Pool({ connectionString: appUrl, max: 2 });
  store = openStore({ url: appUrl, poolSize: 2 });
  db.beforeClose(() => Promise.all([app.end(), store.close()]));
  await oneOfEverything(MAIN);
  await oneOfEverything(FAR);
}, 300_000);

describe('the wall between locations, asked past every program', () => {
  it('shows of every kind of row only those of the location that looks', async () => {
    for (const table of WALLED) {
      const [main, far, all, nobody] = await Promise.all([
        looking(MAIN, (client) => countOf(client, table)),
        looking(FAR, (client) => countOf(client, table)),
        looking('all', (client) => countOf(client, table)),
        looking(null, (client) => countOf(client, table)),
      ]);
      expect({ table, far, nobody, sum: main + far }).toEqual({ table, far: 1, nobody: 0, sum: all });
    }
  });

  it.each(['', 'ALL', '1 OR true', '-1', '2147483648', 'null'])('shows nothing to the eyes of "%s"', async (sight) => {
    for (const table of WALLED) expect(await looking(sight as Sight, (client) => countOf(client, table))).toBe(0);
  });

  it('stands before the trail too, which only those see who see every location', async () => {
    expect(await looking(MAIN, (client) => countOf(client, 'audit_entry'))).toBe(0);
    expect(await looking('all', (client) => countOf(client, 'audit_entry'))).toBeGreaterThan(0);
  });

  it.each([
    ['an owner by id', 'SELECT * FROM owner WHERE id = (SELECT max(id) FROM owner)'],
    ['an owner by a forged filter', `SELECT * FROM owner WHERE location_id = ${MAIN} OR 1 = 1`],
    ['a ticket by its number', `SELECT * FROM ticket WHERE number = '26-90${MAIN}'`],
    ['owners past a join', 'SELECT o.* FROM location l CROSS JOIN owner o'],
    ['what the search finds elsewhere', `SELECT * FROM find_tickets('', '', '%', '%', '%', '{}', ${MAIN}, 100)`],
    ['what the search finds of no location', `SELECT * FROM find_tickets('', '', '%', '%', '%', '{}', NULL, 100)`],
  ])('gives another location no %s', async (_, sql) => {
    const rows = await looking(FAR, async (client) => (await client.query<{ location_id?: number }>(sql)).rows);
    expect(rows.filter(({ location_id }) => location_id !== FAR)).toEqual([]);
  });

  it.each([
    `INSERT INTO owner (location_id, name) VALUES (${MAIN}, 'Forged')`,
    `UPDATE owner SET location_id = ${MAIN}`,
    `UPDATE ticket SET location_id = ${MAIN}`,
    `INSERT INTO ticket (number, location_id, unit_id, owner_id) SELECT '26-9999', ${MAIN}, unit_id, owner_id FROM ticket`,
    `INSERT INTO ticket_event (ticket_id, kind) VALUES ((SELECT min(id) - 1 FROM ticket), 'forged')`,
    `INSERT INTO flag (location_id, ticket_id, unit_id, position_id, place, verdict, severity, reason)
       SELECT ${MAIN}, id, unit_id, 1, 2, 'wrong', 1, '{}' FROM ticket`,
    `UPDATE install SET location_id = ${MAIN}`,
  ])('refuses %s', async (sql) => {
    await expect(looking(FAR, (client) => client.query(sql))).rejects.toMatchObject({ code: '42501' });
  });

  it('lets no change reach the rows of another location', async () => {
    for (const sql of [
      `UPDATE owner SET name = 'x'`,
      'DELETE FROM callback_attempt',
      `UPDATE flag SET state = 'cleared'`,
    ])
      expect(await looking(FAR, async (client) => (await client.query(sql)).rowCount)).toBe(1);
    expect(await looking(null, async (client) => (await client.query(`UPDATE owner SET name = 'x'`)).rowCount)).toBe(0);
  });

  it('holds for the owner of a table as well, and cannot be switched off by the programs', async () => {
    const { rows } = await db.pool.query<{ table: string }>(
      `SELECT relname AS table FROM pg_class WHERE relrowsecurity AND relforcerowsecurity AND relnamespace = 'public'::regnamespace`,
    );
    expect(rows.map(({ table }) => table).sort()).toEqual([...WALLED].sort());
    for (const sql of [
      'ALTER TABLE owner DISABLE ROW LEVEL SECURITY',
      'DROP POLICY wall ON owner',
      'SET ROLE revright_search',
    ])
      await expect(app.query(sql)).rejects.toMatchObject({ code: '42501' });
    const { rows: may } = await app.query<{ powers: boolean }>(
      'SELECT rolsuper OR rolbypassrls OR rolcreaterole AS powers FROM pg_roles WHERE rolname = current_user',
    );
    expect(may).toEqual([{ powers: false }]);
  });

  it('leaves no table that says whose location it is of without a wall', async () => {
    const { rows } = await db.pool.query<{ table: string }>(
      `SELECT c.relname AS table FROM pg_class c
       WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace AND NOT c.relrowsecurity AND EXISTS (
         SELECT FROM pg_attribute a WHERE a.attrelid = c.oid
           AND a.attname IN ('location_id', 'owner_id', 'unit_id', 'ticket_id', 'callback_id'))`,
    );
    // Benches and people are known to everybody who works here.
    expect(rows.map(({ table }) => table).sort()).toEqual(['bench', 'person']);
  });
});

describe("the programs' store behind the wall", () => {
  const owners = () => store.owners.search('Signe', 10, FAR);

  it('sees nothing for who forgets to say in whose name, in a transaction and out of one', async () => {
    expect(await owners()).toEqual([]);
    expect(await store.transaction((tx) => tx.owners.search('Signe', 10, FAR))).toEqual([]);
  });

  it('sees what the person may see, whoever had the connection before', async () => {
    const far = { personId: 1, sight: FAR };
    const main = { personId: 1, sight: MAIN };
    for (let n = 0; n < 20; n++) {
      const [all, there, here, nobody] = await Promise.all([
        asProgram(owners),
        actingAs(far, owners),
        actingAs(main, owners),
        owners(),
      ]);
      expect([all.length, there.length, here.length, nobody.length]).toEqual([1, 1, 0, 0]);
      const inside = () => store.transaction((tx) => tx.owners.search('Signe', 10, FAR));
      const [some, none] = await Promise.all([actingAs(far, inside), actingAs(main, inside)]);
      expect([some.length, none.length]).toEqual([1, 0]);
    }
  });

  it('gives the next number of the whole shop to a ticket of any location', async () => {
    const last = await db.pool.query<{ number: string }>('SELECT number FROM ticket ORDER BY id DESC LIMIT 1');
    const ticket = await shop.newTicket('17050001');
    expect(Number(ticket.number.slice(3))).toBe(Number(last.rows[0]!.number.slice(3)) + 1);
  });

  it('keeps what a unit holds where the unit is, when it changes its owner', async () => {
    const client = await db.pool.connect();
    try {
      await client.query('BEGIN');
      await client.query(
        `UPDATE unit SET owner_id = (SELECT max(id) FROM owner WHERE location_id = $1) WHERE serial = '1701${MAIN}'`,
        [FAR],
      );
      const { rows } = await client.query<{ unit: number; install: number }>(
        `SELECT u.location_id AS unit, i.location_id AS install FROM unit u JOIN install i ON i.unit_id = u.id
         WHERE u.serial = '1701${MAIN}'`,
      );
      expect(rows).toEqual([{ unit: FAR, install: FAR }]);
    } finally {
      await client.query('ROLLBACK');
      client.release();
    }
  });
});

describe('two logins', () => {
  it('let the programs run where the tables were made by their owner, and refuse to run where they were not', async () => {
    expect(await prepareDatabase({ databaseUrl: appUrl, migrationDatabaseUrl: db.url })).toEqual({
      ok: true,
      applied: [],
    });
    expect(await prepareDatabase({ databaseUrl: appUrl })).toEqual({ ok: true, applied: [] });
    await db.pool.query(
      `UPDATE _prisma_migrations SET rolled_back_at = now() WHERE migration_name LIKE '%walls_between_locations'`,
    );
    const refused = await prepareDatabase({ databaseUrl: appUrl });
    await db.pool.query(`UPDATE _prisma_migrations SET rolled_back_at = NULL`);
    expect(refused).toMatchObject({ ok: false, problem: expect.stringContaining('wants 1 migrations') as string });
  });

  it('lets nobody in with another password', async () => {
    const other = new URL(appUrl);
    other.password = 'a guess';
    const pool = new Pool({ connectionString: other.toString(), max: 1 });
    await expect(pool.query('SELECT 1')).rejects.toMatchObject({ code: '28P01' });
    await pool.end();
  });
});
