import { once } from 'node:events';
import { connect } from 'node:net';
import { gzipSync } from 'node:zlib';
import { Client } from 'pg';
import type { Problem, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD, type Answer } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
let cookie: string;
let ticket: TicketView;

beforeAll(async () => {
  shop = await ApiShop.open(db);
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
  const head = () => `POST /api/look-up HTTP/1.1\r\nHost: shop\r\nConnection: close\r\nCookie: ${cookie}\r\n`;

  it('37: is not unpacked: a packed body is refused however large it would become', async () => {
    const answer = await fetch(`${shop.api.url}/api/look-up`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'content-encoding': 'gzip', cookie },
      body: gzipSync(Buffer.alloc(4_000_000, 32)),
    });
    expect([400, 415]).toContain(answer.status);
  });

  it.each([
    [
      'a length and pieces at once',
      'Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\nGET /api/x HTTP/1.1\r\n\r\n',
    ],
    ['two lengths', 'Content-Length: 2\r\nContent-Length: 20\r\n\r\n{}'],
    ['a length that is no number', 'Content-Length: many\r\n\r\n{}'],
    ['a piece whose size is no number', 'Transfer-Encoding: chunked\r\n\r\nzz\r\n{}\r\n0\r\n\r\n'],
    ['a header that is broken in two', 'X-Name: a\rb: c\r\nContent-Length: 2\r\n\r\n{}'],
  ])('37: is refused with %s, and what comes after is not listened to', async (_, rest) => {
    const heard = await spoken(`${head()}Content-Type: application/json\r\n${rest}`);
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
    expect((await send('{"unitId":1,"unitId":"x","complaint":"y"}')).status).toBe(400);
  });
});

describe('a ticket of another location', () => {
  it('4: is answered as one that is not there, after the same questions', async () => {
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash)
       SELECT 'far', 'Far', 'technician', 2, password_hash FROM person WHERE login = 'manager'`,
    );
    const signedIn = await shop.signIn('far', PASSWORD);
    const far = new Caller(shop.api.url, signedIn.headers.get('set-cookie')!.split(';')[0]!);
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
    expect(moved.status).toBe(409);
    const typed = await technician.change<TicketView>('PATCH', `/tickets/${ticket.id}`, ticket.version, {
      complaint: 'Auger jams',
      verdict: 'right',
      stage: 'handover',
    });
    expect([typed.status, typed.body.stage]).toEqual([200, 'intake']);
  });

  it.each(['0001-01-01', '9999-12-31'])('40: may be dated %s without breaking anything', async (issued) => {
    const manager = await shop.as('manager');
    const paper = { publisher: 'Holmgard', number: `Y-${issued}`, title: 'Of another age', issued, received: issued };
    const saved = await manager.ask<{ id: number; issued: string }>('POST', '/bulletins', { ...paper, draft: {} });
    expect(saved.status).toBe(201);
    expect((await manager.get(`/bulletins/${saved.body.id}`)).body).toMatchObject({ issued });
    expect((await manager.get('/bulletins')).status).toBe(200);
  });
});

function textOf(query: unknown): string {
  return typeof query === 'string' ? query : String((query as { text?: unknown } | null)?.text);
}
