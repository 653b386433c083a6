import { Secret, TOTP } from 'otpauth';
import type { Me, PeopleList, Problem, RecoveryCodes, SecondFactorBegun, SecondFactorView } from '../../libs/contracts';
import { startApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import { sealsWith } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD, type Answer } from './api-shop';

const db = withDatabase();
let shop: ApiShop;

beforeAll(async () => {
  shop = await ApiShop.open(db);
}, 300_000);

/** What an authenticator app shows now, from what was typed into it. */
const shown = (secret: string, stepsAhead = 0) =>
  new TOTP({ secret: Secret.fromBase32(secret) }).generate({ timestamp: shop.clock.nowMs + stepsAhead * 30_000 });
const later = (seconds: number) => (shop.clock.nowMs += seconds * 1_000);

const cookieOf = (answer: Answer, name: string) =>
  answer.headers
    .getSetCookie()
    .find((cookie) => cookie.startsWith(`${name}=`))
    ?.split(';')[0];
const callerOf = (answer: Answer) => new Caller(shop.api.url, cookieOf(answer, 'revright')!);

async function newPerson(login: string, role = 'manager') {
  await db.pool.query(
    `INSERT INTO person (login, name, role, location_id, password_hash)
     SELECT $1, $1, $2, 1, password_hash FROM person WHERE login = 'counter'`,
    [login, role],
  );
  return callerOf(await shop.signIn(login, PASSWORD));
}

/** A person with a second factor, its secret, and the recovery codes. */
async function withSecondFactor(login: string, role?: string) {
  const caller = await newPerson(login, role);
  const { secret, address } = (
    await caller.ask<SecondFactorBegun>('POST', '/session/second-factor', { password: PASSWORD })
  ).body;
  const on = await caller.ask<RecoveryCodes>('POST', '/session/second-factor/on', { code: shown(secret) });
  expect(on.status).toBe(200);
  later(30);
  return { caller, secret, address, codes: on.body.codes };
}

/** The first step, and what the second is asked with. */
async function firstStep(login: string) {
  const answer = await shop.signIn(login, PASSWORD);
  expect([answer.status, (answer.body as Problem).type]).toEqual([401, 'code-needed']);
  expect(cookieOf(answer, 'revright')).toBeUndefined();
  const half = new Caller(shop.api.url, cookieOf(answer, 'revright-step')!);
  return { half, enter: (code: string) => half.ask<Me & Problem>('POST', '/session/code', { code }) };
}

describe('a second factor that is set up', () => {
  it('counts from the first right code on, ends the other sign-ins, and hands out ten recovery codes once', async () => {
    const caller = await newPerson('setting-up');
    const other = callerOf(await shop.signIn('setting-up', PASSWORD));
    const wrong = await caller.ask<Problem>('POST', '/session/second-factor', { password: 'not it' });
    expect([wrong.status, wrong.body.field]).toEqual([400, 'password']);
    const begun = await caller.ask<SecondFactorBegun>('POST', '/session/second-factor', { password: PASSWORD });
    const { secret, address } = begun.body;
    expect(secret).toMatch(/^[A-Z2-7]{32}$/);
    expect(address).toBe(
      `otpauth://totp/Revright:setting-up?issuer=Revright&secret=${secret}&algorithm=SHA1&digits=6&period=30`,
    );
    expect((await shop.signIn('setting-up', PASSWORD)).status).toBe(200);
    const notIt = await caller.ask<Problem>('POST', '/session/second-factor/on', { code: '000000' });
    expect([notIt.status, notIt.body.field]).toEqual([400, 'code']);
    const on = await caller.ask<RecoveryCodes>('POST', '/session/second-factor/on', { code: shown(secret) });
    expect(on.body.codes).toHaveLength(10);
    for (const code of on.body.codes) expect(code).toMatch(/^([2-9A-HJKMNP-Z]{4}-){5}[2-9A-HJKMNP-Z]{4}$/);
    expect((await other.get('/session')).status).toBe(401);
    const view = await caller.get<SecondFactorView>('/session/second-factor');
    expect(view.body).toEqual({ on: true, required: false, recoveryLeft: 10, hasPassword: true });
    const again = await caller.ask<Problem>('POST', '/session/second-factor', { password: PASSWORD });
    expect([again.status, again.body.type]).toEqual([409, 'already-done']);
  });

  it('keeps neither secret nor recovery codes in the clear, nor in the trail', async () => {
    const { secret, codes } = await withSecondFactor('hidden');
    const { rows } = await db.pool.query<{ all: string }>(
      `SELECT concat((SELECT json_agg(f) FROM second_factor f), (SELECT json_agg(r) FROM recovery_code r),
                     (SELECT json_agg(change) FROM audit_entry WHERE noun = 'second_factor')) AS "all"`,
    );
    expect(rows[0]!.all).toContain('"sealed": "not kept here"');
    for (const open of [secret, ...codes, ...codes.map((code) => code.replaceAll('-', ''))])
      expect(rows[0]!.all).not.toContain(open);
  });

  it('is the RFC 6238 code of the secret: the published check value of its appendix B', () => {
    const totp = new TOTP({ secret: Secret.fromUTF8('12345678901234567890'), digits: 8 });
    expect(totp.generate({ timestamp: 59_000 })).toBe('94287082');
  });
});

