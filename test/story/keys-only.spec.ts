import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { BrowserShop } from './browser-shop';
import { ByKeys } from './by-keys';

const db = withDatabase();
const OWNER = 'Quilla Ombrevant';
let shop: BrowserShop;
let page: Page;
let keys: ByKeys;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
  page = await shop.page();
  keys = new ByKeys(page);
}, 300_000);

afterAll(() => {
  expect(shop.complaints).toEqual([]);
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const link = (name: string | RegExp) => page.getByRole('link', { name });
const stage = (name: string) => page.locator('li[aria-current="step"]', { hasText: name }).waitFor();
const seen = (text: string | RegExp) => page.getByText(text).first().waitFor();
const place = (name: string) => page.getByLabel(`Auger shear pin, ${name}`, { exact: true });

/** The one next step of the ticket, by its own key. */
async function goOn(words: string): Promise<void> {
  await button(words).waitFor();
  await page.keyboard.press('n');
  await keys.isAt(new RegExp(`^button ${words}$`));
  await page.keyboard.press('Enter');
}

async function signIn(role: string): Promise<void> {
  const { login, password } = shop.shop.people.find((person) => person.role === role)!;
  await keys.write(page.getByLabel('Sign-in name'), login);
  await keys.write(page.getByLabel('Password'), password);
  await page.keyboard.press('Enter');
  await page.getByRole('navigation', { name: 'Shop' }).waitFor();
}

/** As a scanner does it; done when the server has kept it. */
async function scan(into: string, number: string): Promise<void> {
  await keys.to(place(into));
  const kept = page.waitForResponse((one) => one.url().endsWith('/places') && one.request().method() === 'PUT');
  await page.keyboard.type(number);
  await page.keyboard.press('Enter');
  expect((await kept).status()).toBe(200);
}

/** Nobody touches a mouse in this file: every step is a key, and after each the focus is somewhere. */
describe('the whole story, by keys alone', () => {
  it('takes a scanned serial at intake without opening the ticket: its Enter leads to the next field', async () => {
    await page.goto('/');
    await signIn('technician');
    await keys.press(link('Take a unit in'));
    await keys.write(page.getByRole('main').getByLabel('Name'), OWNER);
    await page.keyboard.press('Enter');
    await keys.isAt(/^input Phone/);
    await keys.to(page.getByLabel('Serial number', { exact: true }));
    await page.keyboard.type('19A00999');
    await page.keyboard.press('Enter');
    await keys.isAt(/^textarea Plate/);
    expect(new URL(page.url()).pathname).toBe('/new-ticket');
    await keys.press(button('Start over'));
  }, 120_000);

  it('takes a unit in and identifies it', async () => {
    await keys.write(page.getByRole('main').getByLabel('Name'), OWNER);
    await keys.write(page.getByRole('main').getByLabel('Phone'), '0000 555 0199');
    await keys.tick(page.getByLabel('The owner agrees to be called'));
    await keys.write(page.getByLabel('Complaint'), 'Auger stands still in wet snow.');
    await keys.press(button('Open the ticket'));
    await page.waitForURL(/\/tickets\/\d+$/);
    await stage('Intake');
    await keys.isAt(/^main/);
    await keys.pick(page.getByLabel('Product line'), 'DRIFTBREAK');
    await keys.pick(page.getByLabel('Model'), 'DB-28');
    await keys.write(page.getByLabel('Serial number', { exact: true }), '19A00999');
    await keys.press(button('Keep plate and serial'));
    await seen('Built 1 Jan 2019 to 31 Jan 2019 (31 possible days).');
    await keys.isAt(/./);
    await goOn('Hand over to the bench');
    await stage('Inspection');
    await keys.isAt(/^li Inspection/);
  }, 120_000);

  it('writes the warranty down and is back at its button', async () => {
    await keys.press(page.locator('summary', { hasText: 'Warranty' }));
    await keys.press(button('Write the warranty down'));
    await keys.isAt(/Bought on/);
    await page.keyboard.type('02012026');
    await keys.press(button('Keep it'));
    await keys.isAt(/^button Change the warranty/);
  }, 120_000);

  it('records what is in it, place after place', async () => {
    await scan('left outer, as found', '30-1127');
    await keys.isAt(/Auger shear pin, left inner, as found/);
    await scan('left inner, as found', '30-1127');
    await scan('right inner, as found', '30 1120');
    await keys.pick(page.getByLabel('Condition of Auger shear pin, right outer, as found'), 'sheared');
    await seen('wrong');
    await keys.press(button(/^Leave out the \d+ places not looked at$/));
    await keys.isAt(/Reason/);
    await page.keyboard.type('not part of this job');
    await keys.press(page.getByRole('dialog').getByRole('button', { name: 'Leave them out' }));
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await keys.isAt(/./);
    await goOn('Go on to parts selection');
    await stage('Parts selection');
    await keys.isAt(/^li Parts selection/);
  }, 120_000);

  it('picks the part and takes the owner’s word', async () => {
    await keys.write(page.getByLabel('How many').first(), '2');
    await keys.press(button('Pick 30-1127'));
    await seen('2 ×');
    await keys.isAt(/./);
    await keys.write(page.getByLabel('Minutes'), '45');
    await keys.write(page.getByLabel('Labour in'), '38,50');
    await keys.press(button('Keep labour'));
    await page.getByRole('row', { name: /Work at the bench/ }).waitFor();
    await keys.isAt(/./);
    await keys.press(button("Write down the owner's word"));
    await seen(new RegExp(`${OWNER} said yes`));
    await keys.isAt(/./);
    await goOn('Start the repair');
    await stage('Repair');
  }, 120_000);

  it('ticks the safety points, fits and hands the unit over, and is told so where the keys are', async () => {
    const points = page.locator('details', { hasText: 'Safety checklist' }).getByRole('checkbox');
    const many = await points.count();
    for (let index = 0; index < many; index += 1) {
      const kept = page.waitForResponse((answer) => answer.url().endsWith('/safety'));
      await keys.tick(points.nth(index));
      await kept;
    }
    await scan('right inner, as left', '30-1127');
    await scan('right outer, as left', '30-1127');
    await keys.isAt(/./);
    await goOn('Go on to handover');
    await stage('Handover');
    await goOn('Hand the unit over');
    await keys.isAt(/^p Handed over/);
    await keys.press(link('Sheet'));
    await page.getByRole('row', { name: /right inner/ }).waitFor();
    await keys.isAt(/^main/);
  }, 120_000);

  it('answers at the counter which part it is', async () => {
    await keys.press(button('Sign out'));
    await signIn('manager');
    await keys.goTo(link('Which part?'));
    await keys.pick(page.getByLabel('Product line'), 'DRIFTBREAK');
    await keys.write(page.getByLabel('Serial number'), '19A00999');
    await page.keyboard.press('Enter');
    await seen('30-1127');
    await keys.isAt(/Serial number/);
  }, 120_000);

  it('publishes a bulletin and sees its recheck through', async () => {
    await keys.goTo(link('Bulletins'));
    await keys.press(link(/DB-SB-09/));
    await keys.press(button('What if it were published?'));
    await seen(/owners to call/);
    await keys.isAt(/What if it were published/);
    await keys.press(button('Publish'));
    await page.getByText('Recheck done').waitFor({ timeout: 60_000 });
    await keys.isAt(/./);
    await keys.press(link('To the callbacks'));
    await page.getByRole('heading', { name: 'Callbacks' }).waitFor();
  }, 120_000);

  it('does a callback and goes on with the next', async () => {
    const cards = page.locator('li[data-callback]');
    await cards.first().waitFor();
    const first = await cards.first().getAttribute('data-callback');
    await page.keyboard.press('j');
    const card = page.locator(`li[data-callback="${first}"]`);
    await keys.press(card.getByRole('button', { name: 'Write down the attempt' }));
    await card.getByText(/: phone, reached/).waitFor();
    await keys.isAt(/^button Write down the attempt/);
    await page.keyboard.press('j');
    await page.keyboard.press('k');
    await keys.pick(card.getByLabel('Outcome'), 'message-left');
    await keys.press(card.getByRole('button', { name: 'Write down the attempt' }));
    await card.waitFor({ state: 'detached' });
    await keys.isAt(/^li/);
    await page.keyboard.press('j');
    await keys.isAt(/^li/);
  }, 120_000);

  it('decides about a flag, and is at the next one', async () => {
    await keys.goTo(link('Flagged'));
    const rows = page.locator('li[data-flag]');
    await rows.first().waitFor();
    const before = await rows.count();
    await page.keyboard.press('j');
    await keys.isAt(/^li/);
    await page.keyboard.press('a');
    await keys.isAt(/Reason/);
    await page.keyboard.type('the owner knows and waits for the part');
    await keys.press(page.getByRole('dialog').getByRole('button', { name: 'Accept' }));
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await rows.nth(before - 1).waitFor({ state: 'detached' });
    await keys.isAt(/^li/);
  }, 120_000);
});
