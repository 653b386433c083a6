import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { BrowserShop } from './browser-shop';

const db = withDatabase();
let shop: BrowserShop;
let page: Page;

const OWNER = 'Yrsa Quillfeather';
const PHONE = '0000 555 9081';

/** Everything a script of the page could find in the browser, and what goes along with each request. */
const keptInBrowser = async (): Promise<string> => {
  const inPage = await page.evaluate(async () => {
    const stores = [localStorage, sessionStorage].map((store) => JSON.stringify({ ...store }));
    const named = (await indexedDB.databases()).map(({ name }) => name);
    const cached = await caches.keys();
    return JSON.stringify([stores, named, cached, history.state, document.cookie]);
  });
  return inPage + JSON.stringify(await page.context().cookies());
};
const field = (name: string) => page.getByRole('main').getByLabel(name, { exact: true });
/** What stands in the form, once it is there. */
const typed = async (): Promise<string[]> => {
  await field('Complaint').waitFor();
  return Promise.all(['Name', 'Phone', 'Complaint'].map((name) => field(name).inputValue()));
};

beforeAll(async () => {
  shop = await BrowserShop.open(db);
  page = await shop.page();
  await shop.signIn(page, 'counter');
}, 300_000);

describe('taking a unit in', () => {
  it('keeps what is typed over a reload, and nothing of the owner in the browser (ASVS 14.3.3)', async () => {
    await page.goto('/new-ticket');
    await field('Name').fill(OWNER);
    await field('Phone').fill(PHONE);
    await field('Complaint').fill('Auger stands still.');
    expect(await keptInBrowser()).not.toMatch(/Quill|9081/);
    await page.reload();
    expect(await typed()).toEqual([OWNER, PHONE, 'Auger stands still.']);
    expect(await keptInBrowser()).not.toMatch(/Quill|9081/);
  }, 60_000);

  it('keeps it on the way through other pages too, until it is started over', async () => {
    await field('Complaint').fill('Auger stands still in wet snow.');
    await page.getByRole('link', { name: 'Callbacks' }).click();
    await page.getByRole('heading', { name: 'Callbacks' }).waitFor();
    await page.goBack();
    expect(await typed()).toEqual([OWNER, PHONE, 'Auger stands still in wet snow.']);
    const forgotten = page.waitForResponse((answer) => answer.request().method() === 'PUT');
    await page.getByRole('button', { name: 'Start over' }).click();
    expect((await forgotten).status()).toBe(204);
    await page.reload();
    expect(await typed()).toEqual(['', '', '']);
  }, 60_000);

  it('clears away what an earlier version of the page left in the browser', async () => {
    await page.evaluate((owner) => localStorage.setItem('revright.draft.intake', JSON.stringify({ owner })), OWNER);
    await page.reload();
    await field('Complaint').waitFor();
    expect(await keptInBrowser()).not.toMatch(/Quill/);
  }, 60_000);

  it('is over with the sign-out, on the server too', async () => {
    await field('Name').fill(OWNER);
    await page.waitForResponse((answer) => answer.request().method() === 'PUT');
    expect((await db.pool.query('SELECT FROM intake_draft')).rowCount).toBe(1);
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.getByLabel('Sign-in name').waitFor();
    expect((await db.pool.query('SELECT FROM intake_draft')).rowCount).toBe(0);
    expect(await keptInBrowser()).not.toMatch(/Quill|9081/);
    expect(shop.complaints).toEqual([]);
  }, 60_000);
});
