import { setTimeout as sleep } from 'node:timers/promises';
import type { Invited, Me, PeopleList, PersonView, Problem } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD, type Answer } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let administrator: Caller;

const GOOD = 'eleven grey herons at noon';

beforeAll(async () => {
  shop = await ApiShop.open(db);
  administrator = await shop.as('administrator');
}, 300_000);

const tokenOf = ({ link }: { link: string }) => link.split('#')[1]!;
const useLink = <T = Me>(token: string, password: string) =>
  shop.anonymous().ask<T>('POST', '/session/link', { token, password });
const callerOf = (answer: Answer) => new Caller(shop.api.url, answer.headers.get('set-cookie')!.split(';')[0]!);

/** A new person who has set a password, as the administrator sees the person then. */
async function join(login: string, role = 'technician') {
  const added = await administrator.ask<Invited>('POST', '/people', { login, name: login, role, locationId: 1 });
  if (added.status !== 201) throw new Error(JSON.stringify(added.body));
  const entered = await useLink(tokenOf(added.body), GOOD);
  return { person: await seen(login), caller: callerOf(entered) };
}

async function seen(login: string): Promise<PersonView> {
  const { body } = await administrator.get<PeopleList>('/people');
  return body.people.find((person) => person.login === login)!;
}

const change = (person: PersonView, patch: object, caller = administrator) =>
  caller.change<PersonView & Problem>('PATCH', `/people/${person.id}`, person.version, patch);

