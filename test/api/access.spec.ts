import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { PERMISSION_KEY } from '../../apps/api/src/auth/permit';
import { startApi } from '../../apps/api/src/start-api';
import { TicketsController } from '../../apps/api/src/tickets/tickets.controller';
import { readConfig, repoRoot } from '../../libs/config';
import {
  may,
  POLICY,
  ROLES,
  type Me,
  type Permission,
  type Problem,
  type Role,
  type UnitVisit,
} from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
/** What the security log was told, one line each. */
const lines: string[] = [];
const lastLine = () => JSON.parse(lines.at(-1)!) as Record<string, unknown>;

beforeAll(async () => {
  shop = await ApiShop.open(db, {}, { write: (line) => void lines.push(line) });
  for (const role of ROLES) await shop.as(role);
}, 300_000);

/** The route with ids that name nothing: whoever gets past the guard is told so, and nothing is changed. */
const pathOf = (path: string): string => path.replace(/:\w+/g, '2000000000');

describe('every route', () => {
  it('is open to nobody who is not signed in, save to sign in and out in one step or two or elsewhere, to use a one-time link, to see the demo people and whether it runs', async () => {
    const open = shop.api.routes.filter(({ permission }) => permission === 'open');
    expect(open.map(({ method, path }) => `${method} ${path}`).sort()).toEqual([
      'DELETE /session',
      'GET /health',
      'GET /health/ready',
      'GET /session/demo',
      'GET /session/elsewhere',
      'POST /session',
      'POST /session/code',
      'POST /session/elsewhere',
      'POST /session/elsewhere/back',
      'POST /session/link',
    ]);
    const anonymous = shop.anonymous();
    for (const { method, path, permission } of shop.api.routes) {
      if (permission === 'open') continue;
      const { status } = await anonymous.ask(method, pathOf(path));
      expect(`${method} ${path} ${status}`).toBe(`${method} ${path} 401`);
      expect(lastLine()).toMatchObject({ act: 'refused', how: `${method} /api${pathOf(path)}: not-signed-in` });
    }
  });

  it('keeps the API from starting while it names no permission', async () => {
    const view = Object.getOwnPropertyDescriptor(TicketsController.prototype, 'view')!.value as object;
    const named: unknown = Reflect.getMetadata(PERMISSION_KEY, view);
    const read = readConfig({ PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'error', REVRIGHT_DEMO: 'false' });
    if (!read.ok) throw new Error(read.problems.join(' '));
    Reflect.deleteMetadata(PERMISSION_KEY, view);
    const started = startApi({ config: read.config, store: shop.store });
    await expect(started).rejects.toThrow('These routes name no permission: TicketsController.view.');
    Reflect.defineMetadata(PERMISSION_KEY, named, view);
  });

  it.each(ROLES)('lets a %s do what the policy says, and nothing else', async (role: Role) => {
    const caller = await shop.as(role);
    for (const { method, path, permission } of shop.api.routes) {
      // The one ends what the others are asked in, the other never ends.
      if (permission === 'open' || (path === '/session/all' && method === 'DELETE') || path === '/live') continue;
      const { status } = await caller.ask(method, pathOf(path));
      const let_in = status !== 401 && status !== 403;
      // What no permission of the table opens is there for everybody who is signed in.
      const should = permission! in POLICY ? may(role, permission as Permission) : true;
      expect(`${method} ${path}: ${let_in}`).toBe(`${method} ${path}: ${should}`);
      expect(status).not.toBe(500);
    }
  });
});

