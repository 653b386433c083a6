import { once } from 'node:events';
import { connect } from 'node:net';
import { gzipSync } from 'node:zlib';
import { Client } from 'pg';
import type { BulletinDetail, CallbackView, Problem, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller, rule, type Answer } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
/** What the security log was told, one line each. */
const lines: string[] = [];
let cookie: string;
let ticket: TicketView;

beforeAll(async () => {
  shop = await ApiShop.open(db, {}, { write: (line) => void lines.push(line) });
  cookie = (await shop.as('manager')).cookie;
  ticket = await shop.newTicket('18020009');
}, 300_000);

afterEach(() => jest.restoreAllMocks());

/** Writes the bytes to the API as they are and reads until it closes the connection. */
async function spoken(bytes: string): Promise<string> {
  const { hostname, port } = new URL(shop.api.url);
  const line = connect(Number(port), hostname);
  let heard = '';
  line.on('data', (piece: Buffer) => (heard += piece.toString()));
  line.on('error', () => undefined);
  line.write(bytes);
  await once(line, 'close');
  return heard;
}

describe('what is sent over the wire', () => {
  const head = () => `POST /api/look-up HTTP/1.1\r\nHost: shop\r\nCookie: ${cookie}\r\n`;

  it('37: is not unpacked: a packed body is refused however large it would become', async () => {
    const answer = await fetch(`${shop.api.url}/api/look-up`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'content-encoding': 'gzip', cookie },
      body: gzipSync(Buffer.alloc(4_000_000, 32)),
    });
    expect([400, 415]).toContain(answer.status);
  });

  // What would be accepted by itself, and behind it a request of its own for who reads the length otherwise.
  const JSON_BODY = '{"lineCode":"SNOW-2"}';
  const NEXT = 'GET /api/health HTTP/1.1\r\nHost: shop\r\nConnection: close\r\n\r\n';
  const pieces = `${JSON_BODY.length.toString(16)}\r\n${JSON_BODY}\r\n0\r\n\r\n`;
  const length = `Content-Length: ${JSON_BODY.length}\r\n`;

  it('37: is heard, one request after the other, when it says truly how long it is', async () => {
    for (const rest of [`${length}\r\n${JSON_BODY}`, `Transfer-Encoding: chunked\r\n\r\n${pieces}`]) {
      const heard = await spoken(`${head()}Content-Type: application/json\r\n${rest}${NEXT}`);
      expect(heard.match(/HTTP\/1\.1 \d+/g)).toEqual(['HTTP/1.1 200', 'HTTP/1.1 200']);
    }
  });

  it.each([
    ['a length and pieces at once', `${length}Transfer-Encoding: chunked\r\n\r\n${pieces}`],
    ['two lengths', `${length}Content-Length: 2\r\n\r\n${JSON_BODY}`],
    ['a length that is no number', `Content-Length: many\r\n\r\n${JSON_BODY}`],
    ['a piece whose size is no number', `Transfer-Encoding: chunked\r\n\r\nzz\r\n${JSON_BODY}\r\n0\r\n\r\n`],
    ['a header that is broken in two', `X-Name: a\rb: c\r\n${length}\r\n${JSON_BODY}`],
  ])('37: is refused with %s, and what comes after is not listened to', async (_, rest) => {
    const heard = await spoken(`${head()}Content-Type: application/json\r\n${rest}${NEXT}`);
    expect(heard.match(/HTTP\/1\.1 \d+/g)).toEqual([expect.stringMatching(/HTTP\/1\.1 4\d\d/)]);
  });

  it('36: takes the last of two fields of one name, and a number that is none in the range for no id', async () => {
    const send = (body: string) =>
      fetch(`${shop.api.url}/api/tickets`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', cookie },
        body,
      });
    for (const id of ['9007199254740993', '-0', '1.5', '1e309'])
      expect([id, (await send(`{"unitId":${id},"complaint":"x"}`)).status]).toEqual([id, 400]);
    // Known by its id, the unit is in the shop already (409); by anything else it is no id at all.
    const { id } = ticket.unit;
    expect((await send(`{"unitId":${id},"complaint":"y"}`)).status).toBe(409);
    expect((await send(`{"unitId":${id},"unitId":"x","complaint":"y"}`)).status).toBe(400);
    expect((await send(`{"unitId":"x","unitId":${id},"complaint":"y"}`)).status).toBe(409);
  });

  it('13: is refused as too large when its cookie is', async () => {
    const heard = await spoken(
      `GET /api/session HTTP/1.1\r\nHost: shop\r\nConnection: close\r\nCookie: revright=${'x'.repeat(20_000)}\r\n\r\n`,
    );
    expect(heard).toMatch(/^HTTP\/1\.1 431 /);
    expect((await (await shop.as('manager')).get('/session')).status).toBe(200);
  });
});