describe('signing in with a second factor', () => {
  it('takes two steps; the first alone opens nothing', async () => {
    const { secret } = await withSecondFactor('two-steps');
    const { half, enter } = await firstStep('two-steps');
    expect((await half.get('/session')).status).toBe(401);
    expect((await half.get('/tickets')).status).not.toBe(200);
    const entered = await enter(shown(secret));
    expect([entered.status, entered.body.login, entered.body.secondFactor]).toEqual([200, 'two-steps', 'on']);
    expect((await callerOf(entered).get('/session')).status).toBe(200);
    expect((await enter(shown(secret))).body.type).toBe('step-over');
  });

  it('takes no code twice, not even in another sign-in, and none older than one that was taken', async () => {
    const { secret } = await withSecondFactor('once');
    const old = shown(secret);
    later(30);
    const [one, other] = [await firstStep('once'), await firstStep('once')];
    const code = shown(secret);
    const answers = await Promise.all([one.enter(code), other.enter(code)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 401]);
    const third = await firstStep('once');
    expect((await third.enter(code)).body.type).toBe('wrong-code');
    expect((await third.enter(old)).body.type).toBe('wrong-code');
    later(30);
    expect((await third.enter(shown(secret))).status).toBe(200);
  });

  it('takes the code of the step before and after, and none further off', async () => {
    const { secret } = await withSecondFactor('skewed');
    later(300);
    for (const [ahead, status] of [
      [-2, 401],
      [2, 401],
      [-1, 200],
      [1, 200],
    ] as const) {
      const { enter } = await firstStep('skewed');
      expect([ahead, (await enter(shown(secret, ahead))).status]).toEqual([ahead, status]);
    }
  });

  it('takes each recovery code once, however it is written', async () => {
    const { codes } = await withSecondFactor('lost-app');
    const typed = codes[0]!.replaceAll('-', ' ').toLowerCase();
    const entered = await (await firstStep('lost-app')).enter(typed);
    expect(entered.status).toBe(200);
    expect((await (await firstStep('lost-app')).enter(codes[0]!)).status).toBe(401);
    const view = await callerOf(entered).get<SecondFactorView>('/session/second-factor');
    expect(view.body.recoveryLeft).toBe(9);
  });

  it('slows guessing of codes down for that person, over every first step', async () => {
    const { secret } = await withSecondFactor('code-guessed');
    later(120);
    for (let n = 0; n < 5; n++) expect((await (await firstStep('code-guessed')).enter('123')).status).toBe(401);
    const { enter } = await firstStep('code-guessed');
    const braked = await enter(shown(secret));
    expect([braked.status, braked.headers.get('retry-after')]).toEqual([429, '1']);
    later(1);
    expect((await enter(shown(secret))).status).toBe(200);
  });

  it('gives five minutes for the second step', async () => {
    const { secret } = await withSecondFactor('slow');
    const { enter } = await firstStep('slow');
    later(300);
    const answer = await enter(shown(secret));
    expect([answer.status, answer.body.type]).toEqual([401, 'step-over']);
  });

  it('asks for the code after a one-time link too', async () => {
    const { secret } = await withSecondFactor('new-link');
    const administrator = await shop.as('administrator');
    const { body: people } = await administrator.get<PeopleList>('/people');
    const person = people.people.find(({ login }) => login === 'new-link')!;
    expect(person.hasSecondFactor).toBe(true);
    const { body } = await administrator.change<{ link: string }>('POST', `/people/${person.id}/link`, person.version);
    const answer = await shop.anonymous().ask<Problem>('POST', '/session/link', {
      token: body.link.split('#')[1],
      password: 'eleven grey herons at noon',
    });
    expect([answer.status, answer.body.type]).toEqual([401, 'code-needed']);
    const half = new Caller(shop.api.url, cookieOf(answer, 'revright-step')!);
    expect((await half.ask('POST', '/session/code', { code: shown(secret) })).status).toBe(200);
  });
});