/** What no table of ours is asked about: written down by hand, so that a slip in the policy is found. */
const NEVER: readonly (readonly [Role, string, string])[] = [
  ['technician', 'POST', '/callbacks/:id/attempts'],
  ['technician', 'POST', '/callbacks/:id/settle'],
  ['administrator', 'POST', '/callbacks/:id/settle'],
  ['manager', 'POST', '/people'],
  ['manager', 'PATCH', '/people/:id'],
  ['manager', 'POST', '/people/:id/link'],
  ['counter', 'PATCH', '/people/:id'],
  ['technician', 'GET', '/people'],
  ['technician', 'POST', '/flags/:id/decide'],
  ['counter', 'POST', '/flags/:id/decide'],
  ['administrator', 'POST', '/bulletins/:id/publish'],
  ['counter', 'POST', '/bulletins/:id/publish'],
  ['technician', 'GET', '/sheets/exports/:kind'],
  ['counter', 'GET', '/sheets/exports/:kind'],
  ['technician', 'GET', '/units/:id/trail'],
  ['counter', 'GET', '/owners/:id/personal-data'],
  ['technician', 'POST', '/tokens'],
  ['manager', 'POST', '/webhooks'],
];

describe('what is not a role’s to do', () => {
  it.each(NEVER)('2, 3, 43: is refused to a %s with 403: %s %s', async (role, method, path) => {
    expect(shop.api.routes.filter((one) => one.method === method && one.path === path)).toHaveLength(1);
    const at = pathOf(path).replace(/exports\/\d+/, 'exports/owners');
    const answer = await (await shop.as(role)).ask<Problem>(method, at);
    expect([answer.status, answer.body.type]).toEqual([403, 'not-allowed']);
    const { rows } = await db.pool.query<{ id: number }>('SELECT id FROM person WHERE login = $1', [role]);
    const told = { act: 'refused', personId: rows[0]!.id, how: `${method} /api${at}: not-allowed` };
    expect(lastLine()).toMatchObject(told);
  });
});

