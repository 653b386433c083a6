import type { Me, Problem } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller } from './api-shop';
import { CLIENT, ProviderBrowser, TestProvider } from './provider';

const OIDC = { OIDC_CLIENT_ID: CLIENT.clientId, OIDC_CLIENT_SECRET: CLIENT.clientSecret };

describe('a shop without another provider', () => {
  const db = withDatabase();

  it('offers none, and knows no such way', async () => {
    const shop = await ApiShop.open(db);
    expect((await shop.anonymous().get('/session/elsewhere')).body).toEqual({ name: null });
    expect((await shop.anonymous().ask('POST', '/session/elsewhere')).status).toBe(404);
  }, 120_000);
});

describe('a provider that is away', () => {
  const db = withDatabase();

  it('is said in one sentence, and is asked again the next time', async () => {
    const provider = await TestProvider.open();
    const { issuer } = provider;
    const shop = await ApiShop.open(db, { ...OIDC, OIDC_ISSUER: issuer });
    db.beforeClose(() => Promise.resolve(provider.close()));
    // It listens, but answers nothing that a provider would before it is told where to send browsers.
    const away = await shop.anonymous().ask<Problem>('POST', '/session/elsewhere', undefined, { connection: 'close' });
    expect([away.status, away.body.type]).toEqual([503, 'elsewhere-away']);
    await provider.sendsBackTo(`${shop.api.url}/from-elsewhere`);
    expect((await shop.anonymous().ask('POST', '/session/elsewhere')).status).toBe(200);
  }, 120_000);
});

describe('a shop that adds who is unknown', () => {
  const db = withDatabase();

  it('does so as what it says, with a verified address alone, and never takes over a sign-in name', async () => {
    const provider = await TestProvider.open();
    db.beforeClose(() => Promise.resolve(provider.close()));
    const shop = await ApiShop.open(db, { ...OIDC, OIDC_ISSUER: provider.issuer, OIDC_NEW_PEOPLE: 'technician' });
    shop.clock.nowMs = Date.now();
    const backTo = `${shop.api.url}/from-elsewhere`;
    await provider.sendsBackTo(backTo);
    const enter = async (login: string) => {
      const begun = await shop.anonymous().ask<{ address: string }>('POST', '/session/elsewhere');
      const caller = new Caller(shop.api.url, begun.headers.getSetCookie()[0]!.split(';')[0]!);
      const { search } = await new ProviderBrowser().signIn(begun.body.address, login, backTo);
      return caller.ask<Me & Problem>('POST', '/session/elsewhere/back', { query: search });
    };
    const added = await enter('newcomer');
    expect(added.body).toMatchObject({ login: 'newcomer', name: 'Known as newcomer', role: 'technician' });
    expect((await enter('newcomer')).body.id).toBe(added.body.id);
    expect((await enter('unverified')).status).toBe(401);
    expect((await enter('administrator')).status).toBe(401);
  }, 120_000);
});
