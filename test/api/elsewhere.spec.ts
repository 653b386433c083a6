import { Secret, TOTP } from 'otpauth';
import type { Me, PeopleList, PersonView, Problem, SecondFactorBegun } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD, type Answer } from './api-shop';
import { CLIENT, ProviderBrowser, TestProvider } from './provider';

const db = withDatabase();
let provider: TestProvider;
let shop: ApiShop;
let backTo: string;

beforeAll(async () => {
  provider = await TestProvider.open();
  db.beforeClose(() => Promise.resolve(provider.close()));
  shop = await ApiShop.open(db, {
    OIDC_ISSUER: provider.issuer,
    OIDC_CLIENT_ID: CLIENT.clientId,
    OIDC_CLIENT_SECRET: CLIENT.clientSecret,
    OIDC_NAME: 'shop account',
  });
  // Times in the provider's tokens are of the machine's clock.
  shop.clock.nowMs = Date.now();
  backTo = `${shop.api.url}/from-elsewhere`;
  await provider.sendsBackTo(backTo);
}, 300_000);

const cookieOf = (answer: Answer, name: string) =>
  answer.headers
    .getSetCookie()
    .find((cookie) => cookie.startsWith(`${name}=`))
    ?.split(';')[0];

/** A browser that was sent away, with the cookie it has to bring again. */
async function sentAway() {
  const begun = await shop.anonymous().ask<{ address: string }>('POST', '/session/elsewhere');
  expect(begun.status).toBe(200);
  const caller = new Caller(shop.api.url, cookieOf(begun, 'revright-elsewhere')!);
  const back = (query: string) => caller.ask<Me & Problem>('POST', '/session/elsewhere/back', { query });
  return { address: begun.body.address, back };
}

/** The whole way of somebody who signs in there under that name. */
async function throughProvider(login: string) {
  const { address, back } = await sentAway();
  const { search } = await new ProviderBrowser().signIn(address, login, backTo);
  return { search, answer: await back(search) };
}

async function writtenDown(login: string, email: string | null): Promise<Answer<PersonView & Problem>> {
  const administrator = await shop.as('administrator');
  const { body } = await administrator.get<PeopleList>('/people');
  const { id, version } = body.people.find((person) => person.login === login)!;
  return administrator.change('PUT', `/people/${id}/elsewhere`, version, { email });
}

async function newPerson(login: string): Promise<void> {
  await db.pool.query(
    `INSERT INTO person (login, name, role, location_id, password_hash)
     SELECT $1, $1, 'counter', 1, password_hash FROM person WHERE login = 'counter'`,
    [login],
  );
}

