import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { request as ask } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import type { OpenApiDocument } from '../../apps/api/src/open-api/document';
import { repoRoot } from '../../libs/config';
import {
  may,
  POLICY,
  ROLES,
  type CallbackPage,
  type Permission,
  type Problem,
  type TicketView,
} from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from '../api/api-shop';
import { sums as sumsOf } from './sums';

const db = withDatabase();
let shop: ApiShop;
let cookie: string;
let ticket: TicketView;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  cookie = (await shop.as('manager')).cookie;
  ticket = await shop.newTicket('18020001');
}, 300_000);

interface Raw {
  method?: string;
  path: string;
  headers?: Record<string, string>;
  body?: string;
}

/** A request as no client library would send it; resolves with its status and body. */
function raw({ method = 'POST', path, headers = {}, body = '' }: Raw): Promise<{ status: number; text: string }> {
  return new Promise((resolve, reject) => {
    const sent = ask(`${shop.api.url}/api${path}`, {
      method,
      headers: { 'content-type': 'application/json', cookie, ...headers },
    });
    sent.on('error', reject).on('response', (response) => {
      let text = '';
      response.on('data', (piece: Buffer) => (text += piece.toString()));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
    });
    sent.end(body);
  });
}

/** A sum of every table, save of what asking alone may write: that a sign-in is in use. */
const sums = () => sumsOf(db.pool, ['session', 'known_device', 'sign_in_try']);

interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query';
  readonly schema: { readonly enum?: readonly string[] };
}

/** Every route that is asked by GET, with what it takes in its address, and the cookie of somebody who may ask it. */
async function readings() {
  const { body } = await (await shop.as('administrator')).get<OpenApiDocument>('/openapi.json');
  const found = shop.api.routes.filter(({ method, path }) => method === 'GET' && path !== '/live');
  return Promise.all(
    found.map(async ({ path, permission }) => {
      // What is open to all who are signed in is asked by the manager.
      const role = ROLES.find((one) => permission! in POLICY && may(one, permission as Permission)) ?? 'manager';
      const described = body.paths[path.replace(/:(\w+)/g, '{$1}')]!['get'] as { parameters?: readonly Parameter[] };
      return { path, parameters: described.parameters ?? [], cookie: (await shop.as(role)).cookie };
    }),
  );
}

/** The path with an id that is there in place of each name, or what is given for it. */
const filled = (path: string, by: Readonly<Record<string, string>> = {}): string =>
  path.replace(/:(\w+)/g, (_, name: string) => by[name] ?? String(ticket.id));

/** A bulletin as JSON, whole but for the title. */
const paper = (title: string): string =>
  `{"publisher":"Holmgard","number":"SB-36","title":${title},"issued":"2026-10-01","received":"2026-10-20","draft":{}}`;

