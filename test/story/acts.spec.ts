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

afterAll(() => {
  expect(shop.complaints).toEqual([]);
});

const press = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' }).click();
const ask = () => page.getByRole('dialog');

/** Gives the reason that a dialog asks for. */
async function because(reason: string, act: string, label = 'Reason'): Promise<void> {
  await ask().getByLabel(label).fill(reason);
  await ask().getByRole('button', { name: act }).click();
  await ask().waitFor({ state: 'detached' });
}

/** Opens the history of the ticket, where it is shut, and waits for what it tells. */
async function history(words: string | RegExp): Promise<void> {
  const part = page.locator('details', { has: page.locator('summary', { hasText: /^History/ }) });
  if ((await part.getAttribute('open')) === null) await part.locator('summary').first().click();
  await part.getByText(words).first().waitFor();
}

describe('the job board', () => {
  const tags = () => page.getByRole('main').getByRole('link', { name: /26-\d{4}/ });
  const texts = async () => (await tags().allInnerTexts()).map((text) => text.replace(/\s+/g, ' '));
  const board = () => page.waitForResponse((one) => new URL(one.url()).pathname === '/api/board' && one.ok());

  async function filtered(filter: () => Promise<unknown>): Promise<readonly string[]> {
    const answered = board();
    await filter();
    await answered;
    await page.waitForTimeout(200);
    return texts();
  }

  it('loses no letter and no tick on a machine that is slow to follow', async () => {
    await page.goto('/board');
    await tags().first().waitFor();
    const slow = await page.context().newCDPSession(page);
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 20 });
    const text = page.getByLabel('Owner, unit or tag');
    await text.pressSequentially('tiller');
    expect(await text.inputValue()).toBe('tiller');
    await page.getByLabel('Flagged only').check();
    await slow.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    await page.waitForURL((url) => url.searchParams.get('q') === 'tiller' && url.searchParams.get('flagged') === 'yes');
  });

  it('shows what is on one bench, of one owner, late, or flagged, and all again', async () => {
    await page.goto('/');
    await tags().first().waitFor();
    const all = (await texts()).length;
    const bench = page.getByLabel('Bench', { exact: true });
    const code = ((await bench.locator('option').nth(1).textContent()) ?? '').split(' ')[0]!;
    const onBench = await filtered(() => bench.selectOption({ index: 1 }));
    expect(onBench.length).toBeGreaterThan(0);
    expect(onBench.filter((text) => !new RegExp(`^26-\\d+ ${code} `).test(text))).toEqual([]);

    await bench.selectOption({ index: 0 });
    const owner = page.getByLabel('Owner', { exact: true });
    const name = (await owner.locator('option').nth(1).textContent())!;
    const ofOwner = await filtered(() => owner.selectOption({ index: 1 }));
    expect(ofOwner.length).toBeGreaterThan(0);
    expect(ofOwner.filter((text) => !text.includes(name))).toEqual([]);

    await owner.selectOption({ index: 0 });
    const flagged = await filtered(() => page.getByLabel('Flagged only').check());
    expect(flagged.length).toBeGreaterThan(0);
    expect(flagged.filter((text) => !/\d flags?$/.test(text))).toEqual([]);

    await page.getByLabel('Flagged only').uncheck();
    const late = await filtered(() => page.getByLabel('Promised day').selectOption('late'));
    expect(late.filter((text) => !text.includes('Late, promised'))).toEqual([]);
    await page.getByLabel('Promised day').selectOption('');
    await tags()
      .nth(all - 1)
      .waitFor();
  }, 60_000);
});

describe('a ticket', () => {
  it('shows evidence and sketch as pictures with their words, the why of a verdict at one press, and its history', async () => {
    await page.goto('/');
    await page
      .getByRole('region', { name: /Parts selection/ })
      .getByRole('link')
      .first()
      .click();
    await page.getByRole('heading', { name: 'The places' }).waitFor();
    await page
      .getByRole('img', { name: /What remains: / })
      .first()
      .waitFor();
    await page.getByRole('img', { name: /^Sketch with positions\. 1 .+: .+; 2 / }).waitFor();
    const why = page.locator('details', { has: page.locator('summary', { hasText: /^Why$/ }) }).first();
    expect(await why.getByText('Rulebook revision').isVisible()).toBe(false);
    await why.locator('summary').click();
    await why.getByText('Rulebook revision').waitFor();
    await history('Ticket opened.');
  }, 60_000);

  it('is put on hold, taken off hold and sent back a stage, each with its reason in the history', async () => {
    await press('Hold');
    await because('the owner is away', 'Put on hold');
    await page.getByText('the owner is away').first().waitFor();
    await press('Take off hold');
    await page.getByRole('button', { name: 'Hold', exact: true }).waitFor();
    await press('Back a stage');
    await because('a place was overlooked', 'Send it back');
    await page.locator('li[aria-current="step"]', { hasText: 'Inspection' }).waitFor();
    await history('Moved back from parts selection to inspection: a place was overlooked.');
  }, 60_000);
});

