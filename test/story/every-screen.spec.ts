import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { LOGIN, SmtpShop } from '../mail/smtp-shop';
import { readCode128 } from '../prints/read-code';
import { accessibilityFindings, BrowserShop, SIZES } from './browser-shop';
import { ByKeys } from './by-keys';

const db = withDatabase();
let shop: BrowserShop;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
}, 300_000);

/** Each screen with what shows that it is there. */
const SCREENS: readonly (readonly [string, string, (page: Page) => Promise<unknown>])[] = [
  ['the board', '/', (page) => page.getByRole('heading', { name: /Intake/ }).waitFor()],
  ['the benches', '/benches', (page) => page.getByRole('heading', { name: 'No bench yet' }).waitFor()],
  ['my bench', '/my-bench', (page) => page.getByLabel('The bench I work at').waitFor()],
  ['flagged installs', '/flagged', (page) => page.getByRole('button', { name: 'Accept' }).first().waitFor()],
  ['the callbacks', '/callbacks', (page) => page.getByText('Why: ').first().waitFor()],
  ['the shelf', '/shelf', (page) => page.getByRole('table').waitFor()],
  ['what to order', '/shelf/orders', (page) => page.getByRole('link', { name: 'The list as CSV' }).waitFor()],
  ['the bulletins', '/bulletins', (page) => page.getByRole('link', { name: /DB-SB-09/ }).waitFor()],
  ['the counter look-up', '/which-part', (page) => page.getByLabel('Product line').waitFor()],
  ['taking a unit in', '/new-ticket', (page) => page.getByLabel('Complaint').waitFor()],
  ['writing a paper down', '/bulletins/new', (page) => page.getByLabel('Title').waitFor()],
  ['a wall chart', '/wall-chart/DRIFTBREAK', (page) => page.getByRole('img', { name: /Parts by position/ }).waitFor()],
  ['the settings', '/shop/settings', (page) => page.getByLabel('Sooner below').waitFor()],
  ['the figures', '/figures', (page) => page.getByRole('img', { name: /^Intake: middle/ }).waitFor()],
  ['my sign-in', '/my-sign-in', (page) => page.getByRole('button', { name: 'Set it up' }).waitFor()],
  ['in and out', '/shop/in-and-out', (page) => page.getByRole('heading', { name: 'Take spreadsheets out' }).waitFor()],
  ['the parts', '/shop/parts', (page) => page.getByRole('heading', { name: 'Parts and their bar codes' }).waitFor()],
  ['other programs', '/shop/programs', (page) => page.getByRole('heading', { name: 'Other programs' }).waitFor()],
  ['a unit', '/units/7', (page) => page.getByRole('heading', { name: 'Evidence so far' }).waitFor()],
  ["a unit's trail", '/units/7/trail', (page) => page.getByText(/entr(y|ies), oldest first/).waitFor()],
  ['an owner', '/owners/7', (page) => page.getByRole('heading', { name: 'Machines' }).waitFor()],
  ['a scan that leads nowhere', '/search?q=U7-1', (page) => page.getByText(/check digit of U7-1 is wrong/).waitFor()],
  ['a search', '/search?q=26-06', (page) => page.getByRole('heading', { name: /Found for/ }).waitFor()],
];

async function firstTicketOf(page: Page, stage: string): Promise<void> {
  await page.goto('/');
  await page
    .getByRole('region', { name: new RegExp(stage) })
    .getByRole('link')
    .first()
    .click();
  await page.getByRole('heading', { name: 'The places' }).waitFor();
}

const OVER = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';

/** How many pixels the page is wider than the screen, once pictures that take their room's width have been drawn anew. */
async function tooWide(page: Page): Promise<number> {
  await page.waitForFunction(`${OVER} === 0`, undefined, { timeout: 2_000 }).catch(() => undefined);
  return page.evaluate<number>(OVER);
}

