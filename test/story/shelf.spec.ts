import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { accessibilityFindings, BrowserShop } from './browser-shop';

const db = withDatabase();
let shop: BrowserShop;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
}, 300_000);
afterAll(() => expect(shop.complaints).toEqual([]));

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).first().click();
const over = (page: Page) =>
  page.evaluate<number>('document.documentElement.scrollWidth - document.documentElement.clientWidth');

describe.each(['desk', 'phone'] as const)('the shelf on a %s', (size) => {
  let page: Page;

  beforeAll(async () => {
    page = await shop.page(size);
    await shop.signIn(page, 'counter');
    await page.goto('/shelf');
    await page.getByRole('table').waitFor();
  }, 60_000);

  it('takes a bag in by its scanned number and two presses of Enter, and is ready for the next', async () => {
    const part = page.getByLabel('Part number (scan it)');
    await part.fill('30 1127b/p5');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await page.getByText(/^Received 5 of 30-1127B: \d+ on hand in \w+, \d+ free\.$/).waitFor();
    expect(await part.inputValue()).toBe('');
    expect(await over(page)).toBe(0);
    expect(await part.evaluate((field) => field === field.ownerDocument.activeElement)).toBe(true);
  }, 60_000);

  it('lists what to order no wider than what it is looked at on', async () => {
    await page.getByRole('link', { name: 'What to order' }).click();
    await page.getByRole('link', { name: 'The list as CSV' }).waitFor();
    expect(await over(page)).toBe(0);
    await page.goBack();
    await page.getByRole('table').waitFor();
  }, 60_000);

  it('asks a count for its reason', async () => {
    await press(page, 'Count');
    await page.getByLabel('Part number (scan it)').fill('30-1120');
    await page.getByLabel('How many pieces lie there').fill('25');
    await press(page, 'Keep the count');
    await page.getByRole('alert').waitFor();
    await page.getByLabel('Reason').fill('monthly count');
    await press(page, 'Keep the count');
    await page.getByText(/^Counted 30-1120, .*: 25 on hand/).waitFor();
    await press(page, 'Receive');
  }, 60_000);

  it('finds a part by its number in any writing, and shows every movement of it', async () => {
    await page.getByLabel('Find a part').fill('301127 b');
    await page.getByText(/^1 part$/).waitFor();
    await page.getByRole('link', { name: /^30-1127B/ }).click();
    await page.getByText('Received 5 (1 x 5).').first().waitFor();
    await page.getByText(/^Opening count: /).waitFor();
    expect(await accessibilityFindings(page)).toEqual([]);
    expect(await over(page)).toBe(0);
  }, 60_000);
});

describe('a bulletin that meets the shelf', () => {
  it('says before and after publishing what lies where, leads to the tickets that hold it, and is marked as seen to', async () => {
    const page = await shop.page();
    await shop.signIn(page, 'manager');
    await page.goto('/bulletins');
    await page.getByRole('link', { name: /DB-SB-09/ }).click();
    await press(page, 'What if it were published?');
    await page.getByText(/30-1127 in C3, Millrace Lane: barred for some units/).waitFor();
    await press(page, 'Publish');
    await page.getByText(/^Recheck done/).waitFor();
    await page.getByText(/^Pull 14 from C3 and keep them apart/).waitFor();
    expect(await accessibilityFindings(page)).toEqual([]);

    await page.getByRole('link', { name: 'Shelf', exact: true }).click();
    await page.getByRole('heading', { name: 'Bulletins speak against these' }).waitFor();
    const row = page.getByRole('listitem').filter({ hasText: 'Pull 14 from C3' });
    await row.getByLabel('What was done with 30-1127').fill('red tag, second box');
    await row.getByRole('button', { name: 'Seen to' }).click();
    await row.waitFor({ state: 'detached' });
    expect(await accessibilityFindings(page)).toEqual([]);
    await page.goBack();
    await page.getByText(/^Seen to: \d+ pieces, .*: red tag, second box$/).waitFor();
  }, 90_000);
});

describe('parts selection', () => {
  it('says of each part how many are free and where they lie', async () => {
    const page = await shop.page();
    await shop.signIn(page, 'technician');
    await page.goto('/board');
    const stage = page.getByRole('region', { name: /Parts selection/ });
    await stage.getByRole('link').first().click();
    await page.getByRole('heading', { name: 'The places' }).waitFor();
    const folded = page.getByText(/^\d+ other positions?$/);
    if (await folded.count()) await folded.click();
    await page
      .getByText(/^On the shelf: .* free, bin [A-Z]\d/)
      .first()
      .waitFor();
    expect(await page.getByLabel('Where it comes from').count()).toBeGreaterThan(0);
  }, 60_000);
});
