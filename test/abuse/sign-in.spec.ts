import { setTimeout as sleep } from 'node:timers/promises';
import { Client } from 'pg';
import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import { passwords } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import type { Passwords } from '../../libs/usecases';
import { ApiShop, PASSWORD } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
/** What the security log was told, one line each. */
const lines: string[] = [];

beforeAll(async () => {
  shop = await ApiShop.open(db);
}, 300_000);

/** Hashes nothing and counts how often it was asked to. */
function counting(): Passwords & { compared: number } {
  const one = {
    compared: 0,
    hash: (password: string) => passwords.hash(password),
    verify: (_: string | null, password: string) => {
      one.compared++;
      return Promise.resolve(password === PASSWORD);
    },
  };
  return one;
}

/** One more API on the shop's database, as a second process would be. */
async function anotherApi(its: Passwords): Promise<RunningApi> {
  const read = readConfig({ PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'info', REVRIGHT_DEMO: 'false' });
  if (!read.ok) throw new Error(read.problems.join(' '));
  const clock = { now: () => shop.clock.nowMs, today: () => shop.clock.today };
  const securityLog = { write: (line: string) => void lines.push(line) };
  const api = await startApi({ config: read.config, store: shop.store, clock, passwords: its, securityLog });
  running.push(api);
  return api;
}

/** Closed again after each test, whatever became of it. */
const running: RunningApi[] = [];
afterEach(async () => {
  jest.restoreAllMocks();
  for (const api of running.splice(0)) await api.close();
});

const from = (n: number) => `10.${n >> 16}.${(n >> 8) & 255}.${n & 255}`;

function signIn(api: { url: string }, login: string, password: string, headers: Record<string, string> = {}) {
  const body = JSON.stringify({ login, password });
  return fetch(`${api.url}/api/session`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body,
  });
}

describe('guessing at the sign-in', () => {
  it('15: a thousand wrong passwords from a thousand addresses in ten minutes: at most fifteen are compared', async () => {
    const its = counting();
    const apis = [await anotherApi(its), await anotherApi(its)] as const;
    const known = await signIn(apis[0], 'counter', PASSWORD);
    const device = known.headers.getSetCookie().find((cookie) => cookie.startsWith('revright-device='))!;
    its.compared = 0;
    for (let n = 0; n < 1_000; n += 50) {
      const guesses = Array.from({ length: 50 }, (_, k) =>
        signIn(apis[k % 2 === 0 ? 0 : 1], 'counter', `guess ${n + k}`, { 'x-forwarded-for': from(n + k) }),
      );
      for (const { status } of await Promise.all(guesses)) expect([401, 429]).toContain(status);
      shop.clock.nowMs += 30_000;
    }
    expect(its.compared).toBeGreaterThanOrEqual(5);
    expect(its.compared).toBeLessThanOrEqual(15);

    // A restart forgives nothing, and nobody waits for more than a quarter of an hour.
    for (const api of running.splice(0)) await api.close();
    const restarted = await anotherApi(its);
    const elsewhere = await signIn(restarted, 'counter', PASSWORD, { 'x-forwarded-for': '10.9.9.9' });
    expect(elsewhere.status).toBe(429);
    expect(Number(elsewhere.headers.get('retry-after'))).toBeLessThanOrEqual(900);
    // In a browser the person has signed in with before there is nothing to wait for.
    const right = await signIn(restarted, 'counter', PASSWORD, { cookie: device.split(';')[0]! });
    expect(right.status).toBe(200);
    // Nor is that browser a way round: it has five tries too, and is nobody else's.
    const again = right.headers.getSetCookie().find((cookie) => cookie.startsWith('revright-device='))!;
    const cookie = again.split(';')[0]!;
    its.compared = 0;
    for (let n = 0; n < 20; n++) await signIn(restarted, 'counter', `guess ${n}`, { cookie });
    expect(its.compared).toBe(5);
  }, 120_000);

  it('15: thirty tries a minute from one address, whatever the names', async () => {
    const its = counting();
    const api = await anotherApi(its);
    shop.clock.nowMs += 120_000;
    const headers = { 'x-forwarded-for': '10.20.30.40' };
    for (let n = 0; n < 40; n++) await signIn(api, `name-${n}`, 'wrong', headers);
    expect(its.compared).toBe(30);
    shop.clock.nowMs += 60_000;
    expect((await signIn(api, 'name-0', 'wrong', headers)).status).toBe(401);
  }, 60_000);

  it('16: an unknown and a known name bring the same answer after the same questions and one comparison', async () => {
    const its = counting();
    const api = await anotherApi(its);
    shop.clock.nowMs += 120_000;
    await signIn(api, 'somebody', 'wrong', { 'x-forwarded-for': '10.78.0.1' });
    const asked = jest.spyOn(Client.prototype, 'query');
    const tell = async (login: string) => {
      asked.mockClear();
      its.compared = 0;
      const answer = await signIn(api, login, 'wrong', { 'x-forwarded-for': `10.77.0.${login.length}` });
      const questions = asked.mock.calls.map(([query]) => textOf(query));
      return { status: answer.status, body: await answer.text(), compared: its.compared, questions };
    };
    const [known, unknown] = [await tell('technician'), await tell('nobody')];
    expect(known.questions.length).toBeGreaterThan(3);
    expect(unknown).toEqual(known);
  });

  it('16: nobody’s password takes as long a turn at the hashing as somebody’s', async () => {
    const known = await passwords.hash(PASSWORD);
    // What nobody’s is compared with is made once.
    await passwords.verify(null, 'x');
    const turnedAway = async (hash: string | null) => {
      const all = await Promise.allSettled(Array.from({ length: 40 }, () => passwords.verify(hash, 'x')));
      return all.filter(({ status }) => status === 'rejected').length;
    };
    // Two at work and twenty in the queue: as many are turned away as if the name were known.
    expect([await turnedAway(known), await turnedAway(null)]).toEqual([18, 18]);
  });

  it('17: a password of a megabyte is refused wherever one is typed, before it is compared or hashed', async () => {
    const hashed: string[] = [];
    const its = counting();
    const api = await anotherApi({ ...its, hash: (password) => (hashed.push(password), passwords.hash(password)) });
    shop.clock.nowMs += 120_000;
    const signedIn = await signIn(api, 'technician', PASSWORD, { 'x-forwarded-for': '10.79.0.1' });
    const cookie = signedIn.headers.get('set-cookie')!.split(';')[0]!;
    its.compared = 0;
    const long = 'x'.repeat(1_000_000);
    for (const [path, body] of [
      ['/session', { login: 'technician', password: long }],
      ['/session/link', { token: 'a'.repeat(43), password: long }],
      ['/session/password', { current: long, next: 'nine blue kettles in a row' }],
      ['/session/password', { current: PASSWORD, next: long }],
      ['/session/second-factor', { password: long }],
    ] as const) {
      const headers = { 'content-type': 'application/json', cookie };
      const sent = { method: 'POST', headers, body: JSON.stringify(body) };
      expect([path, (await fetch(`${api.url}/api${path}`, sent)).status]).toEqual([path, 400]);
    }
    expect([its.compared, hashed]).toEqual([0, []]);
  });

  it('19: two hundred sign-ins at once leave the other routes answering, and overload none', async () => {
    shop.clock.nowMs += 120_000;
    let [atOnce, most] = [0, 0];
    let letThrough: () => void = () => undefined;
    const met = new Promise<void>((resolve) => (letThrough = resolve));
    const real: Passwords = {
      hash: (password) => passwords.hash(password),
      verify: async (hash, password) => {
        most = Math.max(most, ++atOnce);
        // However slowly they come in on a busy machine, more meet here than are worked on or wait.
        if (most >= 60) letThrough();
        await met;
        return passwords.verify(hash, password).finally(() => atOnce--);
      },
    };
    const api = await anotherApi(real);
    const flood = Promise.all(
      Array.from({ length: 200 }, (_, n) => signIn(api, `flood-${n}`, 'x', { 'x-forwarded-for': from(70_000 + n) })),
    );
    const others: number[] = [];
    let done = false;
    void flood.then(() => (done = true));
    while (!done) {
      others.push((await fetch(`${api.url}/api/health`)).status);
      await sleep(1);
    }
    expect(new Set((await flood).map(({ status }) => status))).toEqual(new Set([401, 429]));
    expect(others.length).toBeGreaterThan(3);
    expect(new Set(others)).toEqual(new Set([200]));
    expect(most).toBeGreaterThan(1);
  }, 60_000);
});

