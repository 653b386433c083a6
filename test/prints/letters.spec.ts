import { writeFileSync } from 'node:fs';
import { parse } from 'papaparse';
import { USUAL_PRINTS, type CallbackPage, type CallbackView, type WrittenToOwners } from '../../libs/contracts';
import { LABEL_LAYOUTS, placeOfLabel } from '../../libs/papers';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from '../api/api-shop';
import { readPdf } from './read-pdf';

const db = withDatabase();
let shop: ApiShop;
let counter: Caller;

/** Six owners with a callback each; the first is to stop using the unit, the last is of another location. */
async function fillCallbacks(): Promise<void> {
  await db.pool.query(`
    INSERT INTO owner (id, location_id, name, phone, email, address, consent, declined) VALUES
      (1, 1, 'Ole Brand', '555 0101', 'ole@mail.example', E'1 Elm Road\\nOttermouth', true, '{}'),
      (2, 1, 'Świerk & Søn', '555 0102', 'swierk@mail.example', '2 Elm Road, Ottermouth', true, '{}'),
      (3, 1, 'No Letters', '555 0103', 'nl@mail.example', '3 Elm Road', true, '{letter}'),
      (4, 1, 'Never Agreed', '555 0104', 'never@mail.example', '4 Elm Road', false, '{}'),
      (5, 1, '=cmd|calc', '555 0105', '', '', true, '{phone}'),
      (6, 2, 'Far Away', '555 0106', 'far@mail.example', '6 Elm Road', true, '{}');
    INSERT INTO unit (id, owner_id, line_id, model_id, serial, built, built_from, built_to)
      SELECT n, n, 1, 1, '1703000' || n, '{[17200,17231)}', 17200, 17231 FROM generate_series(1, 6) n;
    INSERT INTO callback (id, unit_id, owner_id, urgent, next_on) VALUES
      (1, 1, 1, false, '2026-11-19'), (2, 2, 2, true, NULL), (3, 3, 3, false, NULL), (4, 4, 4, false, '2026-11-20'),
      (5, 5, 5, false, '2026-11-21'), (6, 6, 6, false, NULL);
    INSERT INTO callback_reason (callback_id, source_id, position_id, place, verdict, action, detail)
      SELECT n, (SELECT min(id) FROM source), 1, 1, 'outdated', 'call-back',
             '{"sentence":"The auger pin on the left is no longer the right one."}' FROM generate_series(1, 6) n;
    SELECT setval('callback_id_seq', 6);`);
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  await fillCallbacks();
  counter = await shop.as('counter');
  const prints = { ...USUAL_PRINTS, shopName: 'Mill Repairs', address: '1 Mill Lane', phone: '555 0100' };
  expect((await (await shop.as('manager')).settle('PUT', '/settings/prints', prints)).status).toBe(200);
}, 300_000);

const names = async (state: string): Promise<string[]> =>
  (await counter.get<CallbackPage>(`/callbacks?state=${state}`)).body.items.map(({ owner }) => owner.name);

async function pdf(path: string, keep: string) {
  const response = await fetch(`${shop.api.url}/api${path}`, { headers: { cookie: counter.cookie } });
  expect([response.status, response.headers.get('content-type')]).toEqual([200, 'application/pdf']);
  const bytes = new Uint8Array(await response.arrayBuffer());
  if (process.env['KEEP_PRINTS']) writeFileSync(`${process.env['KEEP_PRINTS']}/${keep}`, bytes);
  return readPdf(bytes);
}