describe('a sign-in', () => {
  it('answers who it is, with a cookie that no script can read and no other site can send', async () => {
    const answer = await shop.signIn('Manager', PASSWORD);
    const me = answer.body as Me;
    expect(me).toMatchObject({ login: 'manager', role: 'manager', location: { code: 'MAIN' } });
    expect(me.permissions).toContain('decide-flags');
    expect(answer.headers.getSetCookie()).toEqual([
      expect.stringMatching(/^revright=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/),
      expect.stringMatching(/^revright-device=[\w-]{43}; Max-Age=7776000; Path=\/; HttpOnly; SameSite=Strict$/),
    ]);
  });

  it('is refused alike for an unknown login, a wrong password and a person who has left', async () => {
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash, active)
       SELECT 'gone', 'Gone', 'manager', 1, password_hash, false FROM person WHERE login = 'manager'`,
    );
    const answers = await Promise.all([
      shop.signIn('nobody', PASSWORD),
      shop.signIn('manager', 'not it'),
      shop.signIn('gone', PASSWORD),
    ]);
    expect(answers.map(({ status }) => status)).toEqual([401, 401, 401]);
    expect(new Set(answers.map(({ body }) => JSON.stringify(body))).size).toBe(1);
  });

  it('keeps only the hash of its token in the database', async () => {
    const token = (await shop.as('counter')).cookie.split('=')[1]!;
    const { rows } = await db.pool.query<{ token_hash: string }>('SELECT token_hash FROM session');
    expect(rows.length).toBeGreaterThan(0);
    for (const { token_hash } of rows) {
      expect(token_hash).toMatch(/^[0-9a-f]{64}$/);
      expect(token_hash).not.toContain(token);
    }
  });

  it('ends with signing out: the cookie opens nothing any more', async () => {
    const cookie = (await shop.signIn('counter', PASSWORD)).headers.get('set-cookie')!.split(';')[0]!;
    const caller = new Caller(shop.api.url, cookie);
    expect((await caller.get('/session')).status).toBe(200);
    expect((await caller.ask('DELETE', '/session')).status).toBe(204);
    expect((await caller.get('/session')).status).toBe(401);
  });

  it('ends after half an hour without a request, and after eight hours whatever happens', async () => {
    const begin = shop.clock.nowMs;
    const minutes = (n: number) => (shop.clock.nowMs = begin + n * 60_000);
    const fresh = async () => {
      minutes(0);
      return new Caller(
        shop.api.url,
        (await shop.signIn('technician', PASSWORD)).headers.get('set-cookie')!.split(';')[0]!,
      );
    };
    const idle = await fresh();
    minutes(30);
    expect((await idle.get('/session')).status).toBe(401);
    const busy = await fresh();
    for (let at = 20; at < 480; at += 20) {
      minutes(at);
      expect((await busy.get('/session')).status).toBe(200);
    }
    minutes(480);
    expect((await busy.get('/session')).status).toBe(401);
    minutes(0);
  });

  it('follows a changed role and a person who leaves at the next request', async () => {
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash)
       SELECT 'temp', 'Temp', 'manager', 1, password_hash FROM person WHERE login = 'manager'`,
    );
    const caller = new Caller(
      shop.api.url,
      (await shop.signIn('temp', PASSWORD)).headers.get('set-cookie')!.split(';')[0]!,
    );
    const decide = () => caller.ask('POST', '/flags/2000000000/decide');
    expect((await decide()).status).not.toBe(403);
    await db.pool.query(`UPDATE person SET role = 'technician' WHERE login = 'temp'`);
    expect((await decide()).status).toBe(403);
    await db.pool.query(`UPDATE person SET active = false WHERE login = 'temp'`);
    expect((await decide()).status).toBe(401);
  });

  it('slows guessing down after five wrong passwords, for that account alone', async () => {
    await db.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash)
       SELECT 'guessed', 'Guessed', 'counter', 1, password_hash FROM person WHERE login = 'manager'`,
    );
    shop.clock.nowMs += 120_000;
    for (let n = 0; n < 5; n++) expect((await shop.signIn('guessed', 'wrong')).status).toBe(401);
    const braked = await shop.signIn('guessed', PASSWORD);
    expect([braked.status, braked.headers.get('retry-after')]).toEqual([429, '1']);
    expect((await shop.signIn('counter', PASSWORD)).status).toBe(200);
    shop.clock.nowMs += 1_000;
    expect((await shop.signIn('guessed', PASSWORD)).status).toBe(200);
  });

  it('is not the one that the browser was made to bring along: it makes a token of its own, and the one before stays nobody’s', async () => {
    const made = `revright=${'A'.repeat(43)}`;
    const held = (await shop.signIn('counter', PASSWORD)).headers.get('set-cookie')!.split(';')[0]!;
    for (const before of [made, held]) {
      const answer = await new Caller(shop.api.url, before).ask('POST', '/session', {
        login: 'manager',
        password: PASSWORD,
      });
      const after = answer.headers.get('set-cookie')!.split(';')[0]!;
      expect([answer.status, after === before]).toEqual([200, false]);
      expect((await new Caller(shop.api.url, after).get<Me>('/session')).body.login).toBe('manager');
      expect((await new Caller(shop.api.url, before).get<Me>('/session')).body.login).not.toBe('manager');
    }
    expect((await new Caller(shop.api.url, made).get('/session')).status).toBe(401);
  });

  it.each<[string, (good: string) => string]>([
    ['a made-up token', () => 'revright=AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA'],
    ['an empty token', () => 'revright='],
    ['a very long token', () => `revright=${'x'.repeat(3_000)}`],
    ['two tokens', () => 'revright=a; revright=b'],
    ['a right token and another', (good) => `${good}; revright=b`],
    ['another token and a right one', (good) => `revright=b; ${good}`],
    ['a right token with one letter changed', (good) => good.replace(/=./, (was) => (was === '=A' ? '=B' : '=A'))],
    ['a right token and more behind it', (good) => `${good}A`],
    ['a right token under the name for https', (good) => `__Host-${good}`],
  ])('is not had with %s', async (_, change) => {
    const good = (await shop.as('manager')).cookie;
    expect((await new Caller(shop.api.url, good).get('/session')).status).toBe(200);
    expect((await new Caller(shop.api.url, change(good)).get('/session')).status).toBe(401);
  });
});

describe('a change asked for by another site', () => {
  it.each([
    [{ 'sec-fetch-site': 'cross-site' }],
    [{ 'sec-fetch-site': 'same-site' }],
    [{ origin: 'https://elsewhere.example' }],
    [{ origin: 'null' }],
  ])('is refused by %j, cookie or not', async (headers) => {
    const manager = await shop.as('manager');
    for (const { method, path } of shop.api.routes) {
      if (method === 'GET') continue;
      const answer = await manager.ask<Problem>(method, pathOf(path), undefined, headers);
      expect([method, path, answer.status, answer.body.type]).toEqual([method, path, 403, 'other-site']);
    }
    expect(lastLine()).toMatchObject({ act: 'refused', how: expect.stringContaining('other-site') as string });
    expect((await manager.get('/session')).status).toBe(200);
  });

  it.each(['application/x-www-form-urlencoded', 'text/plain', 'multipart/form-data; boundary=x'])(
    'is refused as %s, which a form of any page sends without asking, and is no JSON from our own',
    async (type) => {
      const { cookie } = await shop.as('manager');
      const send = async (site: string) => {
        const headers = { cookie, 'content-type': type, 'sec-fetch-site': site };
        const body = '{"lineCode":"SNOW-2"}';
        return (await fetch(`${shop.api.url}/api/look-up`, { method: 'POST', headers, body })).status;
      };
      expect(await send('cross-site')).toBe(403);
      expect([400, 415]).toContain(await send('same-origin'));
    },
  );

  it.each([[{ 'sec-fetch-site': 'same-origin' }], [{}]])('is none when it comes with %j', async (headers) => {
    const manager = await shop.as('manager');
    expect(
      (await manager.ask('POST', '/look-up', { lineCode: 'SNOW-2' }, headers as Record<string, string>)).status,
    ).toBe(200);
  });
});

describe('what the API gives away', () => {
  it('is told to browsers to be used by this page alone', async () => {
    const { headers } = await shop.anonymous().get('/session');
    expect(headers.get('content-security-policy')).toContain("script-src 'self'");
    for (const none of ['frame-ancestors', 'base-uri', 'object-src'])
      expect(headers.get('content-security-policy')).toContain(`${none} 'none'`);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('cache-control')).toBe('no-store');
    expect(headers.get('x-powered-by')).toBeNull();
  });

  it('says in which characters each file of the page is written that is text', async () => {
    const folder = join(repoRoot(), 'dist', 'apps', 'web');
    const files = (readdirSync(folder, { recursive: true }) as string[]).filter((file) =>
      /\.(html|css|js|svg)$/.test(file),
    );
    const oneOfEach = ['html', 'css', 'js', 'svg'].map(
      (kind) => files.find((file) => file.endsWith(`.${kind}`)) ?? kind,
    );
    for (const file of oneOfEach) {
      const { status, headers } = await fetch(`${shop.api.url}/${file}`);
      expect([file, status, headers.get('content-type')]).toEqual([
        file,
        200,
        expect.stringMatching(/^(text\/(html|css)|(text|application)\/javascript|image\/svg\+xml); charset=utf-8$/i),
      ]);
    }
  });

  it('holds nothing of another location', async () => {
    const ticket = await shop.newTicket('17030001');
    const far = await shop.elsewhere('counter');
    expect((await far.get(`/tickets/${ticket.id}`)).status).toBe(404);
    expect((await far.change('PATCH', `/tickets/${ticket.id}`, ticket.version, { complaint: 'x' })).status).toBe(404);
    expect((await far.ask('POST', '/tickets', { unitId: ticket.unit.id })).status).toBe(400);
    expect((await far.get<unknown[]>('/search?q=17030001')).body).toEqual([]);
  });

  it('keeps the owners of another location, and the calls to them, out of sight and reach', async () => {
    const ticket = await shop.newTicket('17030002');
    const owner = ticket.unit.owner.id;
    const { rows } = await db.pool.query<{ id: number }>(
      `INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2) RETURNING id`,
      [ticket.unit.id, owner],
    );
    const call = rows[0]!.id;
    const afar = await shop.elsewhere('counter');
    const near = await shop.as('manager');
    const seen = async (caller: Caller) => ({
      owners: (await caller.get<unknown[]>('/owners?q=Ole')).body.length > 0,
      units: (await caller.get(`/owners/${owner}/units`)).status,
      calls: (await caller.get<{ total: number }>('/callbacks')).body.total,
      call: (await caller.get(`/callbacks/${call}`)).status,
    });
    expect(await seen(near)).toEqual({ owners: true, units: 200, calls: 1, call: 200 });
    expect(await seen(afar)).toEqual({ owners: false, units: 404, calls: 0, call: 404 });
    expect((await afar.change('PATCH', `/owners/${owner}`, 1, { phone: '1' })).status).toBe(404);
    const attempt = { how: 'phone', outcome: 'reached', note: '' };
    expect((await afar.change('POST', `/callbacks/${call}/attempts`, 1, attempt)).status).toBe(404);
    expect((await afar.ask('POST', '/tickets', { ownerId: owner, unit: {} })).status).toBe(400);
  });

  it('lets a manager of another location read a ticket and its call, and change only the call', async () => {
    const ticket = await shop.newTicket('17030003');
    const overseer = await shop.elsewhere('manager');
    expect((await overseer.get(`/tickets/${ticket.id}`)).status).toBe(200);
    const change = await overseer.change('PATCH', `/tickets/${ticket.id}`, ticket.version, { complaint: 'x' });
    expect(change.status).toBe(404);
    expect((await overseer.get<UnitVisit>(`/units/${ticket.unit.id}`)).body.here).toBe(false);
    const { rows } = await db.pool.query<{ id: number }>(
      `INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2) RETURNING id`,
      [ticket.unit.id, ticket.unit.owner.id],
    );
    const attempt = { how: 'phone', outcome: 'reached', note: '' };
    expect((await overseer.change('POST', `/callbacks/${rows[0]!.id}/attempts`, 1, attempt)).status).toBe(200);
  });

  it.each([
    ['text that is no JSON', '{', 400],
    ['a list where an object belongs', '[]', 400],
    ['a character that cannot be kept', '{"lineCode":"a\\u0000b"}', 400],
    ['a prototype', '{"__proto__":{"lineCode":"SNOW-2"}}', 400],
  ])('is one clear refusal for %s', async (_, body, status) => {
    const manager = await shop.as('manager');
    const response = await fetch(`${shop.api.url}/api/look-up`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie: manager.cookie },
      body,
    });
    expect(response.status).toBe(status);
    expect(response.headers.get('content-type')).toContain('application/problem+json');
  });

  it('describes every route in one OpenAPI document, to administrators alone', async () => {
    const administrator = await shop.as('administrator');
    const { body } = await administrator.get<{ paths: Record<string, Record<string, unknown>> }>('/openapi.json');
    for (const { method, path } of shop.api.routes) {
      const described = body.paths[path.replace(/:(\w+)/g, '{$1}')];
      expect(`${method} ${path} ${described?.[method.toLowerCase()] !== undefined}`).toBe(`${method} ${path} true`);
    }
    for (const path of ['/openapi.json', '/reader', '/reader/start.js']) {
      expect((await shop.anonymous().get(path)).status).toBe(401);
      expect((await (await shop.as('manager')).get(path)).status).toBe(403);
      expect((await administrator.get(path)).status).toBe(200);
    }
    expect((await administrator.get('/reader/package.json')).status).toBe(404);
  });
});
