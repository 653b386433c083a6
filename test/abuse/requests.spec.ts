import { execFileSync } from 'node:child_process';
import { request as ask } from 'node:http';
import { repoRoot } from '../../libs/config';
import type { Problem, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop } from '../api/api-shop';

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

const trailEnd = async (): Promise<string> =>
  (await db.pool.query<{ id: string }>('SELECT max(id)::text AS id FROM audit_entry')).rows[0]!.id;

describe('a request that means harm', () => {
  it('10: reaches no other method by an override header', async () => {
    const answer = await raw({
      path: `/tickets/${ticket.id}`,
      headers: { 'x-http-method-override': 'PATCH', 'if-match': `"${ticket.version}"` },
      body: '{"complaint":"overridden"}',
    });
    expect(answer.status).toBe(404);
    const { text } = await raw({ method: 'GET', path: `/tickets/${ticket.id}` });
    expect(JSON.parse(text)).toMatchObject({ complaint: ticket.complaint, version: ticket.version });
  });

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
    ticket = body;
  });

  it('21: changes nothing by any GET, whatever it names', async () => {
    const before = await trailEnd();
    for (const { method, path } of shop.api.routes) {
      if (method !== 'GET' || path === '/live') continue;
      const { status } = await raw({ method: 'GET', path: path.replace(/:\w+/g, String(ticket.id)) });
      expect(`${path} ${status < 500}`).toBe(`${path} true`);
    }
    expect(await trailEnd()).toBe(before);
  });

  it('22: is given no leave by a foreign origin, and no method is told', async () => {
    const headers = { origin: 'https://elsewhere.example', 'access-control-request-method': 'POST' };
    const response = await fetch(`${shop.api.url}/api/look-up`, { method: 'OPTIONS', headers });
    expect(response.headers.get('access-control-allow-origin')).toBeNull();
  });

  it.each([
    ['17: a password of a megabyte', '/session', JSON.stringify({ login: 'manager', password: 'x'.repeat(1_000_000) })],
    ['36: a prototype and a constructor', '/look-up', '{"__proto__":{"a":1},"constructor":{"prototype":{"a":1}}}'],
    ['36: a list where text belongs', '/look-up', '{"lineCode":["SNOW-2"]}'],
    ['36: a number too large to be one', '/look-up', '{"lineCode":1e309}'],
    ['36: a lone half of a character', '/look-up', '{"lineCode":"\\ud800"}'],
    ['36: a character that cannot be kept', '/look-up', '{"lineCode":"a\\u0000"}'],
    ['37: ten thousand levels', '/look-up', '['.repeat(10_000) + ']'.repeat(10_000)],
    ['23: quotes of SQL', '/look-up', `{"lineCode":"x'; DROP TABLE ticket; --"}`],
  ])('%s is refused with a 4xx and breaks nothing', async (_, path, body) => {
    const { status } = await raw({ path, body });
    expect(Math.floor(status / 100)).toBe(4);
    expect((await raw({ method: 'GET', path: '/session' })).status).toBe(200);
  });

  it('37: is cut off when it is larger than any of ours', async () => {
    const answer = await raw({ path: '/look-up', body: JSON.stringify({ lineCode: 'x'.repeat(6_000_000) }) }).catch(
      () => ({ status: 413 }),
    );
    expect(answer.status).toBe(413);
  });

  it('38: with five thousand parameters, or one twice, or as a list, never breaks the server', async () => {
    const many = Array.from({ length: 5_000 }, (_, n) => `a${n}=1`).join('&');
    for (const query of [many.slice(0, 12_000), 'q=a&q=b', 'q[]=a', 'q[a]=b'])
      expect((await raw({ method: 'GET', path: `/search?${query}` })).status).toBeLessThan(500);
  });

  it('24: is answered in good time when its search is full of wildcards', async () => {
    for (const q of ['%'.repeat(100), '_'.repeat(100), '\\%_'.repeat(30)]) {
      const { status, text } = await raw({ method: 'GET', path: `/search?q=${encodeURIComponent(q)}` });
      expect([status, text]).toEqual([200, '[]']);
    }
    expect((await raw({ method: 'GET', path: `/search?q=${'x'.repeat(10_000)}` })).status).toBe(400);
  });

  it('42: has no page that is not one', async () => {
    for (const after of ['-1', '9.9', '1.99999999999', "1.1' OR 1=1"])
      expect((await raw({ method: 'GET', path: `/callbacks?after=${encodeURIComponent(after)}` })).status).toBe(400);
  });

  it('44: is told no stack, no query and no version of anything when it fails', async () => {
    const { text } = await raw({ path: '/look-up', body: '{' });
    expect(Object.keys(JSON.parse(text) as Problem).sort()).toEqual(['detail', 'status', 'title', 'type']);
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

  it('23: finds no query that is put together from text without being marked', () => {
    const unsafe = ['grep', '-rlE', '\\$(query|execute)RawUnsafe', '--include=*.ts', 'libs', 'apps'];
    const found = execFileSync('sh', ['-c', `${unsafe.map((word) => `'${word}'`).join(' ')} || true`], {
      cwd: repoRoot(),
      encoding: 'utf8',
    });
    expect(found.split('\n').filter((file) => file !== '' && !file.includes('/generated/'))).toEqual([]);
  });
});
