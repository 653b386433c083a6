import sharp from 'sharp';
import type { PersonalData, Problem, Retention, SheetView, TicketView } from '../../libs/contracts';
import { asProgram, verifyTrail } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { dropOldSheets, forgetDueOwners } from '../../libs/usecases';
import { ApiShop } from './api-shop';

const db = withDatabase();
let shop: ApiShop;

const NAME = 'Yrsa Quillfeather';
const PHONE = '555 90817263';
const EMAIL = 'yrsa.quill@post.example';
const ADDRESS = '7 Thistledown Steps';
const SAID = 'her sister Maud Quillfeather answered';
const MARKS = [NAME, PHONE, EMAIL, ADDRESS, SAID, 'Quillfeather'];

const picture = (): Promise<Buffer> =>
  sharp({ create: { width: 40, height: 30, channels: 3, background: '#884422' } })
    .jpeg()
    .toBuffer();

/** Every row of every table as text, with the table's name: what a copy of the database would give away. */
async function rowsThatHold(mark: string): Promise<string[]> {
  const { rows } = await db.pool.query<{ name: string }>(
    `SELECT relname AS name FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace`,
  );
  const found: string[] = [];
  for (const { name } of rows) {
    const { rows: held } = await db.pool.query(
      `SELECT 1 FROM "${name}" t WHERE to_jsonb(t)::text LIKE '%' || $1 || '%'`,
      [mark],
    );
    if (held.length > 0) found.push(`${name}: ${held.length}`);
  }
  return found;
}

/** A ticket of a new owner who said yes, closed or not, and a call about the unit. */
async function ticketOf(serial: string, closed: string | null): Promise<TicketView> {
  const counter = await shop.as('counter');
  const opened = await counter.ask('POST', '/tickets', {
    owner: { name: NAME, phone: PHONE, email: EMAIL, address: ADDRESS, consent: true },
    unit: { lineCode: 'SNOW-2', modelNumber: 'S2', serial, serialAbsent: null, plate: 'SNOW-2' },
    complaint: 'Auger does not turn',
  });
  const { id, version } = opened.body;
  // Taken over HTTP, so that everything a photo leaves behind (the ticket's history too) holds what was written under it.
  const form = new FormData();
  form.append('stage', 'intake');
  form.append('caption', SAID);
  form.append('photo', new Blob([new Uint8Array(await picture())]), 'intake.jpg');
  expect((await counter.send(`/tickets/${id}/photos`, form)).status).toBe(200);
  const word = { by: NAME, how: 'phone', amountMinor: 5_000 };
  const said = await counter.ask('POST', `/tickets/${id}/authorisation`, word, {
    'if-match': `"${version}"`,
    'idempotency-key': `yes-${serial}`,
  });
  expect(said.status).toBe(200);
  if (closed !== null)
    await db.pool.query(`UPDATE ticket SET closed_at = $2, handed_over = true WHERE id = $1`, [id, closed]);
  return said.body;
}

async function callOf(ticket: TicketView, urgent = false): Promise<number> {
  const { rows } = await db.pool.query<{ id: number }>(
    'INSERT INTO callback (unit_id, owner_id, urgent) VALUES ($1, $2, $3) RETURNING id',
    [ticket.unit.id, ticket.owner.id, urgent],
  );
  const call = { how: 'phone', outcome: 'reached', note: SAID };
  const counter = await shop.as('counter');
  expect((await counter.change('POST', `/callbacks/${rows[0]!.id}/attempts`, 1, call)).status).toBeLessThan(300);
  return rows[0]!.id;
}

/** A spreadsheet of owners that names the person, brought and left lying. */
async function sheetWith(row: string): Promise<SheetView> {
  const manager = await shop.as('manager');
  const text = `Owner number,Name,Phone,Email,Address\r\n${row}\r\n`;
  const { status, body } = await manager.upload<SheetView>('/sheets?kind=owners', { name: 'owners.csv', text });
  expect(status).toBe(201);
  return body;
}

const theirRow = (number: number | '') => `${number},${NAME},${PHONE},${EMAIL},${ADDRESS}`;

beforeAll(async () => {
  shop = await ApiShop.open(db);
}, 300_000);

