import type { Locator, Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { BrowserShop } from './browser-shop';
import { Hands } from './hands';

const db = withDatabase();
const OWNER = 'Orla Vantongeren';
const WORD = { exact: true } as const;
let shop: BrowserShop;
let bench: Hands;
let desk: Hands;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
  bench = new Hands(await shop.page('tablet'));
  desk = new Hands(await shop.page());
}, 300_000);

afterAll(() => {
  expect(shop.complaints).toEqual([]);
});

const seen = (page: Page, text: string | RegExp) => page.getByText(text).first().waitFor();
const button = ({ page }: Hands, name: string | RegExp): Locator =>
  page.getByRole('button', typeof name === 'string' ? { name, ...WORD } : { name }).first();

/** Through the door; the page itself then has the focus. */
async function signIn(hands: Hands, role: 'technician' | 'manager'): Promise<void> {
  const { login, password } = shop.shop.people.find((person) => person.role === role)!;
  await hands.page.goto('/');
  await hands.fill(hands.page.getByLabel('Sign-in name'), login);
  await hands.fill(hands.page.getByLabel('Password'), password);
  await hands.press('Enter');
  await hands.page.getByRole('navigation', { name: 'Shop' }).waitFor();
}

/** `n` leads to the button for the next step from wherever one is; the stage that opens has the focus. */
async function goOn(name: RegExp, stage: string): Promise<void> {
  await bench.leaveField();
  await bench.press('n');
  await bench.isAt(button(bench, name));
  await bench.press('Enter');
  const present = bench.page.locator('li[aria-current="step"]', { hasText: stage });
  await present.waitFor();
  await bench.isAt(present);
}

/** A dialog takes the focus to its reason, and gives it back when it is done. */
async function giveReason(hands: Hands, act: string, reason: string): Promise<void> {
  const dialog = hands.page.getByRole('dialog');
  await hands.isAt(dialog.getByLabel(/Reason|What was said/));
  await hands.type(reason);
  await hands.walkTo(dialog.getByRole('button', { name: act, ...WORD }));
  await hands.press('Enter');
  await dialog.waitFor({ state: 'detached' });
}

const pin = (place: string, side: string) =>
  bench.page.getByLabel(`Auger shear pin, ${place}, ${side}`, { exact: true });

async function kept(act: () => Promise<void>, path: string, method: string): Promise<void> {
  const answer = bench.page.waitForResponse((one) => one.url().endsWith(path) && one.request().method() === method);
  await act();
  expect((await answer).status()).toBe(200);
}