describe('a ticket of another location', () => {
  it('4: is answered as one that is not there, after the same questions', async () => {
    const far = await shop.elsewhere('technician');
    await far.get('/session');
    const asked = jest.spyOn(Client.prototype, 'query');
    const told = async (id: number) => {
      asked.mockClear();
      const answer: Answer<Problem> = await far.get<Problem>(`/tickets/${id}`);
      // With whose eyes a connection looks is told anew only where somebody else had it before.
      const questions = asked.mock.calls
        .map(([query]) => textOf(query))
        .filter((one) => !one.includes('revright.sight'));
      return { status: answer.status, body: JSON.stringify(answer.body).replaceAll(String(id), 'N'), questions };
    };
    const [there, absent] = [await told(ticket.id), await told(2_000_000_000)];
    expect(there.status).toBe(404);
    expect(there.questions.length).toBeGreaterThan(0);
    expect(there).toEqual(absent);
  });
});

describe('the stages and the papers', () => {
  it('39: are not skipped, and no verdict is set by hand', async () => {
    const technician = await shop.as('technician');
    const moved = await technician.change<Problem>('POST', `/tickets/${ticket.id}/stage`, ticket.version, {
      to: 'handover',
    });
    expect([moved.status, moved.body.type]).toEqual([409, 'wrong-stage']);
    const how = `POST /api/tickets/${ticket.id}/stage: wrong-stage`;
    expect(JSON.parse(lines.at(-1)!)).toMatchObject({ act: 'refused', personId: 1, how });
    const typed = await technician.change<TicketView>('PATCH', `/tickets/${ticket.id}`, ticket.version, {
      complaint: 'Auger jams',
      verdict: 'right',
      stage: 'handover',
    });
    expect([typed.status, typed.body.stage]).toEqual([200, 'intake']);
    ticket = typed.body;
  });

  it('39: are not gone back to once the unit is handed over', async () => {
    const [technician, manager] = [await shop.as('technician'), await shop.as('manager')];
    const { id, version } = await shop.newTicket('18020039');
    await db.pool.query(`UPDATE ticket SET stage = 'handover', handed_over = true, closed_at = now() WHERE id = $1`, [
      id,
    ]);
    const before = (await technician.get(`/tickets/${id}`)).body;
    for (const [method, path, body] of [
      ['POST', 'stage', { to: 'repair', reason: 'one more look' }],
      ['POST', 'stage', { to: 'handed-over' }],
      ['PATCH', '', { complaint: 'another one' }],
      ['PUT', 'places', { side: 'left', places: [{ position: 'BELT', place: 1, partText: '80-001' }] }],
      ['POST', 'picks', { position: 'BELT', partText: '80-001', quantity: 1, purpose: 'fit' }],
      ['PUT', 'labour', { lines: [] }],
      ['POST', 'hold', { reason: 'not so fast' }],
      ['POST', 'cancel', { reason: 'never happened' }],
    ] as const) {
      const at = `/tickets/${id}${path === '' ? '' : `/${path}`}`;
      const answer = await manager.change<Problem>(method, at, version, body);
      expect([method, path, answer.status, answer.body.type]).toEqual([method, path, 409, 'wrong-stage']);
    }
    expect((await technician.get(`/tickets/${id}`)).body).toEqual(before);
  });

  it('40: are on file once under one number, which a changed paper does not take from the first', async () => {
    const manager = await shop.as('manager');
    const paper = {
      ...{ publisher: 'Holmgard', number: 'SB-40', title: 'As it was', issued: '2026-10-01', received: '2026-10-20' },
      draft: { opens: [rule('BELT-40', { positions: ['BELT'], required: 'HOLM/80002' })], ends: [] },
    };
    const first = await manager.ask<BulletinDetail>('POST', '/bulletins', paper);
    expect(first.status).toBe(201);
    for (const again of [paper, { ...paper, title: 'Edited' }, { ...paper, number: 'sb 40', publisher: 'HOLMGARD' }]) {
      const { status, body } = await manager.ask<Problem>('POST', '/bulletins', again);
      expect([status, body.type, body.field]).toEqual([409, 'conflict', 'number']);
    }
    const { id, version } = first.body;
    const published = await manager.change('POST', `/bulletins/${id}/publish`, version, {
      whatIfRevision: (await shop.store.rulebook.latest()).revision,
    });
    expect(published.status).toBe(200);
    const now = (await manager.get<BulletinDetail>(`/bulletins/${id}`)).body;
    expect(now).toMatchObject({ title: 'As it was', state: 'published' });
    for (const stated of [version, now.version]) {
      const edited = await manager.change<Problem>('PUT', `/bulletins/${id}`, stated, { ...paper, title: 'Edited' });
      expect([edited.status, edited.body.type]).toEqual([409, 'already-done']);
    }
    expect((await manager.get(`/bulletins/${id}`)).body).toEqual(now);
  });

  it('40: hold ten thousand entries and no more', async () => {
    const manager = await shop.as('manager');
    const save = (number: string, entries: number) =>
      manager.ask<BulletinDetail & Problem>('POST', '/bulletins', {
        ...{ publisher: 'Holmgard', number, title: 'Long', issued: '2026-10-01', received: '2026-10-20' },
        draft: {
          opens: Array.from({ length: entries }, (_, n) => ({
            key: `LONG-${n}`,
            line: 'SNOW-2',
            positions: ['BELT'],
            models: ['S2'],
            required: 'HOLM/80001',
            built: { from: '2013-01-01', to: '2013-02-01' },
          })),
          ends: [],
        },
      });
    const whole = await save('SB-LONG', 10_000);
    expect([whole.status, whole.body.ruleCount]).toEqual([201, 10_000]);
    const more = await save('SB-LONGER', 10_001);
    expect([more.status, more.body.field]).toEqual([400, 'draft.opens']);
    expect((await manager.get('/bulletins')).status).toBe(200);
  }, 120_000);

  it.each(['0001-01-01', '9999-12-31'])('40: may be dated %s without breaking anything', async (issued) => {
    const manager = await shop.as('manager');
    const paper = { publisher: 'Holmgard', number: `Y-${issued}`, title: 'Of another age', issued, received: issued };
    const saved = await manager.ask<{ id: number; issued: string }>('POST', '/bulletins', { ...paper, draft: {} });
    expect(saved.status).toBe(201);
    expect((await manager.get(`/bulletins/${saved.body.id}`)).body).toMatchObject({ issued });
    expect((await manager.get('/bulletins')).status).toBe(200);
  });
});