describe('a request that means harm', () => {
  it.each([
    [{ 'x-http-method-override': 'PATCH' }, ''],
    [{ 'x-http-method': 'PATCH' }, ''],
    [{ 'x-method-override': 'PATCH' }, ''],
    [{}, '?_method=PATCH'],
  ])('10: reaches no other method by an override: %j%s', async (header, query) => {
    const before = await sums();
    const named = { ...header, 'if-match': `"${ticket.version}"` };
    const path = `/tickets/${ticket.id}${query}`;
    for (const method of ['POST', 'PUT'])
      expect((await raw({ method, path, headers: named, body: '{"complaint":"overridden"}' })).status).toBe(404);
    expect((await raw({ method: 'GET', path, headers: named })).status).toBe(200);
    expect(await sums()).toEqual(before);
  });

  it('10: gets past the door of no route by HEAD, OPTIONS or a method that the route has not', async () => {
    const before = await sums();
    const shut = shop.api.routes.filter(({ permission }) => permission !== 'open');
    expect(shut.length).toBeGreaterThan(100);
    for (const { path } of shut)
      for (const method of ['GET', 'HEAD', 'OPTIONS', 'POST', 'PUT', 'PATCH', 'DELETE']) {
        // A few addresses are open by one method and shut by another.
        const open = shop.api.routes.some(
          (one) => one.path === path && one.method === method && one.permission === 'open',
        );
        if (open) continue;
        const { status } = await raw({ method, path: path.replace(/:\w+/g, '1'), headers: { cookie: '' } });
        expect(`${method} ${path}: ${Math.floor(status / 100) === 4}`).toBe(`${method} ${path}: true`);
      }
    expect(await sums()).toEqual(before);
  }, 120_000);

  it('10: is let no further by HEAD than by GET, whoever asks', async () => {
    const before = await sums();
    for (const role of ROLES) {
      const headers = { cookie: (await shop.as(role)).cookie };
      for (const { method, path } of shop.api.routes) {
        if (method !== 'GET' || path === '/live') continue;
        const [read, headOnly] = [
          await raw({ method: 'GET', path: filled(path), headers }),
          await raw({ method: 'HEAD', path: filled(path), headers }),
        ];
        expect([role, path, headOnly.status, headOnly.text]).toEqual([role, path, read.status, '']);
      }
    }
    expect(await sums()).toEqual(before);
  }, 120_000);

  it('10: answers a GET that says it is another method as a GET, on any route, and changes nothing', async () => {
    const before = await sums();
    const paths = new Set(shop.api.routes.map((one) => filled(one.path)));
    paths.delete('/live');
    for (const asks of [cookie, (await shop.as('administrator')).cookie])
      for (const path of paths) {
        const plain = await raw({ method: 'GET', path, headers: { cookie: asks } });
        for (const method of ['POST', 'PUT', 'PATCH', 'DELETE']) {
          const said = { 'x-http-method-override': method, 'x-http-method': method, 'x-method-override': method };
          const headers = { ...said, cookie: asks, 'if-match': `"${ticket.version}"` };
          const { status } = await raw({ method: 'GET', path: `${path}?_method=${method}`, headers });
          expect([method, path, status]).toEqual([method, path, plain.status]);
        }
      }
    expect(await sums()).toEqual(before);
    expect((await raw({ method: 'GET', path: '/session' })).status).toBe(200);
  }, 120_000);

  it('10: is not sent back what it sent, cookie and all, by TRACE', async () => {
    for (const path of ['/session', '/look-up', '/tickets/1']) {
      const { status, text } = await raw({ method: 'TRACE', path, headers: { 'x-told': 'told back' } });
      expect([404, 405, 501]).toContain(status);
      expect(text).not.toMatch(/told back|revright=/);
    }
  });

  it('6: cannot set what the server sets: number, version, stage, location, role', async () => {
    const counter = await shop.as('counter');
    const { body } = await counter.change<TicketView>('PATCH', `/tickets/${ticket.id}`, ticket.version, {
      complaint: 'Auger jams',
      stage: 'handover',
      number: 'X-1',
      version: 77,
      locationId: 2,
      closedAt: '2026-01-01T00:00:00Z',
    });
    expect(body).toMatchObject({ stage: 'intake', number: ticket.number, version: ticket.version + 1 });
    expect(body).toMatchObject({ complaint: 'Auger jams', closedAt: null });
    const { rows } = await db.pool.query('SELECT location_id, version FROM ticket WHERE id = $1', [ticket.id]);
    expect(rows).toEqual([{ location_id: 1, version: ticket.version + 1 }]);
    ticket = body;
    const reading = { reading: null, role: 'administrator', location: { id: 2 }, permissions: ['manage-people'] };
    await counter.ask('PUT', '/session/reading', reading);
    expect((await counter.get('/session')).body).toMatchObject({ role: 'counter', location: { code: 'MAIN' } });
    const manager = await shop.as('manager');
    const paper = {
      ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: 'SB-6', title: 'Out at once' },
      ...{ issued: '2026-10-01', received: '2026-10-20', draft: { opens: [], ends: [] } },
      ...{ state: 'published', publishedAt: '2020-01-01T00:00:00Z', version: 9, id: 1 },
    };
    const saved = await manager.ask<{ id: number; version: number }>('POST', '/bulletins', paper);
    expect(saved.body).toMatchObject({ state: 'draft', version: 1 });
    expect(saved.body.id).not.toBe(1);
  });

  it('5: changes what its path names, whatever else its body names', async () => {
    const other = await shop.newTicket('18020005');
    const counter = await shop.as('counter');
    const body = { complaint: 'Belt slips', id: other.id, ticketId: other.id, number: other.number };
    const changed = await counter.change<TicketView>('PATCH', `/tickets/${ticket.id}`, ticket.version, body);
    expect([changed.status, changed.body.id, changed.body.complaint]).toEqual([200, ticket.id, 'Belt slips']);
    ticket = changed.body;
    expect((await counter.get(`/tickets/${other.id}`)).body).toEqual(other);
  });

  it('21: changes nothing by any GET, whatever it names', async () => {
    const before = await sums();
    let answered = 0;
    for (const { path, parameters, cookie: asks } of await readings()) {
      const kinds = parameters.map(({ name, schema }): [string, string] => [name, schema.enum?.[0] ?? '']);
      const named = Object.fromEntries(kinds.filter(([, kind]) => kind !== ''));
      const { status } = await raw({ method: 'GET', path: filled(path, named), headers: { cookie: asks } });
      expect(`${path} ${status < 500}`).toBe(`${path} true`);
      if (status === 200) answered++;
    }
    expect(answered).toBeGreaterThan(40);
    expect(await sums()).toEqual(before);
  }, 60_000);

  it('22: is given no leave by a foreign origin, and no method is told', async () => {
    const headers = { origin: 'https://elsewhere.example', 'access-control-request-method': 'POST' };
    for (const [path, method] of [
      ['/look-up', 'OPTIONS'],
      ['/tickets/1', 'OPTIONS'],
      ['/session', 'GET'],
      ['/health', 'GET'],
    ] as const) {
      const answer = await fetch(`${shop.api.url}/api${path}`, { method, headers: { ...headers, cookie } });
      const told = [...answer.headers.keys()].filter((name) => name.startsWith('access-control') || name === 'allow');
      expect([path, method, told]).toEqual([path, method, []]);
    }
  });

  it.each([
    ['17: a password of a megabyte', '/session', JSON.stringify({ login: 'manager', password: 'x'.repeat(1_000_000) })],
    ['36: a prototype', '/look-up', '{"lineCode":"SNOW-2","__proto__":{"struck":1}}'],
    [
      '36: a prototype behind a constructor',
      '/look-up',
      '{"lineCode":"SNOW-2","constructor":{"prototype":{"struck":1}}}',
    ],
    ['36: the same inside', '/look-up', '{"lineCode":"SNOW-2","options":{"__proto__":{"struck":true}}}'],
    ['36: a list where text belongs', '/look-up', '{"lineCode":["SNOW-2"]}'],
    ['36: a number too large to be one', '/look-up', '{"lineCode":1e309}'],
    ['36: a lone half of a character', '/bulletins', paper('"\\ud800"')],
    ['36: a character that cannot be kept', '/bulletins', paper('"a\\u0000"')],
    ['36: a list where any text does', '/bulletins', paper('["a"]')],
    ['36: a number where any text does', '/bulletins', paper('1e309')],
    ['37: ten thousand levels', '/look-up', '['.repeat(10_000) + ']'.repeat(10_000)],
    ['23: quotes of SQL', '/look-up', `{"lineCode":"x'; DROP TABLE ticket; --"}`],
  ])('%s is refused with a 4xx and breaks nothing', async (_, path, body) => {
    const { status } = await raw({ path, body });
    expect(Math.floor(status / 100)).toBe(4);
    expect('struck' in {}).toBe(false);
    expect((await raw({ method: 'GET', path: '/session' })).status).toBe(200);
  });

  it('36: is refused when a word of its address cannot be kept, on any route', async () => {
    for (const { path, parameters, cookie: asks } of await readings())
      for (const { name, in: where } of parameters)
        for (const word of ['%00', 'a%00b']) {
          const at = where === 'path' ? filled(path, { [name]: word }) : `${filled(path)}?${name}=${word}`;
          const { status } = await raw({ method: 'GET', path: at, headers: { cookie: asks } });
          expect([at, status === 400 || status === 404]).toEqual([at, true]);
        }
  });

  it('23: keeps quotes of SQL as the words they are', async () => {
    const words = `x'; DROP TABLE ticket; -- "$1" \\' %s`;
    const saved = await raw({ path: '/bulletins', body: paper(JSON.stringify(words)) });
    expect([saved.status, (JSON.parse(saved.text) as { title: string }).title]).toEqual([201, words]);
    expect((await raw({ method: 'GET', path: `/tickets/${ticket.id}` })).status).toBe(200);
  });

  it('37: is refused ten thousand levels deep where it may hold lists and objects, with a key or without', async () => {
    const deep = `${'{"a":['.repeat(5_000)}1${']}'.repeat(5_000)}`;
    const paper =
      '"publisher":"Holmgard","number":"SB-37","title":"Deep","issued":"2026-10-01","received":"2026-10-20"';
    const body = `{${paper},"draft":{"opens":[{"key":"DEEP","more":${deep}}],"ends":[]}}`;
    for (const headers of [{}, { 'idempotency-key': 'deep' }] as Record<string, string>[])
      expect((await raw({ path: '/bulletins', headers, body })).status).toBe(400);
    expect((await raw({ method: 'GET', path: '/session' })).status).toBe(200);
  });

  it('37: is cut off when it is larger than any of ours', async () => {
    // Of the first the head alone is sent: the length it names is enough. The second names none and comes in pieces.
    const { hostname, port } = new URL(shop.api.url);
    for (const [length, body] of [
      [`Content-Length: ${6_000_000}`, ''],
      ['Transfer-Encoding: chunked', `5b8d80\r\n{"lineCode":"${'x'.repeat(5_999_987)}"}\r\n0\r\n\r\n`],
    ] as const) {
      const heard = await new Promise<string>((resolve, reject) => {
        const line = connect(Number(port), hostname);
        let text = '';
        line.on('data', (piece: Buffer) => (text += piece.toString()));
        line.on('close', () => resolve(text)).on('error', () => (text === '' ? reject(new Error('no answer')) : null));
        line.write(
          `POST /api/look-up HTTP/1.1\r\nHost: shop\r\nConnection: close\r\nCookie: ${cookie}\r\nContent-Type: application/json\r\n${length}\r\n\r\n${body}`,
        );
      });
      expect(heard).toMatch(/^HTTP\/1\.1 413 /);
    }
    expect((await raw({ method: 'GET', path: '/session' })).status).toBe(200);
  });

  it('38: with five thousand parameters, or one twice, or as a list, never breaks the server', async () => {
    const many = 'a&'.repeat(5_000);
    for (const [query, expected] of [
      [`q=pin&${many}`, 200],
      ['q=a&q=b', 400],
      ['q[]=a', 200],
      ['q[a]=b', 200],
    ] as const) {
      const { status } = await raw({ method: 'GET', path: `/search?${query}` });
      expect([query.slice(0, 20), status]).toEqual([query.slice(0, 20), expected]);
    }
  });

  it('24: is answered in good time when its search is full of wildcards', async () => {
    const searched = (await readings()).flatMap(({ path, parameters, cookie: asks }) =>
      parameters
        .filter(({ name, in: where }) => where === 'query' && ['q', 'text'].includes(name))
        .map(({ name }) => (q: string) => {
          const query = `?${name}=${encodeURIComponent(q)}`;
          return raw({ method: 'GET', path: `${filled(path)}${query}`, headers: { cookie: asks } });
        }),
    );
    expect(searched.length).toBeGreaterThan(5);
    for (const search of searched) {
      // What nothing is called finds nothing; and so do signs that stand for everything.
      const nothing = await search('zqzqzqzq');
      expect(nothing.status).toBe(200);
      for (const q of ['%', '_', '%'.repeat(100), '_'.repeat(100), '\\%_'.repeat(30)])
        expect(await search(q)).toEqual(nothing);
      expect((await search('x'.repeat(10_000))).status).toBe(400);
    }
  });

  it('42: has no page that is not one', async () => {
    const ofTrail = `/units/${ticket.unit.id}/trail`;
    const paged = (await readings()).filter(({ parameters }) => parameters.some(({ name }) => name === 'after'));
    expect(paged.map(({ path }) => path).sort()).toEqual(['/callbacks', '/shelf', '/units/:id/trail']);
    for (const [path, pages] of [
      [
        '/callbacks',
        ['-1', '9.9', '1.99999999999', "1.1' OR 1=1", '9'.repeat(400), '0.2026-02-30.1', '0.2026-01-01.9999999999'],
      ],
      ['/shelf', ['-1', '1e99', '1.5', 'x', '9'.repeat(400)]],
      [ofTrail, ['-1', 'x', '1.-1', "1.1' OR 1=1", '9'.repeat(400)]],
    ] as const)
      for (const after of pages) {
        const { status } = await raw({ method: 'GET', path: `${path}?after=${encodeURIComponent(after)}` });
        expect([path, after, status]).toEqual([path, after, 400]);
      }
  });

  it('42: is shown nothing of another location by a page that begins where somebody else’s does', async () => {
    const far = await shop.elsewhere('counter');
    const others = [ticket, await shop.newTicket('18020042')];
    const calls: number[] = [];
    for (const { unit } of others) {
      const made = await db.pool.query<{ id: number }>(
        'INSERT INTO callback (unit_id, owner_id) VALUES ($1, $2) RETURNING id',
        [unit.id, unit.owner.id],
      );
      calls.push(made.rows[0]!.id);
    }
    const shown = async (caller: Caller) =>
      (await caller.get<CallbackPage>(`/callbacks?after=0.0001-01-01.${calls[0]}`)).body.items.map(({ id }) => id);
    expect([await shown(await shop.as('counter')), await shown(far)]).toEqual([[calls[1]], []]);
  });

  it('44: is told no stack, no query and no version of anything when it fails', async () => {
    const { text } = await raw({ path: '/look-up', body: '{' });
    expect(Object.keys(JSON.parse(text) as Problem).sort()).toEqual(['detail', 'status', 'title', 'type']);
    const failing = [
      ['POST', '/look-up', 400],
      ['GET', '/tickets/2000000000', 404],
      ['GET', '/nowhere', 404],
      ['GET', '/tickets/x', 404],
    ] as const;
    for (const [method, path, status] of failing) {
      const headers = { cookie, ...(method === 'POST' ? { 'content-type': 'application/json' } : {}) };
      const answer = await fetch(`${shop.api.url}/api${path}`, {
        method,
        headers,
        body: method === 'POST' ? '{' : undefined,
      });
      const told = `${JSON.stringify([...answer.headers])} ${await answer.text()}`;
      expect([path, answer.status]).toEqual([path, status]);
      expect(told).not.toMatch(/fastify|nest|node_modules|x-powered-by|"server"|prisma|SELECT|\.ts:|\.js:|at \w+ \(/i);
    }
    for (const path of ['/metrics', '/openapi.json', '/reader'])
      expect([path, (await raw({ method: 'GET', path })).status]).toEqual([path, 403]);
    for (const path of ['/docs', '/queues', '/.git/config', '/..%2f.git%2fconfig'])
      expect((await raw({ method: 'GET', path })).status).toBe(404);
    for (const path of [
      '.git/config',
      '..%2f.git%2fconfig',
      '%2e%2e/package.json',
      'assets/..%2f..%2f..%2fpackage.json',
    ]) {
      const file = await (await fetch(`${shop.api.url}/${path}`)).text();
      expect(file).not.toContain('[core]');
      expect(file).not.toContain('"dependencies"');
    }
  });

  it('44: is told no more when it breaks something here than that it is in the log', async () => {
    await db.pool.query(`ALTER TABLE ticket ADD CONSTRAINT breaks CHECK (complaint <> 'Breaks')`);
    const streams = [process.stdout, process.stderr].map((one) => jest.spyOn(one, 'write').mockReturnValue(true));
    const answer = await (
      await shop.as('counter')
    ).change<Problem>('PATCH', `/tickets/${ticket.id}`, ticket.version, {
      complaint: 'Breaks',
    });
    for (const stream of streams) stream.mockRestore();
    await db.pool.query('ALTER TABLE ticket DROP CONSTRAINT breaks');
    expect([answer.status, answer.body]).toEqual([
      500,
      {
        ...{ type: 'broken', title: 'Broken', status: 500, detail: 'Something broke here; it is in the log.' },
        requestId: expect.any(String) as string,
      },
    ]);
    expect(JSON.stringify([...answer.headers])).not.toMatch(/fastify|nest|x-powered-by|"server"/i);
  });

  it('44: is given no source of the page: no map is built, and none is served', async () => {
    const folder = join(repoRoot(), 'dist', 'apps', 'web');
    const files = readdirSync(folder, { recursive: true }) as string[];
    expect(files.filter((file) => file.endsWith('.map'))).toEqual([]);
    const script = files.find((file) => file.endsWith('.js'))!;
    const text = await (await fetch(`${shop.api.url}/${script}`)).text();
    expect(text).not.toContain('sourceMappingURL');
    expect(await (await fetch(`${shop.api.url}/${script}.map`)).text()).not.toContain('"mappings"');
  });

  it('23: sorts and filters by nothing that is not in the list', async () => {
    let lists = 0;
    for (const { path, parameters, cookie: asks } of await readings())
      for (const { name, in: where, schema } of parameters) {
        if (schema.enum) lists++;
        const strange = 'name; DROP TABLE ticket';
        const query = where === 'query' ? `?${name}=${encodeURIComponent(strange)}` : '';
        const at = filled(path, where === 'path' ? { [name]: encodeURIComponent(strange) } : {});
        const { status } = await raw({ method: 'GET', path: `${at}${query}`, headers: { cookie: asks } });
        expect([path, name, schema.enum ? status === 400 : status < 500]).toEqual([path, name, true]);
      }
    expect(lists).toBeGreaterThan(5);
  });

  it('23: finds no query that is put together from text without being marked', () => {
    const unsafe = ['grep', '-rlE', '\\$(query|execute)RawUnsafe', '--include=*.ts', 'libs', 'apps'];
    const found = execFileSync('sh', ['-c', `${unsafe.map((word) => `'${word}'`).join(' ')} || true`], {
      cwd: repoRoot(),
      encoding: 'utf8',
    });
    expect(found.split('\n').filter((file) => file !== '' && !file.includes('/generated/'))).toEqual([]);
  });
});