describe('whom to call today', () => {
  it('is stop use first, then who waits without a day, then by the day of the next try; a later day is another list', async () => {
    expect(await names('due')).toEqual(['Świerk & Søn', 'No Letters', 'Ole Brand', 'Never Agreed']);
    expect(await names('later')).toEqual(['=cmd|calc']);
  });

  it('moves to another day with an attempt, and keeps what the owner does not want', async () => {
    const { body } = await counter.get<CallbackView>('/callbacks/4');
    const attempt = { how: 'phone', outcome: 'no-answer', nextOn: '2026-11-23', declined: ['email'] };
    const tried = await counter.change<CallbackView>('POST', '/callbacks/4/attempts', body.version, attempt);
    expect(tried.body).toMatchObject({ nextOn: '2026-11-23', owner: { declined: ['email'] } });
    expect(await names('later')).toEqual(['=cmd|calc', 'Never Agreed']);
    const past = { ...attempt, nextOn: '2026-11-19' };
    const refused = await counter.change('POST', '/callbacks/4/attempts', tried.body.version, past);
    expect([refused.status, refused.body]).toMatchObject([400, { field: 'nextOn' }]);
  });

  it('goes through pages without losing or doubling one', async () => {
    await db.pool.query(`
      INSERT INTO unit (id, owner_id, built, built_from, built_to) SELECT n, 1, '{}', 0, 0 FROM generate_series(100, 349) n;
      INSERT INTO callback (unit_id, owner_id, urgent, next_on)
        SELECT n, 1, n % 3 = 0, CASE WHEN n % 4 = 0 THEN NULL ELSE DATE '2026-11-20' - n % 5 END FROM generate_series(100, 349) n`);
    const seen: number[] = [];
    for (let after = ''; ;) {
      const { body } = await counter.get<CallbackPage>(`/callbacks?state=due${after && `&after=${after}`}`);
      seen.push(...body.items.map(({ id }) => id));
      if (body.next === null) break;
      after = body.next;
    }
    await db.pool.query('DELETE FROM callback WHERE unit_id >= 100');
    expect(seen).toHaveLength(253);
    expect(new Set(seen).size).toBe(253);
  });

  it('leaves as CSV that no spreadsheet runs, without a way in that the owner has not agreed to', async () => {
    const response = await fetch(`${shop.api.url}/api/callbacks/list.csv?state=open`, {
      headers: { cookie: counter.cookie },
    });
    expect(response.headers.get('content-type')).toContain('text/csv');
    const { data } = parse<Record<string, string>>(await response.text(), { header: true, skipEmptyLines: true });
    const of = (name: string) => data.find(({ Owner }) => Owner === name)!;
    expect(data).toHaveLength(5);
    expect(of("'=cmd|calc")).toMatchObject({ Phone: '', 'Agreed to be called': 'yes' });
    expect(of('Never Agreed')).toMatchObject({ Phone: '', 'E-mail': '', Address: '', 'Agreed to be called': 'no' });
    expect(of('No Letters')).toMatchObject({ Phone: '555 0103', Address: '' });
    expect(of('Świerk & Søn')['What to say']).toContain('no longer the right one');
  });
});

describe('letters to a selection', () => {
  let answer: WrittenToOwners;

  it('are noted as attempts for those who may be written to; every other owner is named with the reason', async () => {
    const asked = await counter.ask<WrittenToOwners>('POST', '/callbacks/letters', { ids: [1, 2, 3, 4, 5, 6] });
    expect(asked.status).toBe(200);
    answer = asked.body;
    expect(answer.written.map(({ name }) => name)).toEqual(['Świerk & Søn', 'Ole Brand']);
    expect(answer.leftOut.map(({ name, why }) => `${name}: ${why}`)).toEqual([
      'No Letters: The owner does not want letters.',
      '=cmd|calc: No address is known.',
      'Never Agreed: The owner has not agreed to be contacted.',
    ]);
    const { rows } = await db.pool.query<{ id: number }>(
      `SELECT callback_id AS id FROM callback_attempt WHERE how = 'letter' AND outcome = 'sent' ORDER BY 1`,
    );
    expect(rows.map(({ id }) => id)).toEqual([1, 2]);
  });

  it('come out in one print, a sheet for each', async () => {
    const { pages } = await pdf(`/callbacks/letters/${answer.batch}/letters.pdf`, 'letters.pdf');
    expect(pages).toHaveLength(2);
    const [urgent, usual] = pages;
    expect(urgent!.text).toContain('Please stop using your Snow thrower 2 S2 and call us');
    expect(urgent!.text).toContain('Dear Świerk & Søn,');
    expect(usual!.text).toContain('The auger pin on the left is no longer the right one.');
    expect(usual!.text).toContain('20 Nov 2026');
    expect(usual!.text).toContain('please call 555 0100');
    // The window of an envelope: the name stands between 20 and 65 mm from the top, left of the middle.
    const name = usual!.items.find(({ text }) => text.startsWith('Ole'))!;
    expect(name.y).toBeGreaterThan(22);
    expect(name.y).toBeLessThan(65);
    expect(name.x).toBeLessThan(30);
  });

  it('come with labels, each inside its place on the sheet', async () => {
    const { pages } = await pdf(`/callbacks/letters/${answer.batch}/labels.pdf`, 'labels.pdf');
    const layout = LABEL_LAYOUTS['a4-3x8'];
    const words = ['Świerk', 'Ole'];
    words.forEach((word, n) => {
      const place = placeOfLabel(layout, n);
      const item = pages[0]!.items.find(({ text }) => text.includes(word.slice(1)))!;
      expect(item.x).toBeGreaterThan(place.x);
      expect(item.x).toBeLessThan(place.x + layout.width / 2);
      expect(item.y).toBeGreaterThan(place.y);
      expect(item.y).toBeLessThan(place.y + layout.height / 2);
    });
  });

  it('are printed again without a second attempt, but not for who has declined meanwhile', async () => {
    await db.pool.query(`UPDATE owner SET declined = '{letter}' WHERE id = 2`);
    expect((await pdf(`/callbacks/letters/${answer.batch}/letters.pdf`, 'again.pdf')).pages).toHaveLength(1);
    const { rows } = await db.pool.query('SELECT 1 FROM callback_attempt WHERE batch IS NOT NULL');
    expect(rows).toHaveLength(2);
    expect((await counter.get('/callbacks/letters/no-such/letters.pdf')).status).toBe(404);
  });
});
