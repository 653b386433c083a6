import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { Pool } from 'pg';
import { startApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import type { TicketView, UnitTrail, UnitView } from '../../libs/contracts';
import { asProgram, openStore, verifyTrail } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { ApiShop, rule } from './api-shop';

const db = withDatabase();
let shop: ApiShop;

interface Entry {
  id: string;
  person: string | null;
  act: string;
  noun: string;
  unit_id: number | null;
  change: Record<string, unknown>;
}

const since = async (id: string): Promise<Entry[]> =>
  (
    await db.pool.query<Entry>(
      `SELECT e.id::text, p.login AS person, e.act, e.noun, e.unit_id, e.change FROM audit_entry e
       LEFT JOIN person p ON p.id = e.person_id WHERE e.id > $1::bigint ORDER BY e.id`,
      [id],
    )
  ).rows;

const last = async (): Promise<string> =>
  (await db.pool.query<{ id: string }>('SELECT coalesce(max(id), 0)::text AS id FROM audit_entry')).rows[0]!.id;

const newRecheck = async (): Promise<number> =>
  (
    await db.pool.query<{ id: number }>(
      `INSERT INTO recheck (cause, revision, scope, state) VALUES ('order', 1, '{}', 'running') RETURNING id`,
    )
  ).rows[0]!.id;

beforeAll(async () => {
  shop = await ApiShop.open(db);
}, 300_000);

describe('the trail of changes', () => {
  it('names who changed what of which unit, with what stood there before', async () => {
    const ticket = await shop.newTicket('16050002');
    const from = await last();
    const technician = await shop.as('technician');
    await technician.change('PATCH', `/tickets/${ticket.id}`, ticket.version, { complaint: 'Belt slips' });
    const entries = await since(from);
    const changed = entries.find(({ noun, act }) => noun === 'ticket' && act === 'update')!;
    expect(changed).toMatchObject({ person: 'technician', unit_id: ticket.unit.id });
    expect(changed.change).toMatchObject({ complaint: ['Auger does not turn', 'Belt slips'] });
  });

  it('keeps nothing of an owner but that something changed, and no password', async () => {
    await shop.newTicket('16050003', {});
    const { rows } = await db.pool.query<{ all: string }>('SELECT change::text AS all FROM audit_entry');
    const text = rows.map(({ all }) => all).join('\n');
    expect(text).toContain('not kept here');
    for (const secret of ['Ole Brand', '555 0101', '$argon2id$']) expect(text).not.toContain(secret);
  });

  it('holds nothing of a change that was refused or rolled back', async () => {
    const from = await last();
    await expect(
      shop.store.transaction(async (tx) => {
        await tx.settings.write('look-back-months', 5, null);
        throw new Error('no');
      }),
    ).rejects.toThrow('no');
    expect(await since(from)).toEqual([]);
  });

  it('is one chain however many write at once', async () => {
    await Promise.all(
      Array.from({ length: 40 }, (_, n) => shop.store.transaction((tx) => tx.settings.write(`many-${n % 7}`, n, null))),
    );
    expect(await verifyTrail(db.pool)).toMatchObject({ fault: null });
  });

  it('cannot be written, changed or emptied by the programs, nor can what it stands on', async () => {
    const { pool } = shop.store;
    const asked = [
      `UPDATE audit_entry SET act = 'x'`,
      'DELETE FROM audit_entry',
      'TRUNCATE audit_entry',
      `INSERT INTO audit_entry SELECT 999999, at, person_id, act, noun, row_key, unit_id, revision, change, prev_hash, row_hash FROM audit_entry LIMIT 1`,
      `SELECT audit_append('x', 'x', 'x', NULL, '{}')`,
      `UPDATE verdict_change SET to_verdict = 'right'`,
      'DELETE FROM verdict_change',
      `UPDATE audit_batch SET rows = '[]'`,
      'DELETE FROM audit_batch',
      `INSERT INTO audit_batch (act, noun, units, rows, digest) VALUES ('insert', 'flag', '{}', '[]', '')`,
      `SELECT nextval('audit_batch_id_seq')`,
      'ALTER TABLE audit_entry DISABLE TRIGGER ALL',
      'ALTER TABLE ticket DISABLE TRIGGER ALL',
      'DROP TABLE audit_entry',
      'SELECT * FROM _prisma_migrations',
    ];
    for (const sql of asked) await expect(pool.query(sql)).rejects.toMatchObject({ code: '42501' });
  });

  it('is not silenced by a program that says it is loading a shop', async () => {
    const from = await last();
    const client = await shop.store.pool.connect();
    try {
      await client.query('BEGIN');
      await client.query(`SELECT set_config('revright.loading', 'on', true)`);
      await client.query(`INSERT INTO setting (key, value) VALUES ('quiet', '1')`);
      await client.query('COMMIT');
    } finally {
      client.release();
    }
    expect((await since(from)).map(({ noun }) => noun)).toEqual(['setting']);
  });

  it('refuses to be changed even by the owner of the tables', async () => {
    for (const sql of [`UPDATE audit_entry SET act = 'x'`, 'DELETE FROM audit_entry', 'TRUNCATE audit_entry'])
      await expect(db.pool.query(sql)).rejects.toThrow('only ever added to');
  });
});

describe("an auditor's view of one unit", () => {
  it('is everything about it in order, with who did it and what was known then', async () => {
    const ticket = await shop.newTicket('16050009');
    const technician = await shop.as('technician');
    await technician.change('PATCH', `/tickets/${ticket.id}`, ticket.version, { complaint: 'Rattles' });
    const manager = await shop.as('manager');
    const path = `/units/${ticket.unit.id}/trail`;
    const { body } = await manager.get<UnitTrail>(path);
    expect(body.next).toBeNull();
    expect(body.items.map(({ noun, act, by }) => `${noun} ${act} ${by}`)).toEqual(
      expect.arrayContaining(['unit insert The counter', 'ticket insert The counter', 'ticket update The technician']),
    );
    expect(body.items.at(-1)).toMatchObject({ noun: 'ticket', revision: 1, known: 'seed' });
    const places = body.items.map(({ place }) => Number(place));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect((await technician.get(path)).status).toBe(403);
    expect((await manager.get('/units/2000000000/trail')).status).toBe(404);
    expect((await manager.get(`${path}?after=x`)).status).toBe(400);
  });

  it('holds why a ticket went back a stage, and nothing else of its history twice', async () => {
    const ticket = await shop.newTicket('16050019');
    const technician = await shop.as('technician');
    const path = `/tickets/${ticket.id}/stage`;
    const { body: on } = await technician.change<TicketView>('POST', path, ticket.version, { to: 'inspection' });
    const back = { to: 'intake', reason: 'The plate was of another unit' };
    expect((await technician.change('POST', path, on.version, back)).status).toBe(200);
    const { body } = await (await shop.as('manager')).get<UnitTrail>(`/units/${ticket.unit.id}/trail`);
    expect(body.items.filter(({ noun }) => noun === 'ticket_event')).toMatchObject([
      {
        by: 'The technician',
        act: 'insert',
        change: { kind: 'moved-back', data: { from: 'inspection', to: 'intake', reason: back.reason } },
      },
    ]);
    expect(await verifyTrail(db.pool)).toMatchObject({ fault: null });
  });
});

describe("an auditor's view of a verdict", () => {
  it('has the verdict of then beside the one of today, with its place and its part, from any location', async () => {
    const technician = await shop.as('technician');
    const ticket = await shop.newTicket('16050010');
    const moved = await technician.change<TicketView>('POST', `/tickets/${ticket.id}/stage`, ticket.version, {
      to: 'inspection',
    });
    const places = [{ position: 'AUG-PIN', place: 1, partText: '70-412B', condition: 'sound' }];
    const put = { side: 'found', places };
    const found = await technician.change('PUT', `/tickets/${ticket.id}/places`, moved.body.version, put);
    expect(found.status).toBe(200);
    await db.pool.query(
      `INSERT INTO verdict_change (unit_id, position_id, place, ticket_id, part_id, from_verdict, to_verdict, revision)
       SELECT unit_id, position_id, place, ticket_id, part_id, 'disputed', 'undecided', 1 FROM install WHERE unit_id = $1`,
      [ticket.unit.id],
    );
    const { rows: held } = await db.pool.query<{ verdict: string }>('SELECT verdict FROM install WHERE unit_id = $1', [
      ticket.unit.id,
    ]);
    await db.pool.query(`UPDATE owner SET location_id = (SELECT id FROM location WHERE code = 'FAR') WHERE id = $1`, [
      ticket.owner.id,
    ]);
    const { status, body } = await (await shop.as('manager')).get<UnitTrail>(`/units/${ticket.unit.id}/trail`);
    expect(status).toBe(200);
    expect(body.items.findLast(({ noun }) => noun === 'verdict_change')).toMatchObject({
      part: '70-412B',
      where: 'Auger pin, left',
      change: { from_verdict: 'disputed', to_verdict: 'undecided' },
      now: { verdict: held[0]!.verdict },
    });
    expect(held[0]!.verdict).not.toBe('undecided');
  });
});

describe("an auditor's view of a ruling", () => {
  it('is by the papers of that day as the shop knew them then, and says whether they say the same today', async () => {
    const [technician, manager] = [await shop.as('technician'), await shop.as('manager')];
    const ticket = await shop.newTicket('16050011');
    let { version } = ticket;
    const act = async (method: string, path: string, body: unknown) => {
      const answer = await technician.change<TicketView>(method, `/tickets/${ticket.id}${path}`, version, body);
      version = answer.body.version;
    };
    await act('POST', '/stage', { to: 'inspection' });
    const belt = { position: 'BELT', place: 1, partText: '80-001' };
    await act('PUT', '/places', { side: 'found', places: [{ ...belt, condition: 'sound' }] });
    const paper = {
      ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: 'SB-21', title: 'The other belt' },
      ...{ issued: '2026-10-01', received: '2026-10-20' },
      draft: { opens: [rule('BELT-21', { positions: ['BELT'], required: 'HOLM/80002' })], ends: [] },
    };
    const draft = (await manager.ask<{ id: number; version: number }>('POST', '/bulletins', paper)).body;
    const { revision: whatIfRevision } = await shop.store.rulebook.latest();
    const path = `/bulletins/${draft.id}/publish`;
    expect((await manager.change('POST', path, draft.version, { whatIfRevision })).status).toBe(200);
    version = (await technician.get(`/tickets/${ticket.id}`)).body.version;
    await act('PUT', '/places', { side: 'found', places: [{ ...belt, condition: 'worn' }] });
    const { items } = (await manager.get<UnitTrail>(`/units/${ticket.unit.id}/trail`)).body;
    const said = items.filter(({ noun, where }) => noun === 'place_record' && where === 'Belt, belt');
    expect(said.map(({ act: done, ruling }) => [done, ruling?.sameToday])).toEqual([
      ['insert', false],
      ['update', true],
    ]);
    expect(said[0]!.ruling!.sentence).toMatch(/80-001.* required/);
    expect(said[1]!.ruling!.sentence).toMatch(/80-002.* required/);
    expect(items.find(({ noun }) => noun === 'ticket')!.ruling).toBeNull();
  });

  it('is about the unit as it was known then, with its build days, its model and its options, and says what is known otherwise', async () => {
    const [technician, manager] = [await shop.as('technician'), await shop.as('manager')];
    const ticket = await shop.newTicket(null, { serialAbsent: 'plate gone' });
    const path = `/tickets/${ticket.id}`;
    const { body: moved } = await technician.change<TicketView>('POST', `${path}/stage`, ticket.version, {
      to: 'inspection',
    });
    let { version } = moved;
    const look = async (condition: string) => {
      const places = [{ position: 'AUG-PIN', place: 1, partText: '70-412B', condition }];
      const put = await technician.change<TicketView>('PUT', `${path}/places`, version, { side: 'found', places });
      expect(put.status).toBe(200);
      version = (await technician.get(path)).body.version;
    };
    let unit = moved.unit.version;
    const onUnit = async (method: string, to: string, body: unknown) => {
      const answer = await technician.change<UnitView>(method, `/units/${ticket.unit.id}${to}`, unit, body);
      expect([method, to, answer.status, answer.body]).toEqual([method, to, 200, answer.body]);
      unit = answer.body.version;
      version = (await technician.get(path)).body.version;
      return answer.body;
    };
    await look('sound');
    const dated = await onUnit('POST', '/evidence', { evidence: { kind: 'printed-date', date: '2017-03' } });
    await look('worn');
    const { id } = dated.buildDates.evidence.find(({ kind }) => kind === 'printed-date')!;
    await onUnit('POST', `/evidence/${id}/set-aside`, { reason: 'read wrong' });
    await onUnit('POST', `/evidence/${id}/set-aside`, { reason: null });
    const { lineCode, serial, serialAbsent, plate } = dated;
    const identity = { lineCode, serial, serialAbsent, plate };
    await onUnit('PUT', '/identity', { ...identity, modelNumber: 'S2W', options: { cab: true } });
    const { items } = (await manager.get<UnitTrail>(`/units/${ticket.unit.id}/trail`)).body;
    const [first, second] = items
      .filter(({ noun, where }) => noun === 'place_record' && where === 'Auger pin, left')
      .map(({ ruling }) => ruling!);
    expect(first!.sentence).toMatch(/70-412A.*70-412B/);
    expect(first).toMatchObject({ sameToday: false, otherwise: ['model', 'options', 'build-days'] });
    expect(second!.sentence).toMatch(/^(?!.*70-412A.* required).*70-412B.* required/);
    expect(second).toMatchObject({ sameToday: true, otherwise: ['model', 'options'] });
  });
});