describe('the whole story by keys alone', () => {
  it('begins at the door, and ? shows the keys', async () => {
    await signIn(bench, 'technician');
    await bench.press('?');
    const keys = bench.page.getByRole('dialog', { name: 'Keys' });
    await keys.getByText('Ticket: to the button for the next step').waitFor();
    await bench.press('Escape');
    await keys.waitFor({ state: 'detached' });
  }, 60_000);

  it('takes a unit in', async () => {
    await bench.walkTo(bench.page.getByRole('link', { name: 'Take a unit in' }));
    await bench.press('Enter');
    await bench.page.waitForURL(/\/new-ticket/);
    const main = bench.page.getByRole('main');
    await bench.isAt(main);
    await bench.fill(main.getByLabel('Name'), OWNER);
    await bench.fill(main.getByLabel('Phone'), '0000 555 0142');
    await bench.walkTo(bench.page.getByLabel('The owner agrees to be called'));
    await bench.press('Space');
    await bench.fill(bench.page.getByLabel('Complaint'), 'Auger stands still in wet snow.');
    await bench.walkTo(button(bench, 'Open the ticket'));
    await bench.press('Enter');
    await bench.page.waitForURL(/\/tickets\/\d+$/);
    await bench.isAt(main);
  }, 60_000);

  it('identifies it, and hands it to the bench', async () => {
    await bench.choose(bench.page.getByLabel('Product line'), 'Brakenholt Implement Works Driftbreak');
    await bench.choose(bench.page.getByLabel('Model'), 'DB-28');
    await bench.fill(bench.page.getByLabel('Serial number', WORD), '19A00998');
    await bench.press('Enter');
    await seen(bench.page, 'Built 1 Jan 2019 to 31 Jan 2019 (31 possible days).');
    await goOn(/^Hand over to the bench$/, 'Inspection');
  }, 60_000);

  it('records what was found: Enter keeps a number and leads to the next place', async () => {
    await bench.walkTo(pin('left outer', 'as found'));
    await bench.type('30-1127');
    await kept(() => bench.press('Enter'), '/places', 'PUT');
    await bench.isAt(pin('left inner', 'as found'));
    await bench.type('301127');
    await kept(() => bench.press('Enter'), '/places', 'PUT');
    await bench.isAt(pin('right inner', 'as found'));
    await bench.type('30 1120');
    await kept(() => bench.press('Enter'), '/places', 'PUT');
    const condition = bench.page.getByLabel('Condition of Auger shear pin, right outer, as found');
    await kept(() => bench.choose(condition, 'sheared'), '/places', 'PUT');
    await bench.walkTo(button(bench, /^Leave out the \d+ places not looked at$/));
    await bench.press('Enter');
    await giveReason(bench, 'Leave them out', 'not part of this job');
    await goOn(/^Go on to parts selection$/, 'Parts selection');
  }, 60_000);

  it('picks the part, writes the work and the owner’s word down', async () => {
    await bench.fill(bench.page.getByLabel('How many').first(), '2');
    await bench.walkTo(button(bench, 'Pick 30-1127'), 'back');
    await bench.press('Enter');
    await seen(bench.page, '2 ×');
    await bench.fill(bench.page.getByLabel('Minutes'), '45');
    await bench.fill(bench.page.getByLabel('Labour in'), '38.50');
    await bench.press('Enter');
    await bench.page.getByRole('row', { name: /Work at the bench/ }).waitFor();
    await bench.walkTo(button(bench, "Write down the owner's word"));
    await bench.press('Enter');
    await seen(bench.page, new RegExp(`${OWNER} said yes`));
    await goOn(/^Start the repair$/, 'Repair');
  }, 60_000);

  it('ticks the safety points, records what is fitted, and hands over', async () => {
    const points = bench.page.locator('details', { hasText: 'Safety checklist' }).getByRole('checkbox');
    const many = await points.count();
    expect(many).toBeGreaterThan(3);
    for (let index = 0; index < many; index += 1) {
      await bench.walkTo(points.nth(index));
      await kept(() => bench.press('Space'), '/safety', 'PUT');
    }
    for (const place of ['right inner', 'right outer']) {
      await bench.walkTo(pin(place, 'as left'));
      await bench.type('30-1127');
      await kept(() => bench.press('Enter'), '/places', 'PUT');
    }
    await goOn(/^Go on to handover$/, 'Handover');
    await bench.press('n');
    await bench.isAt(button(bench, /^Hand the unit over$/));
    await bench.press('Enter');
    await seen(bench.page, /^Handed over/);
  }, 60_000);
});