/** Each screen is loaded once and looked at in both themes and at every width, as a page does that is turned or dimmed. */
async function objections(page: Page): Promise<string[]> {
  const found = await accessibilityFindings(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.locator('html[data-mantine-color-scheme="dark"]').waitFor();
  found.push(...(await accessibilityFindings(page, 'inks')).map((one) => `dark: ${one}`));
  await page.emulateMedia({ colorScheme: 'light' });
  for (const [size, viewport] of Object.entries(SIZES).reverse()) {
    await page.setViewportSize(viewport);
    const over = await tooWide(page);
    if (over !== 0) found.push(`${size}: ${String(over)} px too wide`);
  }
  return found;
}

describe('every screen, light and dark, on a desk, a tablet and a phone', () => {
  let page: Page;

  beforeAll(async () => {
    page = await shop.page();
    await shop.signIn(page, 'manager');
  }, 60_000);

  it.each(SCREENS)(
    'gives axe-core nothing to object to and is no wider than the screen: %s',
    async (_name, path, there) => {
      await page.goto(path);
      await there(page);
      expect(await objections(page)).toEqual([]);
    },
    60_000,
  );

  it.each(['Intake', 'Inspection', 'Parts selection', 'Repair', 'Handover'])(
    'gives axe-core nothing to object to and is no wider than the screen: a ticket in %s',
    async (stage) => {
      await firstTicketOf(page, stage);
      expect(await objections(page)).toEqual([]);
    },
    60_000,
  );
});

describe('the header on a phone', () => {
  let page: Page;
  let keys: ByKeys;
  const menu = () => page.getByRole('button', { name: 'Menu' });
  const places = () => page.getByRole('navigation', { name: 'Shop' });

  beforeAll(async () => {
    page = await shop.page('phone');
    keys = new ByKeys(page);
    await shop.signIn(page, 'manager');
  }, 60_000);

  it('is one row, and the rest stands behind a button', async () => {
    const rows = [page.getByText('Revright', { exact: true }), menu(), page.getByRole('search')];
    const middles = await Promise.all(rows.map(async (one) => middleOf(await one.boundingBox())));
    expect(Math.max(...middles) - Math.min(...middles)).toBeLessThan(4);
    expect(await page.evaluate<number>("document.querySelector('header').offsetHeight")).toBeLessThan(64);
    expect(await menu().getAttribute('aria-expanded')).toBe('false');
    expect(await places().isVisible()).toBe(false);
    expect(await page.getByRole('button', { name: 'Sign out' }).isVisible()).toBe(false);
  }, 60_000);

  it('opens by a key, in the order it is read, with nothing for axe-core to object to', async () => {
    await keys.press(menu());
    await places().waitFor();
    expect(await menu().getAttribute('aria-expanded')).toBe('true');
    const order: string[] = [];
    for (const step of ['Search', 'Benches', 'Board', 'Which part?']) {
      await page.keyboard.press('Tab');
      order.push((await keys.at()).includes(step) ? step : await keys.at());
    }
    expect(order).toEqual(['Search', 'Benches', 'Board', 'Which part?']);
    expect(await accessibilityFindings(page)).toEqual([]);
    expect(await tooWide(page)).toBe(0);
  }, 60_000);

  it('closes by Escape, and the keys are at its button', async () => {
    await page.keyboard.press('Escape');
    await places().waitFor({ state: 'hidden' });
    await keys.isAt(/^button Menu$/);
    expect(await menu().getAttribute('aria-expanded')).toBe('false');
  }, 60_000);

  it('closes on the way to another page, and to the same one', async () => {
    await menu().click();
    await keys.press(places().getByRole('link', { name: 'Callbacks' }));
    await page.getByRole('heading', { name: 'Callbacks' }).waitFor();
    await keys.isAt(/^main/);
    expect(await places().isVisible()).toBe(false);
    await menu().click();
    await keys.press(places().getByRole('link', { name: 'Callbacks' }));
    await keys.isAt(/^button Menu$/);
    expect(await places().isVisible()).toBe(false);
  }, 60_000);
});

const middleOf = (box: { y: number; height: number } | null): number => (box ? box.y + box.height / 2 : NaN);

/** What the scripts may weigh on the line until the first page after the door is there, in bytes: a phone in a yard waits for them. */
const HEAVIEST = 250_000;

describe('the first load', () => {
  it('brings less than 250 kB of scripts, packed as they travel, up to the board', async () => {
    const page = await shop.page('phone');
    const scripts: Promise<{ name: string; weight: number }>[] = [];
    page.on('requestfinished', (request) => {
      if (request.resourceType() !== 'script') return;
      const name = new URL(request.url()).pathname;
      scripts.push(request.sizes().then(({ responseBodySize: weight }) => ({ name, weight })));
    });
    await shop.signIn(page, 'manager');
    await page.getByRole('heading', { name: /Intake/ }).waitFor();
    await page.waitForLoadState('networkidle');
    const weighed = await Promise.all(scripts);
    const whole = weighed.reduce((sum, { weight }) => sum + weight, 0);
    expect(weighed.length).toBeGreaterThan(2);
    expect(whole).toBeGreaterThan(50_000);
    if (whole >= HEAVIEST) throw new Error(`${whole} bytes: ${JSON.stringify(weighed)}`);
  }, 60_000);
});

describe('without a mouse', () => {
  it('leads from the door to a search by keys alone', async () => {
    const page = await shop.page();
    await shop.signIn(page, 'manager');
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Keys' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog', { name: 'Keys' }).waitFor({ state: 'detached' });
    await page.keyboard.press('/');
    await page.keyboard.type('26-06');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Found for “26-06”' }).waitFor();
  }, 60_000);
});

