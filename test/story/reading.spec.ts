import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { BrowserShop } from './browser-shop';

const db = withDatabase();
let shop: BrowserShop;
let page: Page;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
  page = await shop.page();
  await shop.signIn(page, 'manager');
}, 300_000);

const seen = (text: string | RegExp) => page.getByText(text).filter({ visible: true }).first().waitFor();

/** Days as the papers' sentences and the shop's own manner write them: `3 Mar 2017`. */
const ENGLISH_DAY = /\b\d{1,2} (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) \d{4}\b/;

/** What of the page still stands in another manner. */
async function leftOver(path: string, ready: string | RegExp): Promise<string[]> {
  await page.goto(path);
  await seen(ready);
  const text = (await page.locator('main').innerText()).split('\n');
  return text.filter((line) => ENGLISH_DAY.test(line)).map((line) => `${path}: ${line}`);
}

async function choose(reading: { manner: string; torque: string; length: string }): Promise<void> {
  await page.goto('/my-sign-in');
  const asTheShop = page.getByLabel('As the shop writes them');
  if (await asTheShop.isChecked()) await asTheShop.uncheck();
  await page.getByLabel('Days and numbers are written as').selectOption(reading.manner);
  await page.getByLabel('Torque first in').selectOption(reading.torque);
  await page.getByLabel('Lengths first in').selectOption(reading.length);
  const kept = page.waitForResponse((answer) => answer.url().endsWith('/session/reading'));
  await page.getByRole('button', { name: 'Keep days, numbers and units' }).click();
  expect((await kept).status()).toBe(200);
}

describe('how a person reads the page', () => {
  it('is as the shop writes until the person chooses otherwise', async () => {
    await page.goto('/bulletins');
    await seen('4 Oct 2025');
  }, 60_000);

  it('holds on every page, also in sentences that the rules wrote', async () => {
    await choose({ manner: 'en-US', torque: 'lbf·ft', length: 'in' });
    const left = [
      await leftOver('/bulletins', 'Oct 4, 2025'),
      await leftOver('/flagged', / of [A-Z][a-z]{2} \d+, \d{4}/),
      await leftOver('/callbacks', /^Since [A-Z][a-z]{2} \d+, \d{4}$/),
      await leftOver('/units/7', /^Built [A-Z][a-z]{2} \d+, \d{4} to [A-Z][a-z]{2} \d+, \d{4}/),
      await leftOver('/rulebook?line=DRIFTBREAK', 'in force since Sep 1, 2012'),
      await leftOver('/figures', /[A-Z][a-z]{2} \d+, \d{4} to [A-Z][a-z]{2} \d+, \d{4}/),
      await leftOver('/', /(Late, p|P)romised [A-Z][a-z]{2} \d+, \d{4}/),
      await leftOver('/shop', 'since Jan 1, 2017'),
      await leftOver('/wall-chart/DRIFTBREAK', /as known on [A-Z][a-z]{2} \d+, \d{4}/),
    ];
    expect(left.flat()).toEqual([]);
  }, 120_000);

  it('puts the unit the person works in first, for torques', async () => {
    await page.goto('/flagged');
    await page.getByText('Torque', { exact: true }).first().click();
    await seen(/lets go at \d[\d.]*( to [\d.]+)? lbf·ft \(\d/);
  }, 60_000);

  it('is the person’s own: somebody else reads as the shop does, and the person too after signing in anew', async () => {
    const other = await shop.page();
    await shop.signIn(other, 'counter');
    await other.goto('/bulletins');
    await other.getByText('4 Oct 2025').first().waitFor();
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.getByLabel('Sign-in name').waitFor();
    await shop.signIn(page, 'manager');
    await page.goto('/bulletins');
    await seen('Oct 4, 2025');
  }, 60_000);

  it('can be given back to the shop', async () => {
    await page.goto('/my-sign-in');
    await page.getByLabel('As the shop writes them').check();
    await page.getByRole('button', { name: 'Keep days, numbers and units' }).click();
    await page.getByRole('button', { name: 'Keep days, numbers and units' }).waitFor();
    await page.goto('/bulletins');
    await seen('4 Oct 2025');
    expect(shop.complaints).toEqual([]);
  }, 60_000);
});
