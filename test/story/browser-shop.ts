import AxeBuilder from '@axe-core/playwright';
import { chromium, type Browser, type Page } from 'playwright-core';
import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { startWorker } from '../../apps/worker/src/start-worker';
import { readConfig } from '../../libs/config';
import { makeDemoShop, type DemoShop } from '../../libs/demo';
import { openStore, seedShop } from '../../libs/store';
import { chromiumPath, type SpecDatabase } from '../../libs/testing';

/** A viewport by what stands before the person: a desk's screen, a bench's tablet, a phone. */
export const SIZES = {
  desk: { width: 1280, height: 800 },
  tablet: { width: 820, height: 1180 },
  phone: { width: 360, height: 780 },
} as const;

/** The demo shop behind the built page in a real Chromium. */
export class BrowserShop {
  private constructor(
    readonly shop: DemoShop,
    readonly api: RunningApi,
    readonly browser: Browser,
  ) {}

  /** With further variables of the environment, where a spec is about them. */
  static async open(db: SpecDatabase, env: Record<string, string> = {}): Promise<BrowserShop> {
    const shop = makeDemoShop(1, Math.floor(Date.now() / 86_400_000));
    const store = openStore({ url: db.url });
    await seedShop(store, shop);
    const read = readConfig({
      DATABASE_URL: db.url,
      PORT: '0',
      TIME_ZONE: 'UTC',
      LOG_LEVEL: 'silent',
      NODE_ENV: 'test',
      REVRIGHT_DEMO: 'true',
      REVRIGHT_KEY: 'ab'.repeat(32),
      ...env,
    });
    if (!read.ok) throw new Error(read.problems.join(' '));
    const api = await startApi({ config: read.config, store });
    const worker = await startWorker({ config: read.config, store });
    const browser = await chromium.launch({ executablePath: await chromiumPath(), args: ['--no-sandbox'] });
    db.beforeClose(async () => {
      await browser.close();
      await api.close();
      await worker.close();
      await store.close();
    });
    return new BrowserShop(shop, api, browser);
  }

  /** A fresh browser at the door of the shop. Everything the page complains about makes the spec fail. */
  async page(size: keyof typeof SIZES = 'desk', colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
    const context = await this.browser.newContext({
      viewport: SIZES[size],
      colorScheme,
      baseURL: this.api.url,
      reducedMotion: 'reduce',
    });
    context.setDefaultTimeout(15_000);
    const page = await context.newPage();
    page.on('pageerror', (error) => this.complaints.push(error.message));
    return page;
  }

  /** What a page threw, over all pages. */
  readonly complaints: string[] = [];

  /** Goes through the door as one of the demo's people, by keys: no pointer rests on what comes up behind it. */
  async signIn(page: Page, role: DemoShop['people'][number]['role']): Promise<void> {
    const { login, password } = this.shop.people.find((person) => person.role === role)!;
    await page.goto('/');
    await page.getByLabel('Sign-in name').fill(login);
    await page.getByLabel('Password').fill(password);
    await page.keyboard.press('Enter');
    await page.getByRole('search').waitFor();
  }
}

/** Rules whose answer hangs on the theme alone: inks against their ground. All others read the document, which both share. */
const RULES_OF_INK = ['color-contrast', 'link-in-text-block'];

/**
 * What axe-core has to say about the page as it stands: one line a finding. Told `inks`, it asks only what another theme
 * can change. Only violations are described in full: to describe the thousands of things that are right takes most of
 * its time.
 */
export async function accessibilityFindings(
  page: Page,
  asked: 'everything' | 'inks' = 'everything',
): Promise<string[]> {
  const builder = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  const { violations } = await (asked === 'inks' ? builder.withRules(RULES_OF_INK) : builder).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
}