describe('signing in with another provider', () => {
  it('is offered by name, and sends the browser away with state, nonce and a challenge', async () => {
    expect((await shop.anonymous().get('/session/elsewhere')).body).toEqual({ name: 'shop account' });
    const { address } = await sentAway();
    const asked = Object.fromEntries(new URL(address).searchParams);
    expect(asked).toMatchObject({
      client_id: CLIENT.clientId,
      redirect_uri: backTo,
      response_type: 'code',
      scope: 'openid profile email',
      code_challenge_method: 'S256',
    });
    for (const name of ['state', 'nonce', 'code_challenge']) expect(asked[name]).toMatch(/^[\w-]{43}$/);
  });

  it('lets nobody in whom no administrator has written down, and adds nobody', async () => {
    const before = (await db.pool.query('SELECT FROM person')).rowCount;
    const { answer } = await throughProvider('stranger');
    expect([answer.status, answer.body.type]).toEqual([401, 'wrong-elsewhere']);
    expect(answer.body.detail).toContain('belongs to nobody here');
    expect(cookieOf(answer, 'revright')).toBeUndefined();
    expect((await db.pool.query('SELECT FROM person')).rowCount).toBe(before);
  });

  it('lets in who was written down, and from then on goes by the account, not by the address', async () => {
    await newPerson('ada');
    expect((await writtenDown('ada', 'Ada@shop.example')).body.elsewhere).toEqual({
      email: 'ada@shop.example',
      bound: false,
    });
    const { answer } = await throughProvider('ada');
    expect([answer.status, answer.body.login]).toEqual([200, 'ada']);
    const caller = new Caller(shop.api.url, cookieOf(answer, 'revright')!);
    expect((await caller.get<Me>('/session')).body.login).toBe('ada');

    await db.pool.query(`UPDATE outside_identity SET email = 'moved@shop.example' WHERE email = 'ada@shop.example'`);
    expect((await throughProvider('ada')).answer.body.login).toBe('ada');
    expect((await throughProvider('moved')).answer.status).toBe(401);
  });

  it('takes no address that the provider has not verified', async () => {
    await newPerson('una');
    await writtenDown('una', 'unverified@shop.example');
    expect((await throughProvider('unverified')).answer.status).toBe(401);
  });

  it('lets nobody in who has left, or whose account was taken away', async () => {
    await newPerson('leaver');
    await writtenDown('leaver', 'leaver@shop.example');
    expect((await throughProvider('leaver')).answer.status).toBe(200);
    await db.pool.query(`UPDATE person SET active = false WHERE login = 'leaver'`);
    expect((await throughProvider('leaver')).answer.status).toBe(401);
    await db.pool.query(`UPDATE person SET active = true WHERE login = 'leaver'`);
    expect((await writtenDown('leaver', null)).body.elsewhere).toBeNull();
    expect((await throughProvider('leaver')).answer.status).toBe(401);
  });

  it('writes no address down for two people', async () => {
    await newPerson('first');
    await newPerson('second');
    expect((await writtenDown('first', 'shared@shop.example')).status).toBe(200);
    const refused = await writtenDown('second', 'shared@shop.example');
    expect([refused.status, refused.body.field]).toEqual([409, 'email']);
    expect((await writtenDown('second', 'no address')).status).toBe(400);
  });

  it('asks for the second factor of who has one here', async () => {
    await newPerson('careful');
    await writtenDown('careful', 'careful@shop.example');
    const caller = new Caller(shop.api.url, cookieOf(await shop.signIn('careful', PASSWORD), 'revright')!);
    const begun = await caller.ask<SecondFactorBegun>('POST', '/session/second-factor', { password: PASSWORD });
    const totp = new TOTP({ secret: Secret.fromBase32(begun.body.secret) });
    const code = (ahead = 0) => totp.generate({ timestamp: shop.clock.nowMs + ahead });
    expect((await caller.ask('POST', '/session/second-factor/on', { code: code() })).status).toBe(200);
    const { answer } = await throughProvider('careful');
    expect([answer.status, answer.body.type]).toEqual([401, 'code-needed']);
    const half = new Caller(shop.api.url, cookieOf(answer, 'revright-step')!);
    expect((await half.ask('POST', '/session/code', { code: code(30_000) })).status).toBe(200);
  });
});

describe('an answer of another provider', () => {
  it('is good once, in the browser that was sent away, and in no other', async () => {
    await newPerson('once');
    await writtenDown('once', 'once@shop.example');
    const [mine, other] = [await sentAway(), await sentAway()];
    const { search } = await new ProviderBrowser().signIn(mine.address, 'once', backTo);
    const nobody = await shop.anonymous().ask('POST', '/session/elsewhere/back', { query: search });
    expect(nobody.status).toBe(401);
    expect((await other.back(search)).status).toBe(401);
    expect((await mine.back(search)).status).toBe(200);
    expect((await mine.back(search)).status).toBe(401);
  });

  it.each([
    [
      'an error of the provider',
      (query: URLSearchParams) => (query.delete('code'), query.set('error', 'access_denied')),
    ],
    ['another state', (query: URLSearchParams) => query.set('state', 'A'.repeat(43))],
    ['another issuer', (query: URLSearchParams) => query.set('iss', 'https://elsewhere.example')],
    ['another code', (query: URLSearchParams) => query.set('code', 'A'.repeat(43))],
    ['no code', (query: URLSearchParams) => query.delete('code')],
  ])('is refused with %s', async (_, change) => {
    const { address, back } = await sentAway();
    const { searchParams } = await new ProviderBrowser().signIn(address, 'once', backTo);
    change(searchParams);
    const answer = await back(`?${searchParams.toString()}`);
    expect([answer.status, answer.body.type]).toEqual([401, 'wrong-elsewhere']);
  });

  it('is refused when the browser was away for more than ten minutes', async () => {
    const { address, back } = await sentAway();
    const { search } = await new ProviderBrowser().signIn(address, 'once', backTo);
    shop.clock.nowMs += 600_000;
    expect((await back(search)).status).toBe(401);
    shop.clock.nowMs -= 600_000;
  });
});
