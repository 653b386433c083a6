import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { BrowserShop } from './browser-shop';

const db = withDatabase();
let shop: BrowserShop;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
}, 300_000);

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const seen = (page: Page, text: string | RegExp) => page.getByText(text).first().waitFor();

async function manager(): Promise<Page> {
  const page = await shop.page();
  await shop.signIn(page, 'manager');
  return page;
}

describe('writing a paper down', () => {
  let page: Page;
  const table = 'Position\tFrom\tUntil\tRequired\tBarred\tReason\tAction\n';

  beforeAll(async () => {
    page = await manager();
    await page.goto('/bulletins/new');
    await page.getByLabel('Who published it').fill('Brakenholt Implement Works');
    await page.getByLabel('Number printed on it').fill('DB-SB-77');
    await page.getByLabel('Title').fill('Scraper bars of the new kind');
  }, 60_000);

  it('names the cell of a pasted table that cannot be read, and takes the table in once it can', async () => {
    await press(page, 'Paste from a table');
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Product line').selectOption('DRIFTBREAK');
    await dialog.getByLabel('The table').fill(`${table}SCR-BAR\t3/3/17\t\t31-0614\t\t\tnothing`);
    await dialog.getByText('Line 2: “3/3/17” is no day; write it as 2017-03-14.').waitFor();
    await dialog.getByLabel('The table').fill(`${table}SCR-BAR\t2017-03-03\t\t31-0614\t\t\tnothing`);
    await dialog.getByRole('button', { name: 'Take in 1' }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(await page.getByLabel('Scraper bar', { exact: true }).isChecked()).toBe(true);
    await seen(page, 'Scraper bar now');
  }, 60_000);

  it('keeps what is typed over a reload', async () => {
    await page.getByLabel('What it says, in short').fill('The bar is stamped with an arrow.');
    await page.reload();
    expect(await page.getByLabel('Title').inputValue()).toBe('Scraper bars of the new kind');
    expect(await page.getByLabel('Required part').inputValue()).toBe('31-0614');
  }, 60_000);

  it('says which number is in no catalogue, and keeps the paper once every number is', async () => {
    await page.getByLabel('Allowed too').fill('99-NONE');
    await press(page, 'Keep it, not published yet');
    await seen(page, /Not in the catalogue.*99-NONE/);
    await page.getByLabel('Allowed too').fill('');
    await press(page, 'Keep it, not published yet');
    await page.waitForURL(/\/bulletins\/\d+$/);
    await page.getByRole('heading', { name: 'Scraper bars of the new kind' }).waitFor();
    await seen(page, 'Rules it would open');
  }, 60_000);

  it('shows what it would bring, publishes it, and takes it back with a reason', async () => {
    await press(page, 'What if it were published?');
    await seen(page, 'If it were published now');
    await press(page, /^Publish$/);
    await page.getByText('Recheck done').waitFor({ timeout: 60_000 });
    await press(page, 'Withdraw');
    await page.getByRole('dialog').getByLabel('Reason').fill('the maker sent a correction');
    await press(page, 'Withdraw it');
    await seen(page, 'Withdrawn because: the maker sent a correction');
  }, 120_000);
});

describe('two people and a thin line', () => {
  const openTicket = async (page: Page) => {
    await page.goto('/');
    await page
      .getByRole('region', { name: /Inspection/ })
      .getByRole('link')
      .first()
      .click();
    await page.getByRole('heading', { name: 'The places' }).waitFor();
  };

  it('never write over each other: the second is told, and sees what the first did', async () => {
    const [first, second] = [await manager(), await manager()];
    await openTicket(first);
    await openTicket(second);
    // The second page hears of nothing, as when its connection hangs.
    await second.route(/\/api\/(live|tickets\/\d+)$/, (route) =>
      route.request().method() === 'GET' ? route.abort() : route.continue(),
    );
    const kept = first.waitForResponse((answer) => answer.request().method() === 'PATCH');
    await first.getByLabel('Promised').fill('2031-05-05');
    expect((await kept).status()).toBe(200);
    const refused = second.waitForResponse((answer) => answer.request().method() === 'PATCH');
    await second.getByLabel('Promised').fill('2031-06-06');
    expect((await refused).status()).toBe(412);
    await seen(second, 'Someone else changed this a moment ago.');
    await first.reload();
    await seen(first, '5 May 2031');
  }, 90_000);

  it('see each other’s work without reloading', async () => {
    const [first, second] = [await manager(), await manager()];
    await openTicket(first);
    await openTicket(second);
    await first.getByLabel('Promised').fill('2032-07-07');
    await seen(second, '7 Jul 2032');
  }, 90_000);

  it('say that the line is cut, and do the act once it is back', async () => {
    const page = await manager();
    await openTicket(page);
    await page.context().setOffline(true);
    await page.getByLabel('Promised').fill('2033-08-08');
    await seen(page, 'does not answer');
    await page.context().setOffline(false);
    await page.getByLabel('Promised').fill('2033-08-09');
    await seen(page, '9 Aug 2033');
  }, 90_000);

  it('lose nothing that was scanned while the line was cut: it comes back after a reload, and is sent once', async () => {
    const page = await manager();
    await openTicket(page);
    const ticket = Number(/tickets\/(\d+)/.exec(page.url())![1]);
    const sent = () => page.waitForResponse((answer) => answer.url().endsWith('/places'));
    const acts = async () =>
      (await db.pool.query(`SELECT FROM ticket_event WHERE ticket_id = $1 AND kind = 'found'`, [ticket])).rows.length;
    const before = await acts();
    const empty = page.locator('input[data-place-field][value=""]:visible');
    const first = page.getByLabel((await empty.nth(0).getAttribute('aria-label'))!, { exact: true });
    const second = page.getByLabel((await empty.nth(1).getAttribute('aria-label'))!, { exact: true });

    await page.route('**/places', (route) => route.abort());
    await first.fill('30-1127');
    await first.blur();
    await seen(page, 'does not answer');
    await page.unroute('**/places');
    await page.reload();
    expect(await first.inputValue()).toBe('30-1127');
    const kept = sent();
    await first.press('Enter');
    expect((await kept).status()).toBe(200);
    expect(await acts()).toBe(before + 1);

    await page.context().setOffline(true);
    await second.fill('30-1127');
    await second.blur();
    await seen(page, 'does not answer');
    const caughtUp = sent();
    await page.context().setOffline(false);
    expect((await caughtUp).status()).toBe(200);
    expect(await acts()).toBe(before + 2);
  }, 90_000);

  it('do a change once whose answer was lost on the way', async () => {
    const page = await manager();
    await openTicket(page);
    const keys: (string | undefined)[] = [];
    await page.route(/\/api\/tickets\/\d+$/, async (route) => {
      if (route.request().method() !== 'PATCH') return route.continue();
      keys.push(route.request().headers()['idempotency-key']);
      await route.fetch();
      await route.abort();
    });
    // What the page shows stays as it was, as when nothing at all comes through.
    await page.route(/\/api\/live/, (route) => route.abort());
    await page.getByLabel('Promised').fill('2034-04-04');
    await seen(page, 'does not answer');
    expect(keys).toHaveLength(2);
    expect(new Set(keys).size).toBe(1);
    await page.unroute(/\/api\/tickets\/\d+$/);
    await page.reload();
    await seen(page, '4 Apr 2034');
  }, 90_000);
});