describe('a second factor', () => {
  it('is renewed in its recovery codes, and turned off, only with a code', async () => {
    const { caller, secret, codes } = await withSecondFactor('changing');
    const refused = await caller.ask<Problem>('POST', '/session/second-factor/recovery-codes', { code: '1' });
    expect([refused.status, refused.body.field]).toEqual([400, 'code']);
    const renewed = await caller.ask<RecoveryCodes>('POST', '/session/second-factor/recovery-codes', {
      code: shown(secret),
    });
    expect(renewed.body.codes).toHaveLength(10);
    later(30);
    const off = (password: string, code: string) =>
      caller.ask<Problem>('POST', '/session/second-factor/off', { password, code });
    expect((await off('not it', shown(secret))).body.field).toBe('password');
    expect((await off(PASSWORD, codes[0]!)).body.field).toBe('code');
    expect((await off(PASSWORD, renewed.body.codes[0]!)).status).toBe(204);
    expect((await shop.signIn('changing', PASSWORD)).status).toBe(200);
  });

  it('is taken from another by an administrator, which signs that person out', async () => {
    const { caller } = await withSecondFactor('resettable', 'technician');
    const administrator = await shop.as('administrator');
    const reset = async () => {
      const { rows } = await db.pool.query<{ id: number; version: number }>(
        `SELECT id, version FROM person WHERE login = 'resettable'`,
      );
      return administrator.change<Problem>('POST', `/people/${rows[0]!.id}/second-factor/reset`, rows[0]!.version);
    };
    expect((await reset()).status).toBe(204);
    expect((await caller.get('/session')).status).toBe(401);
    expect((await shop.signIn('resettable', PASSWORD)).status).toBe(200);
    expect((await reset()).status).toBe(409);
    const own = await administrator.get<Me>('/session');
    expect((await administrator.change('POST', `/people/${own.body.id}/second-factor/reset`, 1)).status).toBe(409);
  });

  it('sealed with another key is no way in, but a recovery code still is', async () => {
    const { secret, codes } = await withSecondFactor('other-key');
    await db.pool.query(
      `UPDATE second_factor SET sealed = (SELECT sealed FROM second_factor WHERE person_id <> p.id LIMIT 1)
       FROM person p WHERE p.id = person_id AND p.login = 'other-key'`,
    );
    const { enter } = await firstStep('other-key');
    expect((await enter(shown(secret))).status).toBe(500);
    expect((await enter(codes[0]!)).status).toBe(200);
  });
});