describe('a card that is dragged', () => {
  const stage = (name: string) => page.getByRole('region', { name: new RegExp(name) });
  let tag = '';

  it('goes back a stage once a reason is given, and stays where it is without one', async () => {
    await page.goto('/');
    const card = stage('Repair').locator('a[data-hold="false"]').first();
    tag = /26-\d{4}/.exec(await card.innerText())![0];
    await card.dragTo(stage('Parts selection').getByRole('heading'));
    await ask().getByRole('button', { name: 'Leave it' }).click();
    await ask().waitFor({ state: 'detached' });
    await stage('Repair').getByText(tag).waitFor();
    await card.dragTo(stage('Parts selection').getByRole('heading'));
    await because('a pin was forgotten', 'Move it back');
    await stage('Parts selection').getByText(tag).waitFor();
  }, 60_000);

  it('is refused by the next stage while something is missing, in words, and stays', async () => {
    const card = stage('Parts selection').getByRole('link').filter({ hasText: tag });
    await card.dragTo(stage('Handover').getByRole('heading'));
    await page.getByRole('alert').first().waitFor();
    await stage('Parts selection').getByText(tag).waitFor();
  }, 60_000);

  it('is cancelled on its page, with the reason to be read there', async () => {
    await stage('Parts selection').getByText(tag).click();
    await press('Cancel');
    await because('the owner took it home', 'Cancel the ticket');
    await page.getByText(/^Cancelled .+: the owner took it home$/).waitFor();
  }, 60_000);
});

describe('the sketch', () => {
  it('leads from a dot to its place in the list', async () => {
    await page.goto('/');
    await page
      .getByRole('region', { name: /Inspection/ })
      .getByRole('link')
      .first()
      .click();
    const sketch = page.getByRole('img', { name: /^Sketch with positions/ });
    const [, number, name] = /.*; (\d+) (.+?): /.exec((await sketch.getAttribute('aria-label'))!)!;
    await sketch
      .locator('g', { has: page.locator('text', { hasText: new RegExp(`^${number}$`) }) })
      .first()
      .click();
    const focused = () => document.activeElement?.closest('[id^="position-"]')?.textContent ?? '';
    await page.waitForFunction(focused);
    expect(await page.evaluate(focused)).toContain(name);
  }, 60_000);
});

describe('the counter look-up', () => {
  it('tells the part by the papers of today, and by those of another day', async () => {
    await page.goto('/which-part');
    await page.getByLabel('Product line').selectOption('DRIFTBREAK');
    await page.getByLabel('Serial number').fill('17K00147');
    await press('Which part?');
    const pin = page.getByRole('main').getByRole('listitem').filter({ hasText: 'Auger shear pin' });
    await pin.filter({ hasText: '30-1127' }).first().waitFor();
    await page.getByLabel('By the papers of').fill('2017-12-01');
    await press('Which part?');
    await pin.filter({ hasText: '30-1120' }).filter({ hasNotText: '30-1127' }).first().waitFor();
  }, 60_000);
});

describe("the manager's desk", () => {
  const rows = () => page.locator('li[data-flag]');
  const gone = async (id: string | null) => page.locator(`li[data-flag="${id}"]`).waitFor({ state: 'detached' });

  it('leads from a flag to its ticket, where the record is mended', async () => {
    await page.goto('/flagged');
    await rows().first().getByRole('link').first().click();
    await page.getByRole('heading', { name: 'The places' }).waitFor();
    await page.goBack();
    await rows().first().waitFor();
  }, 60_000);

  it('orders a callback for one, with its reason', async () => {
    const id = await rows().first().getAttribute('data-flag');
    await rows().first().getByRole('button', { name: 'Callback' }).click();
    await because('the owner asked to be told', 'Order the callback');
    await gone(id);
  }, 60_000);

  it('decides about several that are ticked at once, and about none without a reason', async () => {
    const first = await rows().nth(0).getAttribute('data-flag');
    const second = await rows().nth(1).getAttribute('data-flag');
    await rows().nth(0).getByRole('checkbox').check();
    await rows().nth(1).getByRole('checkbox').check();
    await press('Accept them');
    expect(await ask().getByRole('button', { name: 'Accept' }).isDisabled()).toBe(true);
    await because('the owner knows and waits for the part', 'Accept');
    await gone(first);
    await gone(second);
  }, 60_000);

  it('sends one back to the bench, where it stays on the list until it is put right', async () => {
    const row = rows().first();
    const id = await row.getAttribute('data-flag');
    const ticket = await row.getByRole('link').first().innerText();
    await row.getByRole('button', { name: 'Send back' }).click();
    await because('look at the head marks again', 'Send back');
    await page.locator(`li[data-flag="${id}"]`).waitFor();
    await page.getByRole('link', { name: ticket }).first().click();
    await history(/Flag sent back to the bench .*look at the head marks again/);
  }, 60_000);
});