describe('the printed tag', () => {
  it('is one label of its own size, and its code, read off the print and scanned into the search field, leads back to the ticket', async () => {
    const page = await shop.page('phone');
    await shop.signIn(page, 'counter');
    await firstTicketOf(page, 'Repair');
    const ticketUrl = page.url();
    const number = await page.getByRole('heading', { level: 1 }).innerText();
    await page.getByRole('link', { name: 'Print the tag' }).click();
    await page.getByRole('img', { name: `Code 128 of ${number}` }).waitFor();
    expect(await accessibilityFindings(page)).toEqual([]);

    const pdf = await page.pdf({ preferCSSPageSize: true });
    const printed = pdf.toString('latin1');
    // 100 by 60 mm in points of 1/72 inch
    expect(printed.match(/\/MediaBox \[[^\]]*\]/g)).toEqual([
      expect.stringMatching(/\[0 0 28[234][.\d]* (169|170)[.\d]*\]/),
    ]);

    const scanned = await readCode128(pdf);
    expect(scanned).toBe(number);

    await page.getByRole('searchbox').fill(scanned);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'The places' }).waitFor();
    expect(page.url()).toBe(ticketUrl);
  }, 60_000);
});

describe('the settings of the shop', () => {
  it('say that a recheck has started when they are kept, and lead to how far it is', async () => {
    const page = await shop.page();
    await shop.signIn(page, 'manager');
    await page.getByRole('link', { name: 'Shop', exact: true }).click();
    await page.getByRole('link', { name: /^Settings/ }).click();
    await page.getByLabel('Months since').fill('48');
    await page.getByRole('button', { name: 'Parts list up', exact: true }).click();
    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.getByText('A recheck of everything has started').waitFor();
    await page.getByRole('button', { name: 'Nothing is changed' }).waitFor();
    await page.getByRole('link', { name: 'see how far it is' }).click();
    await page.getByText('because a setting of the shop was changed').waitFor();
    await page.getByRole('heading', { name: /^Recheck (under way|done)$/ }).waitFor();
    expect(await accessibilityFindings(page)).toEqual([]);

    await page.goto('/shop/settings');
    await page.getByLabel('Months since').waitFor();
    const order = page.getByRole('list', { name: 'Kinds of paper, the highest first' }).getByRole('listitem');
    expect(await order.locator('strong').allInnerTexts()).toEqual([
      'Service bulletin',
      "Maker's advice",
      'Parts list',
      'Revised parts list',
      "Owner's manual",
      'Shop finding',
    ]);
    expect(await page.getByLabel('Months since').inputValue()).toBe('48');
  }, 60_000);

  it('let an administrator set the mail server up, and try it out, and show the password to nobody', async () => {
    const smtp = await SmtpShop.open({ asksForLogin: true });
    db.beforeClose(() => smtp.close());
    const page = await shop.page('phone');
    await shop.signIn(page, 'administrator');
    await page.goto('/shop/settings');
    await page.getByLabel('Mail server').fill('127.0.0.1');
    await page.getByLabel('Private line').selectOption('none');
    await page.getByLabel('Port').fill(String(smtp.port));
    await page.getByLabel('Name it asks for').fill(LOGIN.user);
    await page.getByLabel('Its password').fill(LOGIN.pass);
    await page.getByLabel("Sender's address").fill('shop@example.org');
    await page.getByRole('button', { name: 'Keep the mail server' }).click();
    await page.getByText('Kept. The next e-mail goes by it.').waitFor();
    expect(await page.getByLabel('Its password').inputValue()).toBe('');
    await page.getByLabel('To the address').fill('me@mail.example');
    await page.getByRole('button', { name: 'Send a trial letter' }).click();
    await page.getByText('See whether it arrives at me@mail.example').waitFor();
    expect(smtp.recipients).toEqual([['me@mail.example']]);
    expect(await objections(page)).toEqual([]);
  }, 60_000);

  it('are for a manager or an administrator', async () => {
    const page = await shop.page();
    await shop.signIn(page, 'technician');
    await page.getByRole('link', { name: 'Shop', exact: true }).click();
    await page.getByRole('heading', { name: 'Serial schemes of the makers' }).waitFor();
    expect(await page.getByRole('link', { name: /^Settings/ }).count()).toBe(0);
    await page.goto('/shop/settings');
    await page.getByText('A manager settles these').waitFor();
  }, 60_000);
});
