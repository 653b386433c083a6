import { startWorker } from '../../apps/worker/src/start-worker';
import type {
  LookUpAnswer,
  Problem,
  SavedSerialScheme,
  SavedStandardEdition,
  SerialSchemeRow,
  StandardEditionRow,
  TicketView,
  TriedSerial,
} from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { finished } from '../recheck/wait';
import { ApiShop, type Answer, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let manager: Caller;
let technician: Caller;
const problems: unknown[] = [];

beforeAll(async () => {
  shop = await ApiShop.open(db);
  manager = await shop.as('manager');
  technician = await shop.as('technician');
  const worker = await startWorker({
    config: { redisUrl: undefined, workerConcurrency: 2, timeZone: 'UTC' },
    store: shop.store,
    clock: { now: () => shop.clock.nowMs, today: () => shop.clock.today },
    onError: (error) => problems.push(error),
    sweepEveryMs: 500,
  });
  db.beforeClose(() => worker.close());
}, 300_000);
afterEach(() => expect(problems).toEqual([]));

const DATED = {
  maker: 'HOLM',
  name: 'year, month, running number',
  lines: [] as string[],
  validFrom: null,
  validTo: null,
  fields: [{ kind: 'year-two-digits' }, { kind: 'month-number' }, { kind: 'sequence', length: 4 }] as object[],
};
/** Year digit, a character that says nothing, month, running number. */
const DIGIT = {
  ...DATED,
  name: 'year digit',
  validFrom: '2012-01-01',
  fields: [
    { kind: 'year-digit' },
    { kind: 'other', length: 1 },
    { kind: 'month-number' },
    { kind: 'sequence', length: 4 },
  ],
};

const again = (ticket: TicketView) => technician.get(`/tickets/${ticket.id}`).then(({ body }) => body);
const schemes = () => manager.get<SerialSchemeRow[]>('/serial-schemes').then(({ body }) => body);
const daysOf = (ticket: TicketView) => ticket.unit.buildDates.days;
const verdicts = ({ places }: TicketView) => places.map(({ found }) => found?.verdict?.verdict ?? null);

/** A ticket whose unit holds the early pin in both places. */
async function withEarlyPins(serial: string): Promise<TicketView> {
  const opened = await shop.newTicket(serial);
  const at = await technician.change('POST', `/tickets/${opened.id}/stage`, opened.version, { to: 'inspection' });
  const places = [1, 2].map((place) => ({ position: 'AUG-PIN', place, partText: '70-412A', condition: 'sound' }));
  const path = `/tickets/${opened.id}/places`;
  const { body } = await technician.change('PUT', path, at.body.version, { side: 'found', places });
  return body;
}

async function settled<T extends SavedSerialScheme | SavedStandardEdition>(asked: Promise<Answer<unknown>>) {
  const { status, body } = await asked;
  if (status >= 300) throw new Error(JSON.stringify(body));
  const { saved, recheck } = body as T;
  return { saved: saved as T['saved'], recheck: await finished(shop.store, recheck.id) };
}

describe('a serial scheme', () => {
  it('that is entered dates every unit it reads, and judges what they hold by the new days', async () => {
    const ticket = await withEarlyPins('47030001');
    const bare = await shop.newTicket('58040002');
    expect(ticket.unit.serialReading).toContain('fits no scheme');
    expect(daysOf(ticket)).toEqual([{ from: '2012-01-01', to: '2021-01-01' }]);
    expect(ticket.flags.map(({ verdict }) => verdict)).toEqual(['undecided', 'undecided']);

    const asked = manager.ask('POST', '/serial-schemes', { scheme: DIGIT });
    const { saved, recheck } = await settled<SavedSerialScheme>(asked);
    expect(saved.scheme).toMatchObject({ id: 'HOLM-A', maker: 'HOLM', source: 'common practice, no source' });
    expect(recheck).toMatchObject({ cause: 'evidence', state: 'done', setAside: 0, flagsCleared: 2 });
    const after = await again(ticket);
    expect(daysOf(after)).toEqual([{ from: '2014-03-01', to: '2014-04-01' }]);
    expect(verdicts(after).slice(0, 2)).toEqual(['right', 'right']);
    expect(after.flags.filter(({ state }) => state === 'open')).toEqual([]);
    expect(daysOf(await again(bare))).toEqual([{ from: '2015-04-01', to: '2015-05-01' }]);
    const { rows } = await db.pool.query<object>('SELECT serial_scheme, serial_key FROM unit WHERE id = $1', [
      ticket.unit.id,
    ]);
    expect(rows).toEqual([{ serial_scheme: 'HOLM-A', serial_key: expect.any(String) as string }]);
  });

  it('that is changed takes back what it said, for units that left long ago too', async () => {
    const ticket = await withEarlyPins('49030001');
    await db.pool.query(`UPDATE ticket SET closed_at = '2017-01-01', handed_over = TRUE WHERE id = $1`, [ticket.id]);
    const row = (await schemes()).find(({ scheme }) => scheme.id === 'HOLM-A')!;
    expect(row.units).toBeGreaterThan(0);
    const path = `/serial-schemes/${row.id}`;
    const narrowed = { ...DIGIT, validTo: '2013-01-01' };
    const { saved } = await settled<SavedSerialScheme>(manager.change('PUT', path, row.version, { scheme: narrowed }));
    expect(saved).toMatchObject({ version: row.version + 1, updatedBy: 'The manager' });
    expect((await schemes()).find(({ id }) => id === row.id)!.units).toBe(0);
    expect(daysOf(await again(ticket))).toEqual([{ from: '2012-01-01', to: '2021-01-01' }]);
    const stored = await db.pool.query('SELECT DISTINCT verdict FROM install WHERE unit_id = $1', [ticket.unit.id]);
    expect(stored.rows).toEqual([{ verdict: 'undecided' }]);

    const stale = await manager.change<Problem>('PUT', path, row.version, { scheme: DIGIT });
    expect(stale.status).toBe(412);
    expect(stale.body).toMatchObject({ current: { version: row.version + 1 } });
  });

  it('is refused with one sentence when it cannot be read, and to whoever may not edit', async () => {
    const refusalOf = async (scheme: object) =>
      (await manager.ask<Problem>('POST', '/serial-schemes', { scheme })).body;
    const twice = { ...DATED, name: 'twice', fields: [{ kind: 'year-digit' }, { kind: 'year-two-digits' }] };
    expect((await refusalOf(twice)).detail).toBe('scheme.fields: a scheme has at most one year field.');
    expect((await refusalOf({ ...DATED, maker: 'NONE' })).detail).toContain("no maker 'NONE'");
    expect((await refusalOf({ ...DATED, name: 'other', lines: ['TL-9'] })).detail).toContain('it has SNOW-2');
    expect(await refusalOf(DATED)).toMatchObject({ status: 409, field: 'scheme.name' });
    expect((await technician.ask('POST', '/serial-schemes', { scheme: DIGIT })).status).toBe(403);
  });

  it('can be tried on a serial without being kept', async () => {
    const asked = { scheme: DIGIT, serial: '47-03 0001' };
    const { body } = await technician.ask<TriedSerial>('POST', '/serial-schemes/try', asked);
    expect(body.readings[0]!.fields.map(({ text, meaning }) => `${text}: ${meaning}`)).toEqual([
      '4: a year ending in 4',
      '7: not about the date',
      '03: March',
      '0001: the running number',
    ]);
    expect(body.readings[0]!.days).toEqual([
      { from: '2014-03-01', to: '2014-04-01' },
      { from: '2024-03-01', to: '2024-04-01' },
    ]);
    expect(await schemes()).toHaveLength(2);
  });
});

describe('an edition of a standard', () => {
  const edition = {
    standard: 'HX 12',
    edition: '2015',
    approved: '2015-05-01',
    published: null,
    subject: 'snow throwers',
    source: 'invented',
  };

  it('that is entered can be named on a plate, and a later change of its day judges those units again', async () => {
    const added = await settled<SavedStandardEdition>(manager.ask('POST', '/standard-editions', { edition }));
    const ticket = await withEarlyPins('no serial scheme fits this');
    const evidence = { kind: 'standard-edition', standard: 'hx-12', edition: '2015' };
    await technician.change('POST', `/units/${ticket.unit.id}/evidence`, ticket.unit.version, { evidence });
    expect(daysOf(await again(ticket))).toEqual([{ from: '2015-05-01', to: '2021-01-01' }]);

    const later = { ...edition, approved: '2016-06' };
    const path = `/standard-editions/${added.saved.id}`;
    await settled<SavedStandardEdition>(manager.change('PUT', path, added.saved.version, { edition: later }));
    const after = await again(ticket);
    expect(daysOf(after)).toEqual([{ from: '2016-06-01', to: '2021-01-01' }]);
    expect(verdicts(after).slice(0, 2)).toEqual(['wrong', 'wrong']);
  });

  it('stands on the list once, however its standard is written, beside the published ones', async () => {
    const twin = { ...edition, standard: 'hx12' };
    const { status, body } = await manager.ask<Problem>('POST', '/standard-editions', { edition: twin });
    expect([status, body.detail]).toEqual([409, 'HX 12 of 2015 is on the list already; change that entry.']);
    const { body: rows } = await technician.get<StandardEditionRow[]>('/standard-editions');
    expect(rows.filter((row) => row.edition.standard === 'HX 12')).toHaveLength(1);
    const published = rows.find((row) => row.edition.standard === 'ANSI B71.3' && row.edition.edition === '2005');
    expect(published!.edition).toMatchObject({
      approved: '2004-12-15',
      source: expect.stringContaining('title pages') as string,
    });
  });
});

describe('which part, for a walk-in', () => {
  const asked = async () => {
    const request = { lineCode: 'SNOW-2', modelNumber: null, serial: null, evidence: [], options: {} };
    const { body } = await technician.ask<LookUpAnswer>('POST', '/look-up', request);
    return body;
  };

  it('is answered by the catalogue of the moment, whoever changed it and however often it was asked before', async () => {
    const before = await asked();
    expect(await asked()).toEqual(before);
    const { rows } = await shop.pool.query<{ id: number; name: string }>(
      `SELECT l.id, l.name FROM product_line l WHERE l.code = 'SNOW-2'`,
    );
    const renamed = async (name: string) => {
      await shop.pool.query('UPDATE product_line SET name = $1 WHERE id = $2', [name, rows[0]!.id]);
      return (await asked()).line.name;
    };
    expect(await renamed('Another name')).toBe('Another name');
    expect(await renamed(rows[0]!.name)).toBe(rows[0]!.name);
    await shop.pool.query(`UPDATE position SET name = name || ' (moved)' WHERE line_id = $1`, [rows[0]!.id]);
    expect((await asked()).positions.map(({ name }) => name)).toEqual(
      before.positions.map(({ name }) => `${name} (moved)`),
    );
    await shop.pool.query(`UPDATE position SET name = left(name, -8) WHERE line_id = $1`, [rows[0]!.id]);
  });

  it('names parts as they are called now, and is the same while only another line changes', async () => {
    const before = await asked();
    const required = before.rulings.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.required ?? []))[0]!;
    await shop.pool.query(`UPDATE part SET name = 'Called anew' WHERE key = $1`, [required.key]);
    const now = (await asked()).rulings.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.required ?? []));
    expect(now.find(({ key }) => key === required.key)!.name).toBe('Called anew');
    await shop.pool.query('UPDATE part SET name = $1 WHERE key = $2', [required.name, required.key]);
    expect(await asked()).toEqual(before);
  });
});
