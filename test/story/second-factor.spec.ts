import { BinaryBitmap, HybridBinarizer, QRCodeReader, RGBLuminanceSource } from '@zxing/library';
import { URI, type TOTP } from 'otpauth';
import type { Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { withDatabase } from '../../libs/testing';
import { accessibilityFindings, BrowserShop } from './browser-shop';

const db = withDatabase();
let shop: BrowserShop;

beforeAll(async () => {
  shop = await BrowserShop.open(db);
}, 300_000);

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const PASSWORD = 'oil-and-rags';

/** What a phone's camera makes of the picture. */
async function readPicture(picture: Locator): Promise<string> {
  const { data, info } = await sharp(await picture.screenshot())
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const light = new RGBLuminanceSource(new Uint8ClampedArray(data), info.width, info.height);
  return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(light))).getText();
}

/** A code that was not used yet: no code is taken twice. */
function freshCode(totp: TOTP, used: string[]): string {
  const next = () => [0, 30_000].map((ahead) => totp.generate({ timestamp: Date.now() + ahead }));
  const code = next().find((one) => !used.includes(one));
  if (code === undefined) throw new Error('more codes were asked for than there are at once');
  used.push(code);
  return code;
}

async function setUp(page: Page): Promise<{ totp: TOTP; used: string[]; codes: string[] }> {
  await press(page, 'Set it up');
  await page.getByLabel('Your password').fill(PASSWORD);
  await press(page, 'Go on');
  const picture = page.getByRole('img', { name: /^QR code/ });
  await picture.waitFor();
  expect(await accessibilityFindings(page)).toEqual([]);
  const totp = URI.parse(await readPicture(picture)) as TOTP;
  expect((await page.locator('code').first().innerText()).replaceAll(/\s/g, '')).toBe(totp.secret.base32);
  const used: string[] = [];
  await page.getByLabel('Code the app shows').fill('000000');
  await press(page, 'Turn it on');
  await page.getByRole('alert').waitFor();
  await page.getByLabel('Code the app shows').fill(freshCode(totp, used));
  await press(page, 'Turn it on');
  await page.getByRole('heading', { name: 'Recovery codes' }).waitFor();
  const codes = await page.getByRole('list', { name: 'Recovery codes' }).getByRole('listitem').allInnerTexts();
  expect(codes).toHaveLength(10);
  await press(page, 'I have kept them');
  return { totp, used, codes };
}

async function firstStep(page: Page, login: string) {
  await page.goto('/');
  await page.getByLabel('Sign-in name').fill(login);
  await page.getByLabel('Password').fill(PASSWORD);
  await press(page, 'Sign in');
}

describe('the second factor', () => {
  let codes: string[];

  it('is set up by picture or typed key, and asked for at the next sign-in', async () => {
    const page = await shop.page('phone');
    await shop.signIn(page, 'manager');
    await page.goto('/my-sign-in');
    const mine = await setUp(page);
    codes = mine.codes;
    await page.getByText('10 recovery codes are left').waitFor();

    const other = await shop.page('desk', 'dark');
    await firstStep(other, 'bram');
    await other.getByRole('heading', { name: 'Second step' }).waitFor();
    expect(await accessibilityFindings(other)).toEqual([]);
    await other.getByLabel('Code').fill(mine.used[0]!);
    await press(other, 'Sign in');
    await other.getByText('was used already').waitFor();
    await other.getByLabel('Code').fill(freshCode(mine.totp, mine.used));
    await press(other, 'Sign in');
    await other.getByRole('navigation', { name: 'Shop' }).waitFor();
  }, 90_000);

  it('gives way to a recovery code, and is turned off with another', async () => {
    const page = await shop.page();
    await firstStep(page, 'bram');
    await page.getByLabel('Code').fill(codes[0]!);
    await press(page, 'Sign in');
    await page.getByRole('navigation', { name: 'Shop' }).waitFor();
    await page.goto('/my-sign-in');
    await page.getByText('9 recovery codes are left').waitFor();
    await press(page, 'Turn it off');
    await page.getByLabel('Your password').fill(PASSWORD);
    await page.getByLabel('Code the app shows').fill(codes[1]!);
    await press(page, 'Turn it off');
    await page.getByRole('button', { name: 'Set it up' }).waitFor();
  }, 90_000);

  it('once required, is all that a manager without one sees, until it is on', async () => {
    const [chief, manager] = [await shop.page(), await shop.page()];
    await shop.signIn(manager, 'manager');
    await shop.signIn(chief, 'administrator');
    await chief.goto('/people');
    const required = chief.getByLabel('Managers and administrators need a second factor');
    await required.click({ force: true });
    await chief.getByText('Turn on your own second factor first').waitFor();
    await chief.goto('/my-sign-in');
    await setUp(chief);
    await chief.goto('/people');
    await required.click({ force: true });
    await chief.getByText('Signs in with a password and a code.').waitFor();
    expect(await accessibilityFindings(chief)).toEqual([]);

    await manager.goto('/flagged');
    await manager.getByRole('heading', { name: 'Add a second factor' }).waitFor();
    expect(await manager.getByRole('navigation').count()).toBe(0);
    await setUp(manager);
    await manager.getByRole('navigation', { name: 'Shop' }).waitFor();

    const row = chief.getByRole('listitem').filter({ hasText: 'bram' });
    await chief.reload();
    await row.getByRole('button', { name: 'Take second factor away' }).click();
    await row.getByText('Signs in with a password.').waitFor();
    expect(shop.complaints).toEqual([]);
  }, 120_000);
});