describe('what is kept of one person', () => {
  it('is handed over whole on request, to those who answer for it alone', async () => {
    const ticket = await ticketOf('16050101', null);
    const callId = await callOf(ticket);
    await db.pool.query(
      `INSERT INTO callback_mail (callback_id, wording, recipient, subject, text, html, state)
       VALUES ($1, 'w', $2, 'About your machine', $3, '', 'sent')`,
      [callId, EMAIL, `Dear ${NAME}`],
    );
    const path = `/owners/${ticket.owner.id}/personal-data`;
    const { body } = await (await shop.as('manager')).get<PersonalData>(path);
    expect(body).toMatchObject({
      owner: { name: NAME, phone: PHONE, email: EMAIL, address: ADDRESS, consent: true, location: 'Main shop' },
      units: [{ serial: '16050101' }],
      tickets: [{ number: ticket.number, complaint: 'Auger does not turn', authorisation: { by: NAME, how: 'phone' } }],
      callbacks: [
        {
          state: 'open',
          attempts: [{ how: 'phone', note: SAID }],
          mails: [{ to: EMAIL, subject: 'About your machine', text: `Dear ${NAME}`, state: 'sent' }],
        },
      ],
    });
    expect(body.tickets[0]!.photos).toMatchObject([{ stage: 'intake', caption: SAID }]);
    expect((await (await shop.as('manager')).get(`/photos/${body.tickets[0]!.photos[0]!.name}`)).status).toBe(200);
    for (const role of ['technician', 'counter'] as const)
      expect((await (await shop.as(role)).get(path)).status).toBe(403);
    expect((await (await shop.as('administrator')).get('/owners/2000000000/personal-data')).status).toBe(404);
  });
});

describe('an owner who is forgotten', () => {
  it('stays while the unit is in the shop, and while a stop use is to be called about', async () => {
    const manager = await shop.as('manager');
    const reason = { reason: 'asked for by letter' };
    const open = await ticketOf('16050102', null);
    const refused = await manager.change<Problem>('POST', `/owners/${open.owner.id}/erase`, 1, reason);
    expect([refused.status, refused.body.detail]).toEqual([409, expect.stringContaining(open.number)]);
    const gone = await ticketOf('16050103', '2026-10-01');
    await callOf(gone, true);
    expect((await manager.change<Problem>('POST', `/owners/${gone.owner.id}/erase`, 1, reason)).status).toBe(409);
    await db.pool.query(`UPDATE callback SET state = 'settled' WHERE owner_id = $1`, [gone.owner.id]);
    expect((await manager.change('POST', `/owners/${gone.owner.id}/erase`, 7, reason)).status).toBe(412);
    expect((await manager.ask('POST', `/owners/${gone.owner.id}/erase`, reason)).status).toBe(428);
    expect((await manager.change('POST', `/owners/${gone.owner.id}/erase`, 1, { reason: 'x' })).status).toBe(400);
  });

  it('is gone from every table, while machines, tickets and verdicts stay and the trail is whole', async () => {
    const manager = await shop.as('manager');
    await db.pool.query('UPDATE ticket SET closed_at = now(), handed_over = true WHERE closed_at IS NULL');
    const { rows: owners } = await db.pool.query<{ id: number; version: number }>(
      'SELECT id, version FROM owner WHERE name = $1',
      [NAME],
    );
    const sheet = await sheetWith(theirRow(''));
    const counter = await shop.as('counter');
    const begun = {
      ...{ ownerId: null, ownerName: '', unitId: null, unitName: '', complaint: '', benchId: null, promisedOn: null },
      owner: { name: NAME },
      unit: { lineCode: null, modelNumber: null, serial: null, serialAbsent: null },
    };
    expect((await counter.ask('PUT', '/session/draft', { draft: begun })).status).toBe(204);
    const held = await rowsThatHold('Quillfeather');
    expect(held.length).toBeGreaterThan(3);
    expect(held.join()).toContain('sheet_row');
    expect(held.join()).toContain('intake_draft');
    const counted = async () =>
      (
        await db.pool.query<{ t: string; u: string; o: string }>(
          'SELECT (SELECT count(*) FROM ticket) t, (SELECT count(*) FROM unit) u, (SELECT count(*) FROM owner) o',
        )
      ).rows;
    const before = await counted();
    for (const { id, version } of owners) {
      const { status, body } = await manager.change<PersonalData>('POST', `/owners/${id}/erase`, version, {
        reason: 'asked for by letter',
      });
      expect(status).toBe(200);
      expect(body.owner).toMatchObject({ name: 'erased', phone: '', email: '', address: '', consent: true });
      expect(body.owner.erasedAt).not.toBeNull();
      for (const { authorisation } of body.tickets) expect(authorisation).toEqual({ by: 'erased', how: 'phone' });
      for (const { state, attempts } of body.callbacks) {
        expect(['withdrawn', 'settled']).toContain(state);
        expect(attempts.map(({ note }) => note)).toEqual(['erased']);
      }
    }
    for (const mark of MARKS) expect(await rowsThatHold(mark)).toEqual([]);
    expect((await manager.get(`/sheets/${sheet.id}`)).status).toBe(404);
    expect(await counted()).toEqual(before);
    expect((await verifyTrail(db.pool)).fault).toBeNull();
    const again = await manager.change<Problem>('POST', `/owners/${owners[0]!.id}/erase`, 2, { reason: 'once more' });
    expect(again.status).toBe(409);
  });

  it('is not brought back: not by a change, not by a spreadsheet, not by opening a ticket', async () => {
    const [manager, counter] = [await shop.as('manager'), await shop.as('counter')];
    const { rows } = await db.pool.query<{ id: number; version: number; unit: number }>(
      `SELECT o.id, o.version, u.id AS unit FROM owner o JOIN unit u ON u.owner_id = o.id
       WHERE o.erased_at IS NOT NULL LIMIT 1`,
    );
    const { id, version, unit } = rows[0]!;
    const changed = await counter.change<Problem>('PATCH', `/owners/${id}`, version, { name: NAME });
    expect([changed.status, changed.body.detail]).toEqual([409, expect.stringContaining('was erased')]);
    const sheet = await sheetWith(theirRow(id));
    const look = { mapping: sheet.mapping, dayOrder: null, publish: false };
    const looked = await manager.change<SheetView>('POST', `/sheets/${sheet.id}/look`, sheet.version, look);
    expect(looked.body.rejected[0]!.problems).toMatchObject([{ code: 'not-on-file', field: 'ownerNumber' }]);
    const opened = await counter.ask<Problem>('POST', '/tickets', { unitId: unit, complaint: 'Auger does not turn' });
    expect([opened.status, opened.body.field]).toEqual([400, 'ownerId']);
    expect((await counter.get<unknown[]>('/owners?q=erased')).body).toEqual([]);
    expect(await rowsThatHold('Quillfeather')).toEqual([expect.stringContaining('sheet_row')]);
    await manager.ask('DELETE', `/sheets/${sheet.id}`);
  });

  it('is called about no new finding', async () => {
    const { rows } = await db.pool.query<{ unit: number; owner: number }>(
      'SELECT u.id AS unit, o.id AS owner FROM unit u JOIN owner o ON o.id = u.owner_id WHERE o.erased_at IS NOT NULL LIMIT 1',
    );
    const { unit: unitId, owner: ownerId } = rows[0]!;
    const reason = { unitId, ownerId, source: 'PL-7', positionId: 1, place: 1, partId: 1, verdict: 'wrong' as const };
    const plan = {
      verdicts: [],
      confirmed: [],
      flags: [],
      flagsCleared: [],
      reasonsWithdrawn: [],
      notes: [],
      notesClosed: [],
    };
    const opened = await asProgram(() =>
      shop.store.transaction((tx) =>
        tx.installs.apply(
          {
            ...plan,
            reasons: [{ ...reason, action: 'call-back', detail: { rule: 'R', required: null, sentence: 's' } }],
          } as never,
          { revision: 1, recheckId: null },
        ),
      ),
    );
    expect(opened.callbacksOpened).toBe(0);
  });
});