describe('what is written into the log', () => {
  it('32: is one line for each record, whatever a person or a browser typed', async () => {
    const failing: Passwords = {
      hash: (password) => passwords.hash(password),
      verify: () => Promise.reject(new Error('broken\n{"level":"error","message":"made up"}')),
    };
    const out = jest.spyOn(process.stdout, 'write').mockReturnValue(true);
    const err = jest.spyOn(process.stderr, 'write').mockReturnValue(true);
    const api = await anotherApi(failing);
    lines.length = 0;
    const nasty = 'ole\n{"act":"signed-in","personId":1}\r\n\u2028\u0085';
    expect((await signIn(api, nasty, 'x', { 'x-forwarded-for': '10.1.1.1' })).status).toBe(500);
    const path = `${api.url}/api/tickets/%0a%7b%22act%22%3a%22signed-in%22%7d`;
    expect((await fetch(path, { headers: { cookie: 'revright=a%0ab', 'user-agent': 'x' } })).status).toBe(401);
    const written = [...out.mock.calls, ...err.mock.calls].map(([text]) => String(text)).filter((text) => text !== '');
    jest.restoreAllMocks();
    const records = [...lines, ...written.filter((text) => text.startsWith('{'))];
    expect(records.length).toBeGreaterThanOrEqual(2);
    for (const record of records) {
      expect(record.trimEnd().split(/[\r\n\u2028\u0085]/)).toHaveLength(1);
      expect(typeof JSON.parse(record)).toBe('object');
    }
    expect(lines.map((line) => (JSON.parse(line) as { act: string }).act)).toEqual(['refused']);
    expect(records.join('')).not.toContain('ole');
  });

  it('says who signed in, how, and what was refused, and no password, token or typed name', async () => {
    const api = await anotherApi(counting());
    shop.clock.nowMs += 120_000;
    lines.length = 0;
    const right = await signIn(api, 'manager', PASSWORD, { 'x-forwarded-for': '10.4.4.4' });
    await signIn(api, 'someone-who-typed-a-secret', 'wrong one', { 'x-forwarded-for': '10.4.4.4' });
    const events = lines.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(events).toEqual([
      expect.objectContaining({ act: 'signed-in', how: 'password', address: '10.4.4.4', name: 'security' }),
      expect.objectContaining({ act: 'wrong-password', address: '10.4.4.4' }),
    ]);
    expect(events[0]!['time']).toMatch(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/);
    const token = right.headers.get('set-cookie')!.split(/[=;]/)[1]!;
    for (const secret of [PASSWORD, 'wrong one', 'someone-who', token]) expect(lines.join('')).not.toContain(secret);
  });
});

function textOf(query: unknown): string {
  return typeof query === 'string' ? query : String((query as { text?: unknown } | null)?.text);
}