describe('a callback', () => {
  it('41: is settled once: the second time by what was seen before is 412, by what is there now 409', async () => {
    const [manager, counter] = [await shop.as('manager'), await shop.as('counter')];
    const { unit } = await shop.newTicket('18020041');
    const made = await db.pool.query<{ id: number }>(
      'INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2) RETURNING id',
      [unit.id, unit.owner.id],
    );
    const path = `/callbacks/${made.rows[0]!.id}`;
    const { version } = (await counter.get<CallbackView>(path)).body;
    const settle = (who: Caller, at: number, outcome: string) =>
      who.change<CallbackView & Problem>('POST', `${path}/settle`, at, { outcome, reason: 'as the owner said' });
    const settled = await settle(counter, version, 'part-sent');
    expect([settled.status, settled.body.state]).toEqual([200, 'settled']);
    const before = (await counter.get<CallbackView>(path)).body;
    expect((await settle(manager, version, 'unit-gone')).status).toBe(412);
    for (const outcome of ['unit-gone', 'booked'])
      expect((await settle(manager, settled.body.version, outcome)).body.type).toBe('already-done');
    const attempt = { how: 'phone', outcome: 'reached', note: '' };
    expect((await manager.change('POST', `${path}/attempts`, settled.body.version, attempt)).status).toBe(409);
    expect((await counter.get<CallbackView>(path)).body).toEqual(before);
  });
});

function textOf(query: unknown): string {
  return typeof query === 'string' ? query : String((query as { text?: unknown } | null)?.text);
}
