/**
 * `npm run screens`: takes a picture of every screen of the demo shop, light and dark, at 1280 and at 360 pixels, into
 * screens/; dark ones show the whole page.
 * With `-- --readme` it also renews the pictures that the README shows.
 */
import { copyFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { Client } from 'pg';
import { runSolo } from '../../apps/solo/src/run-solo';
import { shopParts } from '../../apps/solo/src/shop-parts';
import { readConfig, repoRoot } from '../../libs/config';
import { demoPeople, KEPT_BULLETIN } from '../../libs/demo';
import { chromiumPath, closeRun, folderInRun, openRun, runFolder } from '../../libs/testing';
import { screens, type Rows, type Screen } from './screens';

const WIDTHS = [
  { width: 1280, height: 800 },
  { width: 360, height: 780 },
];
const FOLDER = join(repoRoot(), 'screens');
const README_PICTURES = ['board', 'ticket', 'flagged', 'wall-chart', 'bulletin'];

/** The fullest open ticket at the bench, the bulletin kept for a new user, and the line it speaks of. */
async function rowsOf(databaseUrl: string): Promise<Rows> {
  const client = new Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    const ticket = await client.query<{ id: number }>(
      `SELECT t.id FROM ticket t JOIN flag f ON f.ticket_id = t.id AND f.state = 'open' JOIN unit u ON u.id = t.unit_id
       WHERE t.closed_at IS NULL AND t.stage IN ('parts-selection', 'repair') GROUP BY t.id
       ORDER BY count(DISTINCT f.verdict) DESC, count(*) DESC, t.id LIMIT 1`,
    );
    const draft = await client.query<{ id: number }>('SELECT id FROM source WHERE key = $1', [KEPT_BULLETIN]);
    return { ticket: ticket.rows[0]!.id, draft: draft.rows[0]!.id, line: KEPT_BULLETIN.split('-')[0]! };
  } finally {
    await client.end();
  }
}

async function takePictures(browser: Browser, address: string, all: readonly Screen[]): Promise<void> {
  const { login, password } = demoPeople.find(({ role }) => role === 'manager')!;
  for (const viewport of WIDTHS) {
    const context = await browser.newContext({ viewport, locale: 'en-GB', reducedMotion: 'reduce' });
    const page = await context.newPage();
    await page.goto(address);
    await page.getByLabel(/sign-in name|login/i).fill(login);
    await page.getByLabel('Password').fill(password);
    await page.keyboard.press('Enter');
    await page.getByText('Intake').first().waitFor();
    for (const screen of all) {
      await page.goto(address + screen.path);
      await page.getByText(screen.ready).filter({ visible: true }).first().waitFor();
      for (const name of screen.press ?? []) await page.getByRole('button', { name }).first().click();
      await page.waitForTimeout(300);
      const name = join(FOLDER, `${screen.name}-${viewport.width}`);
      await page.screenshot({ path: `${name}.png`, fullPage: viewport.width < 1000 });
      await page.emulateMedia({ colorScheme: 'dark' });
      await page.screenshot({ path: `${name}-dark.png`, fullPage: true });
      await page.emulateMedia({ colorScheme: 'light' });
      console.log(`${name}.png`);
    }
    await context.close();
  }
}

async function main(): Promise<void> {
  openRun();
  mkdirSync(FOLDER, { recursive: true });
  const config = readConfig({ REVRIGHT_DATA: join(folderInRun('screens'), 'data'), PORT: '0', LOG_LEVEL: 'error' });
  if (!config.ok) throw new Error(config.problems.join(' '));
  // The tables' owner sees past the walls between locations.
  let ownersUrl = '';
  const started = await runSolo(
    config.config,
    (running, say) => {
      ownersUrl = running.migrationDatabaseUrl ?? running.databaseUrl;
      return shopParts(running, say);
    },
    (sentence) => console.log(sentence),
  );
  if (!started.ok) throw new Error(started.problem);
  const browser = await chromium.launch({ executablePath: await chromiumPath(), args: ['--no-sandbox'] });
  try {
    await takePictures(browser, started.solo.address, screens(await rowsOf(ownersUrl)));
    if (process.argv.includes('--readme')) {
      mkdirSync(join(repoRoot(), 'docs', 'pictures'), { recursive: true });
      for (const name of README_PICTURES) {
        copyFileSync(join(FOLDER, `${name}-1280.png`), join(repoRoot(), 'docs', 'pictures', `${name}.png`));
      }
    }
  } finally {
    await browser.close();
    await started.solo.stop();
    await closeRun(runFolder());
  }
}

main().catch((error: unknown) => {
  console.error(error);
  process.exitCode = 1;
});