describe('looking the trail over', () => {
  /** Does to the trail what only somebody who owns the database can, and undoes it again. */
  async function tampered(sql: string, undo: string, look: () => Promise<unknown>): Promise<void> {
    const owner = new Pool({ connectionString: db.url, max: 1 });
    try {
      await owner.query('ALTER TABLE audit_entry DISABLE TRIGGER only_added_to');
      await owner.query('CREATE TABLE IF NOT EXISTS kept AS SELECT * FROM audit_entry WHERE false');
      await owner.query('TRUNCATE kept');
      await owner.query('INSERT INTO kept SELECT * FROM audit_entry');
      await owner.query(sql);
      await look();
      await owner.query(undo);
      await owner.query('ALTER TABLE audit_entry ENABLE TRIGGER only_added_to');
    } finally {
      await owner.end();
    }
  }
  const RESTORE = 'DELETE FROM audit_entry; INSERT INTO audit_entry SELECT * FROM kept';

  it.each([
    ['one letter of what was changed', `change = jsonb_set(change, '{key}', '"lookback-months"')`],
    ['one byte of a hash', 'row_hash = set_byte(row_hash, 7, (get_byte(row_hash, 7) + 1) % 256)'],
    ['one byte of the hash before', 'prev_hash = set_byte(prev_hash, 0, (get_byte(prev_hash, 0) + 1) % 256)'],
    ['who did it', 'person_id = 1 + coalesce(person_id, 0)'],
    ['when', `at = at + INTERVAL '1 millisecond'`],
    ['about which unit', 'unit_id = 1 + coalesce(unit_id, 0)'],
  ])('finds that %s is not as it was, and names the row', async (_, set) => {
    await tampered(`UPDATE audit_entry SET ${set} WHERE id = 9`, RESTORE, async () => {
      expect((await verifyTrail(db.pool)).fault).toMatchObject({ id: '9' });
    });
    expect((await verifyTrail(db.pool)).fault).toBeNull();
  });

  it('finds a removed row, and a cut end when the head was written down', async () => {
    const { head, rows } = await verifyTrail(db.pool);
    await tampered('DELETE FROM audit_entry WHERE id = 5', RESTORE, async () => {
      expect((await verifyTrail(db.pool)).fault).toMatchObject({ id: '6' });
    });
    await tampered(`DELETE FROM audit_entry WHERE id = ${rows}`, RESTORE, async () => {
      expect((await verifyTrail(db.pool)).fault).toBeNull();
      expect((await verifyTrail(db.pool, head)).fault?.why).toContain('rows are missing');
    });
    expect((await verifyTrail(db.pool, head)).fault).toBeNull();
  });

  it('finds a changed verdict of a recheck, which the row of its chunk stands for', async () => {
    const id = await newRecheck();
    await db.pool.query('INSERT INTO recheck_chunk (recheck_id, n, from_unit, to_unit) VALUES ($1, 1, 1, 500)', [id]);
    await db.pool.query(
      `INSERT INTO verdict_change (unit_id, position_id, place, ticket_id, from_verdict, to_verdict, revision, recheck_id)
       SELECT n, 1, 1, 1, 'right', 'wrong', 1, $1 FROM generate_series(1, 500) n`,
      [id],
    );
    const before = await last();
    await db.pool.query(`UPDATE recheck_chunk SET state = 'done', changed = 500 WHERE recheck_id = $1`, [id]);
    const entries = await since(before);
    expect(entries.map(({ noun, act }) => `${noun} ${act}`)).toEqual(['recheck_chunk done']);
    expect((await verifyTrail(db.pool)).fault).toBeNull();
    const change = (from: string, to: string) =>
      db.pool.query(`
        ALTER TABLE verdict_change DISABLE TRIGGER only_added_to;
        UPDATE verdict_change SET to_verdict = '${to}' WHERE unit_id = 250 AND to_verdict = '${from}' AND recheck_id = ${id};
        ALTER TABLE verdict_change ENABLE TRIGGER only_added_to`);
    await change('wrong', 'right');
    expect((await verifyTrail(db.pool)).fault).toEqual({
      id: entries[0]!.id,
      why: 'the verdicts it stands for were changed',
    });
    await change('right', 'wrong');
    expect((await verifyTrail(db.pool)).fault).toBeNull();
  });

  it('has one row for all that a statement of a recheck wrote, and finds a changed byte of it', async () => {
    const units = [(await shop.newTicket('16050021')).unit.id, (await shop.newTicket('16050022')).unit.id];
    const [first, second] = await Promise.all([newRecheck(), newRecheck()]);
    const before = await last();
    const write = (sql: string, recheck: number | null) =>
      asProgram(() => shop.store.pool.query(`${sql} WHERE unit_id = ANY($2)`, [recheck, units]));
    await asProgram(() =>
      shop.store.pool.query(
        'INSERT INTO callback (unit_id, owner_id, recheck_id) SELECT id, owner_id, $1 FROM unit WHERE id = ANY($2)',
        [first, units],
      ),
    );
    await write('UPDATE callback SET urgent = TRUE, recheck_id = $1', first);
    await write(`UPDATE callback SET state = 'withdrawn', recheck_id = $1`, second);
    await write('UPDATE callback SET urgent = FALSE, recheck_id = $1', null);
    const entries = await since(before);
    expect(entries.map(({ act, unit_id, change }) => [act, unit_id, change['rows'] ?? 'itself'])).toEqual([
      ['insert', null, 2],
      ['update', units[0], 'itself'],
      ['update', units[1], 'itself'],
      ['update', null, 2],
      ['update', units[0], 'itself'],
      ['update', units[1], 'itself'],
    ]);
    const { body } = await (await shop.as('manager')).get<UnitTrail>(`/units/${units[1]}/trail`);
    const calls = body.items.filter(({ noun }) => noun === 'callback').map(({ act, change }) => ({ act, change }));
    expect(calls).toMatchObject([
      { act: 'insert', change: { unit_id: units[1], state: 'open' } },
      { act: 'update', change: { urgent: [false, true] } },
      { act: 'update', change: { state: ['open', 'withdrawn'], recheck_id: [first, second] } },
      { act: 'update', change: { urgent: [true, false], recheck_id: [second, null] } },
    ]);
    const swap = (from: string, to: string) =>
      db.pool.query(`
        ALTER TABLE audit_batch DISABLE TRIGGER only_added_to;
        UPDATE audit_batch SET rows = replace(rows::text, '${from}', '${to}')::jsonb WHERE id = ${String(entries[3]!.change['batch'])};
        ALTER TABLE audit_batch ENABLE TRIGGER only_added_to`);
    await swap('withdrawn', 'withdrawm');
    expect((await verifyTrail(db.pool)).fault).toEqual({
      id: entries[3]!.id,
      why: 'the rows it stands for were changed',
    });
    await swap('withdrawm', 'withdrawn');
    expect((await verifyTrail(db.pool)).fault).toBeNull();
  });

  it('ends where the head stands that leaves the database at each start', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'revright-head-')), 'heads');
    const read = readConfig({ PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'error', AUDIT_HEAD_FILE: file });
    if (!read.ok) throw new Error(read.problems.join(' '));
    const api = await startApi({ config: read.config, store: shop.store });
    await api.close();
    const { head, rows } = await verifyTrail(db.pool);
    expect(readFileSync(file, 'utf8')).toMatch(new RegExp(`^\\S+Z ${rows} ${head}\n$`));
    rmSync(dirname(file), { recursive: true });
  });

  it('is the same for a store of its own', async () => {
    const store = openStore({ url: db.url, poolSize: 1, sight: 'all' });
    try {
      expect((await verifyTrail(store.pool)).fault).toBeNull();
    } finally {
      await store.close();
    }
  });
});