describe('the callbacks', () => {
  const cards = () => page.locator('li[data-callback]');

  it('write letters and labels to owners in one go, as prints to open', async () => {
    await page.goto('/callbacks');
    await cards().nth(1).waitFor();
    await cards()
      .nth(0)
      .getByRole('checkbox', { name: /^Write to this owner/ })
      .check();
    await cards()
      .nth(1)
      .getByRole('checkbox', { name: /^Write to this owner/ })
      .check();
    await press(/^Write \d letters?/);
    for (const name of ['Open the letters', 'Open the address labels']) {
      const link = page.getByRole('link', { name });
      const answer = await page.request.get((await link.getAttribute('href'))!);
      expect([answer.status(), (await answer.body()).subarray(0, 5).toString()]).toEqual([200, '%PDF-']);
    }
    const list = await page.request.get(
      (await page.getByRole('link', { name: 'This list as CSV' }).getAttribute('href'))!,
    );
    expect(list.headers()['content-type']).toMatch(/^text\/csv/);
  }, 60_000);

  it('are settled with what was said, and stand among the settled', async () => {
    await page.goto('/callbacks?state=later');
    const card = cards().first();
    const id = await card.getAttribute('data-callback');
    await card.getByRole('button', { name: 'Book it in, or settle it' }).click();
    await ask().getByLabel('Outcome').selectOption('unit-gone');
    await because('sold abroad', 'Settle it', 'What was said');
    await page.getByRole('link', { name: 'Settled' }).click();
    await page
      .locator(`li[data-callback="${id}"]`)
      .getByText(/^Closed: .*sold abroad/)
      .waitFor();
  }, 60_000);

  it('become a new ticket when the unit is booked in', async () => {
    await page.goto('/callbacks');
    const card = cards().first();
    const id = await card.getAttribute('data-callback');
    await card.getByRole('button', { name: 'Book it in, or settle it' }).click();
    await because('brings it on Tuesday', 'Open the ticket', 'What was said');
    await page.getByRole('link', { name: /^Booked in/ }).click();
    await page.locator(`li[data-callback="${id}"]`).getByRole('link', { name: 'The ticket that is booked' }).click();
    await page.locator('li[aria-current="step"]', { hasText: 'Intake' }).waitFor();
  }, 60_000);
});

describe('the rulebook', () => {
  it('finds rules by a word and shows the line on a wall chart as it was known and in force on any day', async () => {
    await page.goto('/rulebook?line=DRIFTBREAK');
    await page.getByLabel('Part number, paper or word').fill('30-1127');
    await page
      .getByText(/30-1127.* is required/)
      .first()
      .waitFor();
    await page.getByRole('link', { name: 'In the picture' }).first().click();
    await page.getByRole('img', { name: /Parts by position/ }).waitFor();
    await page.goto('/wall-chart/DRIFTBREAK?inForceOn=2016-01-01&knownOn=2030-01-01');
    await page.getByText('by the papers in force on 1 Jan 2016').waitFor();
  }, 60_000);
});

describe('the figures', () => {
  it('say in a table what each picture shows', async () => {
    await page.goto('/figures');
    await page.getByRole('img', { name: /^Intake: middle/ }).waitFor();
    const figures = page.locator('section', { has: page.locator('details', { hasText: 'The same as a table' }) });
    const many = await figures.count();
    expect(many).toBeGreaterThan(4);
    for (let index = 0; index < many; index += 1) {
      expect(await figures.nth(index).locator('tbody tr').count()).toBeGreaterThan(0);
      expect(await figures.nth(index).getByRole('img').count()).toBeGreaterThan(0);
    }
  }, 60_000);
});

describe('the people of the shop', () => {
  it('get somebody new, with a link that is shown once', async () => {
    const admin = await shop.page('tablet');
    await shop.signIn(admin, 'administrator');
    await admin.goto('/people');
    const form = admin.getByRole('region', { name: 'Add somebody' });
    await form.getByLabel(/^Name/).fill('Tove Maris');
    await form.getByLabel('Sign-in name').fill('tove');
    await form.getByRole('button', { name: 'Add' }).click();
    await admin.getByText('Give this link to Tove Maris.').waitFor();
    await admin.getByRole('region', { name: 'Everybody' }).getByText('Tove Maris').first().waitFor();
  }, 60_000);
});
