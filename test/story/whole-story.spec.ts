import type { Page } from 'playwright-core';
import { withDatabase } from '../../libs/testing';
import { BrowserShop } from './browser-shop';

const db = withDatabase();
const OWNER = 'Quilla Ombrevant';
let shop: BrowserShop;
let bench: Page;
let desk: Page;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
  bench = await shop.page('tablet');
  desk = await shop.page();
}, 300_000);

afterAll(() => {
  expect(shop.complaints).toEqual([]);
});

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const seen = (page: Page, text: string | RegExp) => page.getByText(text).first().waitFor();
const stage = (page: Page, name: string) => page.locator('li[aria-current="step"]', { hasText: name }).waitFor();
const pin = (place: string, side: string) => bench.getByLabel(`Auger shear pin, ${place}, ${side}`, { exact: true });

/** As a scanner does it: the number once, then Enter; done when the server has kept it. */
async function scan(place: string, side: string, number: string): Promise<void> {
  const kept = bench.waitForResponse(
    (answer) => answer.url().endsWith('/places') && answer.request().method() === 'PUT',
  );
  await pin(place, side).fill(number);
  await pin(place, side).press('Enter');
  expect((await kept).status()).toBe(200);
}

async function giveReason(page: Page, act: string): Promise<void> {
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Reason').fill('not part of this job');
  await dialog.getByRole('button', { name: act }).click();
  await dialog.waitFor({ state: 'detached' });
}

describe('the whole story, in a browser', () => {
  it('takes a unit in whose plate is not read yet', async () => {
    await shop.signIn(bench, 'technician');
    await bench.getByRole('link', { name: 'Take a unit in' }).click();
    await bench.getByRole('main').getByLabel('Name').fill(OWNER);
    await bench.getByRole('main').getByLabel('Phone').fill('0000 555 0199');
    await bench.getByLabel('The owner agrees to be called').check();
    await bench.getByLabel('Complaint').fill('Auger stands still in wet snow.');
    await press(bench, 'Open the ticket');
    await bench.waitForURL(/\/tickets\/\d+$/);
    await stage(bench, 'Intake');
    await seen(bench, 'Unit not identified yet');
  }, 60_000);

  it('says what is missing instead of going on, and goes on once the unit is identified', async () => {
    await press(bench, 'Hand over to the bench: 2 missing');
    await seen(bench, 'Record which product line the unit belongs to.');
    await bench.getByLabel('Product line').selectOption('DRIFTBREAK');
    await bench.getByLabel('Model').selectOption('DB-28');
    await bench.getByLabel('Serial number', { exact: true }).fill('19A00999');
    await press(bench, 'Keep plate and serial');
    await seen(bench, 'Built 1 Jan 2019 to 31 Jan 2019 (31 possible days).');
    await press(bench, /^Hand over to the bench$/);
    await stage(bench, 'Inspection');
  }, 60_000);

  it('records a mixture place by place and judges each at once', async () => {
    await scan('left outer', 'as found', '30-1127');
    await scan('left inner', 'as found', '301127');
    await scan('right inner', 'as found', '30 1120');
    const condition = bench.getByLabel('Condition of Auger shear pin, right outer, as found');
    await condition.selectOption('sheared');
    const pins = bench.locator('#position-AUG-PIN');
    await pins.getByText('right', { exact: true }).first().waitFor();
    await pins.getByText('wrong', { exact: true }).first().waitFor();
    await press(bench, /^Leave out the \d+ places not looked at$/);
    await giveReason(bench, 'Leave them out');
    await press(bench, /^Go on to parts selection$/);
    await stage(bench, 'Parts selection');
  }, 60_000);

  it('keeps the repair closed until the right part is picked, and takes the owner’s word', async () => {
    await press(bench, /^Start the repair: \d missing$/);
    await seen(bench, 'Auger shear pin: pick the part that is to be fitted.');
    await bench.getByLabel('How many').first().fill('2');
    await press(bench, 'Pick 30-1127');
    await seen(bench, '2 ×');
    await bench.getByLabel('Spare part number').fill('30-1127');
    await bench.getByLabel('Spare part number').press('Enter');
    await seen(bench, '1 ×');
    await bench.getByLabel('Minutes').fill('45');
    await bench.getByLabel('Labour in').fill('38,50');
    await press(bench, 'Keep labour');
    await bench.getByRole('row', { name: /Work at the bench/ }).waitFor();
    await press(bench, "Write down the owner's word");
    await seen(bench, new RegExp(`${OWNER} said yes`));
    await press(bench, /^Start the repair$/);
    await stage(bench, 'Repair');
  }, 60_000);

  it('asks for the safety points before anything is fitted, then takes what is fitted by scan', async () => {
    const points = bench.locator('details', { hasText: 'Safety checklist' }).getByRole('checkbox');
    const many = await points.count();
    expect(many).toBeGreaterThan(3);
    for (let index = 0; index < many; index += 1) {
      const kept = bench.waitForResponse((answer) => answer.url().endsWith('/safety'));
      await points.nth(index).check();
      expect((await kept).status()).toBe(200);
    }
    await scan('right inner', 'as left', '30-1127');
    await scan('right outer', 'as left', '30-1127');
    await press(bench, /^Go on to handover$/);
    await stage(bench, 'Handover');
  }, 60_000);

  it('hands the unit over with a sheet that says what was found and fitted', async () => {
    await press(bench, /^Hand the unit over$/);
    await seen(bench, /^Handed over/);
    await bench.getByRole('link', { name: 'Sheet' }).click();
    const line = bench.getByRole('row', { name: /right inner/ });
    await line.getByText('30-1120').waitFor();
    await line.getByText('30-1127').first().waitFor();
    await seen(bench, 'Never fit a stronger fastener than the one required');
    await seen(bench, 'You agreed that we call you');
  }, 60_000);

  it('shows the manager what a bulletin would bring, publishes it, and follows the recheck to its end', async () => {
    await shop.signIn(desk, 'manager');
    await desk.getByRole('link', { name: 'Bulletins' }).click();
    await desk.getByRole('link', { name: /DB-SB-09/ }).click();
    await press(desk, 'What if it were published?');
    const calls = desk.getByText(/owners to call/);
    await calls.waitFor();
    const expected = Number(/(\d+) owners to call/.exec((await calls.textContent()) ?? '')?.[1]);
    await press(desk, /^Publish$/);
    await desk.getByText('Recheck done').waitFor({ timeout: 60_000 });
    const opened = desk.getByRole('listitem').filter({ hasText: 'callbacks opened' });
    expect(Number.parseInt((await opened.textContent()) ?? '', 10)).toBe(expected);
    expect(expected).toBeGreaterThan(100);
  }, 120_000);

  it('tells the manager to call the owner whose unit left with the part that was right that day', async () => {
    await desk.getByRole('link', { name: 'To the callbacks' }).click();
    await desk.getByRole('heading', { name: 'Callbacks' }).waitFor();
    const card = desk.locator('li[data-callback]', { hasText: OWNER });
    const more = desk.getByRole('button', { name: 'Show more' });
    await card.or(more).first().waitFor();
    while (!(await card.isVisible())) {
      await more.click();
      await card.or(more).first().waitFor();
    }
    await card.getByRole('link', { name: '0000 555 0199' }).waitFor();
    await card.getByLabel('Outcome').selectOption('message-left');
    await card.getByRole('button', { name: 'Write down the attempt' }).click();
    await card.waitFor({ state: 'detached' });
    await desk.getByRole('link', { name: /^Another day/ }).click();
    await card
      .getByText(/message left/i)
      .first()
      .waitFor();
  }, 60_000);
});