describe('a shop that requires a second factor of managers and administrators', () => {
  it('is set so only by an administrator who has one', async () => {
    const manager = await shop.as('manager');
    expect((await manager.ask('PUT', '/settings/sign-in', { secondFactorRequired: true })).status).toBe(403);
    const administrator = await shop.as('administrator');
    const refused = await administrator.settle<Problem>('PUT', '/settings/sign-in', { secondFactorRequired: true });
    expect([refused.status, refused.body.type]).toEqual([409, 'conflict']);
  });

  it('lets a manager without one do nothing but add one, from the next request on; a technician goes on', async () => {
    const { caller: chief } = await withSecondFactor('chief', 'administrator');
    const [manager, technician] = [await newPerson('without'), await shop.as('technician')];
    expect((await manager.get('/flags')).status).toBe(200);
    expect((await chief.settle('PUT', '/settings/sign-in', { secondFactorRequired: true })).status).toBe(200);

    const refused = await manager.get<Problem>('/flags');
    expect([refused.status, refused.body.type]).toEqual([403, 'second-factor-needed']);
    expect((await manager.get('/live')).status).toBe(403);
    expect((await manager.get<Me>('/session')).body).toMatchObject({ secondFactor: 'missing', permissions: [] });
    expect((await technician.get('/flags')).status).toBe(200);

    const begun = await manager.ask<SecondFactorBegun>('POST', '/session/second-factor', { password: PASSWORD });
    const on = await manager.ask('POST', '/session/second-factor/on', { code: shown(begun.body.secret) });
    expect([on.status, (await manager.get('/flags')).status]).toEqual([200, 200]);
    later(30);
    const input = { password: PASSWORD, code: shown(begun.body.secret) };
    const off = await manager.ask<Problem>('POST', '/session/second-factor/off', input);
    expect([off.status, off.body.type]).toEqual([409, 'conflict']);
    expect((await chief.settle('PUT', '/settings/sign-in', { secondFactorRequired: false })).status).toBe(200);
  });
});

describe('the key that secrets are sealed with', () => {
  /** Another start of the same shop, with other keys. */
  const started = async (env: Record<string, string>) => {
    const about = { PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'error', REVRIGHT_DEMO: 'false' };
    const read = readConfig({ ...about, ...env });
    if (!read.ok) throw new Error(read.problems.join(' '));
    const clock = { now: () => shop.clock.nowMs, today: () => shop.clock.today };
    return startApi({ config: read.config, store: shop.store, clock });
  };

  it('is changed with one start that has both; from then on the new one alone opens the door', async () => {
    const { secret } = await withSecondFactor('rotated');
    const [was, is] = ['ab', 'cd'].map((byte) => sealsWith(() => Buffer.from(byte.repeat(32), 'hex')));
    const { rows } = await db.pool.query<{ id: number }>(
      `INSERT INTO webhook (url, events, sealed) VALUES ('https://receiver.example/', '{}', '') RETURNING id`,
    );
    const about = `webhook ${rows[0]!.id}`;
    await db.pool.query('UPDATE webhook SET sealed = $1', [was!.seal('what events are signed with', about)]);
    const changed = { REVRIGHT_KEY: 'cd'.repeat(32) };
    const between = await started({ ...changed, REVRIGHT_KEY_BEFORE: 'ab'.repeat(32) });
    await between.close();
    expect(between.notices.join(' ')).toMatch(/^[1-9]\d* second factors and 1 webhooks were sealed with the new key\./);
    const kept = await db.pool.query<{ sealed: string }>('SELECT sealed FROM webhook');
    expect(is!.open(kept.rows[0]!.sealed, about)).toBe('what events are signed with');
    const api = await started(changed);
    later(30);
    const first = await new Caller(api.url, '').ask('POST', '/session', { login: 'rotated', password: PASSWORD });
    const half = new Caller(api.url, cookieOf(first, 'revright-step')!);
    const entered = await half.ask('POST', '/session/code', { code: shown(secret) });
    await api.close();
    expect(entered.status).toBe(200);
    const back = await started({ REVRIGHT_KEY: 'ab'.repeat(32), REVRIGHT_KEY_BEFORE: 'cd'.repeat(32) });
    await back.close();
  });
});
