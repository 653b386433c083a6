import type { Role, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
let ids: Set<number>;

const FAR = 2;
const NAME = 'Zephyrine Marktwo';
const MARKS = ['Zephyrine', 'Marktwo', '55598127634', 'zephyrine@post.example', '9 Marked Lane', 'Marked complaint'];
const owner = { name: NAME, phone: '55598127634', email: 'zephyrine@post.example', address: '9 Marked Lane' };

/** A person of that role at the far location. */
async function far(role: Role): Promise<Caller> {
  await db.pool.query(
    `INSERT INTO person (login, name, role, location_id, password_hash)
     SELECT 'far-' || $1, 'Far', $1, $2, password_hash FROM person WHERE login = 'counter'`,
    [role, FAR],
  );
  const answer = await shop.signIn(`far-${role}`, PASSWORD);
  return new Caller(shop.api.url, answer.headers.get('set-cookie')!.split(';')[0]!);
}

/** What each route answers the person, asked with every id that leads to the owner, and with what she is called. */
async function routesThatTell(who: Caller): Promise<readonly string[]> {
  const telling = new Set<string>();
  for (const { method, path } of shop.api.routes) {
    // One never ends, and two end what is asked in the name of.
    if (path === '/live' || (method === 'DELETE' && path.startsWith('/session'))) continue;
    for (const id of path.includes(':') ? ids : [0]) {
      const at = path.replace(/:\w+/g, String(id));
      const query = method === 'GET' ? `?q=${encodeURIComponent(NAME)}` : '';
      const body = method === 'GET' ? undefined : '{}';
      const response = await fetch(`${shop.api.url}/api${at}${query}`, {
        method,
        headers: { cookie: who.cookie, 'if-match': '"1"', ...(body ? { 'content-type': 'application/json' } : {}) },
        body,
      });
      const text = Buffer.from(await response.arrayBuffer()).toString('utf8');
      if (MARKS.some((mark) => text.includes(mark))) telling.add(`${method} ${path}`);
    }
  }
  return [...telling].sort();
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  const counter = await shop.as('counter');
  const unit = { lineCode: 'SNOW-2', modelNumber: 'S2', serial: '17030001', serialAbsent: null, plate: 'SNOW-2' };
  const opened = await counter.ask<TicketView>('POST', '/tickets', {
    owner: { ...owner, consent: true },
    unit,
    complaint: 'Marked complaint',
  });
  const { id: ticketId, unit: made } = opened.body;
  const call = await db.pool.query<{ id: number }>(
    'INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2) RETURNING id',
    [made.id, made.owner.id],
  );
  await db.pool.query(
    `INSERT INTO flag (ticket_id, unit_id, position_id, place, verdict, severity, reason) VALUES ($1, $2, 1, 1, 'wrong', 3, '{"sentence":"Look at it.","source":null,"strength":null}')`,
    [ticketId, made.id],
  );
  ids = new Set([ticketId, made.id, made.owner.id, call.rows[0]!.id]);
}, 300_000);

describe('what is known of an owner', () => {
  it.each(['technician', 'counter'] as const)(
    'is told a %s of another location by no route, whatever id or name is asked for',
    async (role) => {
      expect(await routesThatTell(await far(role))).toEqual([]);
    },
    60_000,
  );

  it('is told at the counter of its own location by the routes that are there for it', async () => {
    expect(await routesThatTell(await shop.as('counter'))).toEqual(
      expect.arrayContaining([
        'GET /bench-lists',
        'GET /board',
        'GET /callbacks',
        'GET /callbacks/:id',
        'GET /callbacks/list.csv',
        'GET /owners',
        'GET /search',
        'GET /tickets/:id',
        'GET /units/:id',
      ]),
    );
  }, 60_000);
});