describe('a spreadsheet that was brought', () => {
  it('is shown for a day, and thrown away after it by nobody’s hand', async () => {
    const manager = await shop.as('manager');
    const [old, fresh] = [await sheetWith(theirRow('')), await sheetWith(theirRow(''))];
    await db.pool.query(`UPDATE sheet SET created_at = now() - INTERVAL '25 hours' WHERE id = $1`, [old.id]);
    expect((await manager.get(`/sheets/${old.id}`)).status).toBe(404);
    expect(await asProgram(() => dropOldSheets(shop))).toBe(1);
    const { rows } = await db.pool.query<{ sheet_id: number }>('SELECT DISTINCT sheet_id FROM sheet_row');
    expect(rows).toEqual([{ sheet_id: fresh.id }]);
    expect((await manager.ask('DELETE', `/sheets/${fresh.id}`)).status).toBe(204);
  });
});

describe('how long an owner is kept', () => {
  it('is for ever until it is settled; then those are shown first who would go, and go with the next day', async () => {
    const manager = await shop.as('manager');
    const old = await ticketOf('16050105', '2019-03-01');
    const recent = await ticketOf('16050106', '2025-03-01');
    const first = await manager.get<Retention>('/retention');
    expect(first.body).toMatchObject({ years: null, due: [], dueCount: 0 });
    const tried = await manager.get<Retention>('/retention?years=5');
    expect(tried.body).toMatchObject({
      years: null,
      dueCount: 1,
      due: [{ id: old.owner.id, name: NAME, lastSeenOn: '2019-03-01' }],
    });
    const ports = { store: shop.store, clock: { now: () => shop.clock.nowMs, today: () => shop.clock.today } };
    const everyDay = () => asProgram(() => forgetDueOwners(ports));
    expect(await everyDay()).toBe(0);
    expect((await manager.ask('PUT', '/retention', { years: 5 })).status).toBe(428);
    const kept = await manager.change<Retention>('PUT', '/retention', first.body.version, { years: 5 });
    expect([kept.status, kept.body.dueCount]).toEqual([200, 1]);
    const stale = await manager.change<Problem>('PUT', '/retention', first.body.version, { years: 6 });
    expect([stale.status, (stale.body.current as Retention).years]).toEqual([412, 5]);
    expect(await everyDay()).toBe(1);
    expect(await everyDay()).toBe(0);
    const { body } = await manager.get<PersonalData>(`/owners/${old.owner.id}/personal-data`);
    expect(body.owner).toMatchObject({ name: 'erased' });
    const { body: stays } = await manager.get<PersonalData>(`/owners/${recent.owner.id}/personal-data`);
    expect(stays.owner).toMatchObject({ name: NAME });
  });
});
