import { chromium, type Browser } from 'playwright-core';
import { chromiumPath, withDatabase } from '../../libs/testing';
import { ApiShop } from '../api/api-shop';

const db = withDatabase();
let shop: ApiShop;
let browser: Browser;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  browser = await chromium.launch({ executablePath: await chromiumPath(), args: ['--no-sandbox'] });
}, 300_000);
afterAll(() => browser.close());

it('the reader page shows every group of routes and its routes, under the policy of our pages and from here alone', async () => {
  const { cookie } = await shop.as('administrator');
  const [name, value] = cookie.split('=') as [string, string];
  const context = await browser.newContext();
  await context.addCookies([{ name, value, url: shop.api.url }]);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => request.url().startsWith(shop.api.url) || complaints.push(request.url()));
  await page.goto(`${shop.api.url}/api/reader`);
  await page.getByText("A unit's stay in the shop, from intake to handover.").click();
  await page.getByText('Opens a ticket for a unit that came in.').click();
  await page.getByText('"Auger does not turn"').first().waitFor();
  expect(complaints.filter((text) => !text.startsWith('data:'))).toEqual([]);
}, 60_000);