describe('a person who is added', () => {
  it('gets a link that sets the password and signs in, once', async () => {
    const added = await administrator.ask<Invited>('POST', '/people', {
      login: 'Mika',
      name: 'Mika Holt',
      role: 'counter',
      locationId: 1,
    });
    expect(added.status).toBe(201);
    expect(added.body.link).toMatch(/^\/welcome#[\w-]{43}$/);
    expect(added.body.person).toMatchObject({ login: 'mika', hasPassword: false, active: true });
    expect((await shop.signIn('mika', GOOD)).status).toBe(401);
    const entered = await useLink(tokenOf(added.body), GOOD);
    expect(entered.body).toMatchObject({ login: 'mika', role: 'counter' });
    expect((await callerOf(entered).get('/session')).status).toBe(200);
    expect((await shop.signIn('mika', GOOD)).status).toBe(200);
    expect((await useLink<Problem>(tokenOf(added.body), GOOD)).status).toBe(403);
    expect(await seen('mika')).toMatchObject({ hasPassword: true, linkUntil: null });
  });

  it('has a day for it; a newer link ends the older', async () => {
    const first = await administrator.ask<Invited>('POST', '/people', {
      login: 'slow',
      name: 'Slow',
      role: 'counter',
      locationId: 1,
    });
    const { id, version } = first.body.person;
    const second = await administrator.change<Invited>('POST', `/people/${id}/link`, version);
    expect((await useLink(tokenOf(first.body), GOOD)).status).toBe(403);
    shop.clock.nowMs += 24 * 3_600_000;
    expect((await useLink(tokenOf(second.body), GOOD)).status).toBe(403);
    shop.clock.nowMs -= 24 * 3_600_000;
    expect((await useLink(tokenOf(second.body), GOOD)).status).toBe(200);
  });

  it('leaves only the hash of the link in the database', async () => {
    const { body } = await administrator.ask<Invited>('POST', '/people', {
      login: 'hashed',
      name: 'Hashed',
      role: 'counter',
      locationId: 1,
    });
    const { rows } = await db.pool.query<{ all: string }>('SELECT invitation::text AS all FROM invitation');
    expect(rows.length).toBeGreaterThan(0);
    for (const { all } of rows) expect(all).not.toContain(tokenOf(body));
  });

  it('is refused with a sentence when the name is taken, the location unknown or the role none', async () => {
    const add = (more: object) =>
      administrator.ask<Problem>('POST', '/people', {
        login: 'x1',
        name: 'X',
        role: 'counter',
        locationId: 1,
        ...more,
      });
    expect(await add({ login: 'manager' })).toMatchObject({ status: 409, body: { field: 'login' } });
    expect(await add({ locationId: 99 })).toMatchObject({ status: 400, body: { field: 'locationId' } });
    expect(await add({ role: 'owner' })).toMatchObject({ status: 400, body: { field: 'role' } });
    expect(await add({ login: 'a b' })).toMatchObject({ status: 400, body: { field: 'login' } });
  });
});

describe('a password', () => {
  it.each([
    ['fourteen chars', 'has 14 characters'],
    ['passwordpassword', 'guessed first'],
    ['qwertyuiopasdfgh', 'guessed first'],
    ['1234567890123456', 'guessed first'],
    ['revrightrevright', 'guessed first'],
  ])("is refused when it is '%s', and the link stays good", async (password, why) => {
    const login = `p${password.replace(/\W/g, '').toLowerCase()}`;
    const { body } = await administrator.ask<Invited>('POST', '/people', {
      login,
      name: 'P',
      role: 'counter',
      locationId: 1,
    });
    const refused = await useLink<Problem>(tokenOf(body), password);
    expect([refused.status, refused.body.field]).toEqual([400, 'password']);
    expect(refused.body.detail).toContain(why);
    expect((await useLink(tokenOf(body), GOOD)).status).toBe(200);
  });

  it('may hold anything and is compared whole, past the 72nd byte too', async () => {
    const long = `${'ünïcode 🙂 '.repeat(12)}end`;
    const { body } = await administrator.ask<Invited>('POST', '/people', {
      login: 'long',
      name: 'L',
      role: 'counter',
      locationId: 1,
    });
    // What no database keeps is refused, and neither cut off nor left out.
    expect((await useLink(tokenOf(body), `${long}\0more`)).status).toBe(400);
    expect((await useLink(tokenOf(body), long)).status).toBe(200);
    expect((await shop.signIn('long', `${long.slice(0, -1)}D`)).status).toBe(401);
    for (const longer of [`${long}\0`, `${long}\0more`]) expect((await shop.signIn('long', longer)).status).toBe(400);
    expect((await shop.signIn('long', long)).status).toBe(200);
  });

  it('is changed by its owner with the present one, which ends every other sign-in', async () => {
    const { caller } = await join('changer');
    const other = callerOf(await shop.signIn('changer', GOOD));
    const ask = (current: string, next: string) =>
      caller.ask<Problem | null>('POST', '/session/password', { current, next });
    expect((await ask('not it', 'nine blue kettles in a row')).status).toBe(400);
    expect((await ask(GOOD, 'short')).status).toBe(400);
    expect((await ask(GOOD, 'nine blue kettles in a row')).status).toBe(204);
    expect((await caller.get('/session')).status).toBe(200);
    expect((await other.get('/session')).status).toBe(401);
    expect((await shop.signIn('changer', GOOD)).status).toBe(401);
    expect((await shop.signIn('changer', 'nine blue kettles in a row')).status).toBe(200);
  });
});

describe('signing out everywhere', () => {
  it('ends every session of the person and of nobody else', async () => {
    const { caller } = await join('everywhere');
    const other = callerOf(await shop.signIn('everywhere', GOOD));
    expect((await caller.ask('DELETE', '/session/all')).status).toBe(204);
    expect((await caller.get('/session')).status).toBe(401);
    expect((await other.get('/session')).status).toBe(401);
    expect((await administrator.get('/session')).status).toBe(200);
  });
});

describe('a changed person', () => {
  it('has another role at the next request, and no session once disabled', async () => {
    const { person, caller } = await join('mover', 'manager');
    const promoted = await change(person, { role: 'administrator' });
    expect(promoted.body).toMatchObject({ role: 'administrator', version: person.version + 1 });
    expect((await caller.get('/people')).status).toBe(200);
    const elsewhere = callerOf(await shop.signIn('mover', GOOD));
    expect((await elsewhere.get('/people')).status).toBe(200);
    const left = await change(promoted.body, { active: false });
    expect(left.body.active).toBe(false);
    // All of them at once, and not one by one as they are used.
    const { rows } = await db.pool.query('SELECT FROM session WHERE person_id = $1', [person.id]);
    expect(rows).toHaveLength(0);
    for (const one of [caller, elsewhere]) expect((await one.get('/session')).status).toBe(401);
    expect((await shop.signIn('mover', GOOD)).status).toBe(401);
  });

  it('is changed on the version one has seen', async () => {
    const { person } = await join('versioned');
    expect((await administrator.ask('PATCH', `/people/${person.id}`, { name: 'N' })).status).toBe(428);
    expect((await change(person, { name: 'First' })).status).toBe(200);
    const late = await change(person, { name: 'Second' });
    expect(late).toMatchObject({ status: 412, body: { current: { name: 'First' } } });
  });

  it('stays administrator while there is no other', async () => {
    const me = await seen('administrator');
    const { rows } = await db.pool.query(`SELECT FROM person WHERE role = 'administrator' AND active`);
    expect(rows).toHaveLength(1);
    expect((await change(me, { role: 'manager' })).status).toBe(409);
    expect((await change(me, { active: false })).status).toBe(409);
    const { person: second, caller } = await join('second', 'administrator');
    // Both have asked before either is let through.
    const client = await db.pool.connect();
    await client.query(`BEGIN; SELECT FROM person WHERE role = 'administrator' FOR UPDATE`);
    const asked = Promise.all([change(me, { active: false }), change(second, { active: false }, caller)]);
    const waiting = `SELECT FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'`;
    while ((await db.pool.query(waiting)).rowCount! < 2) await sleep(20);
    await client.query('COMMIT');
    client.release();
    const both = await asked;
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
    await db.pool.query(`UPDATE person SET active = true, role = 'administrator' WHERE login = 'administrator'`);
    administrator = callerOf(await shop.signIn('administrator', PASSWORD));
  });
});