describe('the manager by keys alone', () => {
  it('writes a bulletin down', async () => {
    await signIn(desk, 'manager');
    await desk.walkTo(desk.page.getByRole('link', { name: 'Bulletins', ...WORD }));
    await desk.press('Enter');
    await desk.walkTo(desk.page.getByRole('link', { name: 'Write one down' }));
    await desk.press('Enter');
    await desk.page.waitForURL(/\/bulletins\/new$/);
    await desk.fill(desk.page.getByLabel('Who published it'), 'Brakenholt Implement Works');
    await desk.fill(desk.page.getByLabel('Number printed on it'), 'DB-SB-78');
    await desk.fill(desk.page.getByLabel('Title'), 'Pins that go with the coated case');
    if ((await desk.page.getByLabel('Required part').count()) === 0) {
      await desk.walkTo(button(desk, 'Add a rule'));
      await desk.press('Enter');
    }
    await desk.choose(desk.page.getByLabel('Product line'), 'Brakenholt Implement Works Driftbreak');
    await desk.walkTo(desk.page.getByLabel('Auger shear pin', WORD));
    await desk.press('Space');
    // A day is typed in the order of the device: month, day, year.
    await desk.fillDay(desk.page.getByLabel('Built from (first day)'), '09012018');
    await desk.fillDay(desk.page.getByLabel('Built until (last day)'), '02292024');
    await desk.fill(desk.page.getByLabel('Required part'), '30-1127B');
    await desk.choose(desk.page.getByLabel('Units that are already out'), 'Call back');
    await desk.walkTo(button(desk, 'Bar a part'));
    await desk.press('Enter');
    await desk.fill(desk.page.getByLabel('Barred part'), '30-1127');
    await desk.walkTo(button(desk, 'Keep it, not published yet'));
    await desk.press('Enter');
    await desk.page.waitForURL(/\/bulletins\/\d+$/);
    await desk.isAt(desk.page.getByRole('main'));
  }, 60_000);

  it('looks at what it would bring, and publishes it', async () => {
    await desk.walkTo(button(desk, 'What if it were published?'));
    await desk.press('Enter');
    await seen(desk.page, /owners to call/);
    await desk.walkTo(button(desk, 'Publish'));
    await desk.press('Enter');
    await desk.page.getByText('Recheck done').waitFor({ timeout: 60_000 });
  }, 90_000);

  it('decides about a flag: j marks it, a accepts it', async () => {
    await desk.walkTo(desk.page.getByRole('link', { name: 'Flagged', ...WORD }));
    await desk.press('Enter');
    const rows = desk.page.locator('li[data-flag]');
    await rows.first().waitFor();
    const id = await rows.nth(1).getAttribute('data-flag');
    await desk.press('j');
    await desk.isAt(rows.nth(1));
    await desk.press('a');
    await giveReason(desk, 'Accept', 'the owner knows and waits for the part');
    await desk.page.locator(`li[data-flag="${id}"]`).waitFor({ state: 'detached' });
  }, 60_000);

  it('calls an owner: j leads to the card, an attempt is written down, and the call is settled', async () => {
    await desk.walkTo(desk.page.getByRole('link', { name: 'Callbacks', ...WORD }));
    await desk.press('Enter');
    const cards = desk.page.locator('li[data-callback]');
    await cards.first().waitFor();
    await desk.press('j');
    await desk.isAt(cards.first());
    const card = desk.page.locator(`li[data-callback="${await cards.first().getAttribute('data-callback')}"]`);
    await desk.choose(card.getByLabel('Outcome'), 'Message left');
    await desk.walkTo(card.getByLabel('Next try'));
    // Left with today's: a message that was left is tried again in some days, which are proposed.
    for (let part = 0; part < 3; part += 1) {
      await desk.press('Delete');
      await desk.press('ArrowRight');
    }
    await desk.walkTo(card.getByRole('button', { name: 'Write down the attempt' }));
    await desk.press('Enter');
    await card.getByText(/message left/).waitFor();
    await desk.walkTo(card.getByRole('button', { name: 'Book it in, or settle it' }));
    await desk.press('Enter');
    const dialog = desk.page.getByRole('dialog');
    await desk.isAt(dialog.getByLabel('What was said'));
    await desk.walkTo(dialog.getByLabel('Outcome'), 'back');
    await desk.choose(dialog.getByLabel('Outcome'), 'Owner declined');
    await desk.fill(dialog.getByLabel('What was said'), 'has sold it since');
    await desk.walkTo(dialog.getByRole('button', { name: 'Settle it' }));
    await desk.press('Enter');
    await dialog.waitFor({ state: 'detached' });
    await card.waitFor({ state: 'detached' });
  }, 60_000);
});
