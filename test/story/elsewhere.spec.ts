import { withDatabase } from '../../libs/testing';
import { CLIENT, TestProvider } from '../api/provider';
import { accessibilityFindings, BrowserShop } from './browser-shop';

const db = withDatabase();
let shop: BrowserShop;

beforeAll(async () => {
  const provider = await TestProvider.open();
  db.beforeClose(() => Promise.resolve(provider.close()));
  shop = await BrowserShop.open(db, {
    OIDC_ISSUER: provider.issuer,
    OIDC_CLIENT_ID: CLIENT.clientId,
    OIDC_CLIENT_SECRET: CLIENT.clientSecret,
    OIDC_NAME: 'shop account',
  });
  await provider.sendsBackTo(`${shop.api.url}/from-elsewhere`);
}, 300_000);

describe('the other way to sign in', () => {
  const throughProvider = async () => {
    const page = await shop.page();
    await page.goto('/');
    await page.getByRole('button', { name: 'Sign in with shop account' }).click();
    await page.locator('input[name=login]').fill('rosa');
    await page.locator('input[name=password]').fill('any');
    await page.locator('button[type=submit]').click();
    await page.locator('button[type=submit]', { hasText: 'Continue' }).click();
    return page;
  };

  it('leads there and back, and is refused until an administrator has written the address down', async () => {
    const refused = await throughProvider();
    await refused.getByText('belongs to nobody here').waitFor();
    expect(await accessibilityFindings(refused)).toEqual([]);
    await refused.getByRole('button', { name: 'Back to the sign-in' }).click();
    await refused.getByRole('button', { name: 'Sign in with shop account' }).waitFor();
    expect(await accessibilityFindings(refused)).toEqual([]);

    const chief = await shop.page('phone');
    await shop.signIn(chief, 'administrator');
    await chief.goto('/people');
    await chief.getByLabel('E-mail of Rosa Quintero at shop account').fill('rosa@shop.example');
    await chief.getByRole('button', { name: 'Keep it' }).click();
    await chief.getByRole('button', { name: 'Keep it' }).waitFor({ state: 'detached' });

    const entered = await throughProvider();
    await entered.getByRole('navigation', { name: 'Shop' }).waitFor();
    expect(new URL(entered.url()).search).toBe('');
    await entered.getByRole('link', { name: /Rosa Quintero/ }).waitFor();

    await chief.reload();
    await chief.getByText('Bound to an account there.').waitFor();
    expect(await accessibilityFindings(chief)).toEqual([]);
    expect(shop.complaints).toEqual([]);
  }, 120_000);
});
