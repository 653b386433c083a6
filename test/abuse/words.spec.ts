import { execFileSync } from 'node:child_process';
import { Socket } from 'node:net';
import { chromium, type Browser, type Page } from 'playwright-core';
import { repoRoot } from '../../libs/config';
import { USUAL_PRINTS, type TicketView } from '../../libs/contracts';
import { chromiumPath, withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from '../api/api-shop';
import { readPdf } from '../prints/read-pdf';

const db = withDatabase();
let shop: ApiShop;
let browser: Browser;
let counter: Caller;

const MARKUP = [
  '<script>window.struck=1</script>',
  '<img src=x onerror="window.struck=1">',
  '<svg onload=window.struck=1>',
  '</title><a href="javascript:window.struck=1">x</a>',
  '{{constructor.constructor("window.struck=1")()}}',
].join(' ');
const STYLE = '</style><style>*{display:none!important}</style> ;position:fixed;top:0 url(//elsewhere.example/a)';
const MARKS = 'e\u0301\u0302\u0303'.repeat(200);
const TURNED = '\u202E\u2066Ole\u200B\u200D Brand\uFEFF';

async function ticketOf(name: string, complaint: string, serial: string): Promise<TicketView> {
  const owner = { name: name.slice(0, 200), phone: '555 0101', address: name.slice(0, 200), consent: true };
  const unit = { lineCode: 'SNOW-2', modelNumber: 'S2', serial, serialAbsent: null, plate: MARKUP.slice(0, 60) };
  const { status, body } = await counter.ask('POST', '/tickets', { owner, unit, complaint });
  expect(status).toBe(201);
  return body;
}

/** A page of the shop as the counter sees it. */
async function opened(path: string): Promise<Page> {
  const context = await browser.newContext({ baseURL: shop.api.url });
  const [name, value] = counter.cookie.split(/=(.*)/s);
  await context.addCookies([{ name: name!, value: value!, url: shop.api.url }]);
  const page = await context.newPage();
  await page.goto(path);
  await page.getByRole('heading').first().waitFor();
  return page;
}

/** What in the page could run or set style and is not the page's own. */
const strange = (page: Page) =>
  page.evaluate(() => ({
    struck: 'struck' in window,
    scripts: [...document.scripts].filter(({ src }) => new URL(src || 'x:y').origin !== location.origin).length,
    handlers: [...document.querySelectorAll('*')].filter(({ attributes }) =>
      [...attributes].some(({ name }) => name.startsWith('on')),
    ).length,
    links: document.querySelectorAll('a[href^="javascript:" i], img[src="x"]').length,
    styles: [...document.querySelectorAll('style')].filter(({ textContent }) =>
      /display:none!important/.test(textContent),
    ).length,
    inStyle: [...document.querySelectorAll('[style]')].filter((one) =>
      /elsewhere\.example/.test(one.outerHTML.split('>')[0]!),
    ).length,
  }));
const NOTHING = { struck: false, scripts: 0, handlers: 0, links: 0, styles: 0, inStyle: 0 };

async function pdf(id: number) {
  const response = await fetch(`${shop.api.url}/api/tickets/${id}/sheet.pdf`, { headers: { cookie: counter.cookie } });
  expect(response.status).toBe(200);
  const bytes = new Uint8Array(await response.arrayBuffer());
  return { raw: Buffer.from(bytes).toString('latin1'), pages: readPdf(bytes).pages };
}

/** Files of the programs that hold what the pattern finds, each with in how many lines. */
function sources(pattern: string): readonly string[] {
  const search = `grep -rcP '${pattern}' --include=*.ts --include=*.tsx apps libs | grep -v ':0$' || true`;
  const found = execFileSync('sh', ['-c', search], { cwd: repoRoot(), encoding: 'utf8' }).split('\n').filter(Boolean);
  const own = found.filter((file) => !/\/generated\/|\/testing\/|\.spec\.ts/.test(file));
  return own.map((line) => line.replace(':', ' ')).sort();
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  counter = await shop.as('counter');
  const prints = { ...USUAL_PRINTS, shopName: MARKUP.slice(0, 120), address: STYLE };
  expect((await (await shop.as('manager')).settle('PUT', '/settings/prints', prints)).status).toBe(200);
  browser = await chromium.launch({ executablePath: await chromiumPath(), args: ['--no-sandbox'] });
  db.beforeClose(() => browser.close());
}, 300_000);

describe('words that somebody typed', () => {
  it('26, 28: are words on every page that shows them: nothing of them runs, nothing of them is style', async () => {
    const { id, unit, number } = await ticketOf(MARKUP, `${MARKUP} ${STYLE}`, '17030001');
    for (const path of [
      `/tickets/${id}`,
      `/tickets/${id}/sheet`,
      `/tickets/${id}/tag`,
      `/units/${unit.id}`,
      '/board',
    ]) {
      const page = await opened(path);
      await page
        .getByText(path === `/units/${unit.id}` ? '17030001' : number)
        .first()
        .waitFor();
      expect({ path, ...(await strange(page)) }).toEqual({ path, ...NOTHING });
      await page.context().close();
    }
  }, 120_000);

  it('26: are words on the printed sheet, which holds no act and no address to follow', async () => {
    const { id } = await ticketOf(MARKUP, `${MARKUP} ${STYLE}`, '17030002');
    const { raw, pages } = await pdf(id);
    expect(
      pages
        .map(({ text }) => text)
        .join(' ')
        .replace(/\s+/g, ''),
    ).toContain('<script>window.struck=1</script>');
    expect(raw).not.toMatch(/\/(JavaScript|JS|URI|Launch|OpenAction|SubmitForm)\b/);
  });

  it('27: keep the fields of the sheet apart, whatever turns or piles up in them', async () => {
    const { id, number } = await ticketOf(TURNED, MARKS, '17030003');
    const { pages } = await pdf(id);
    const items = pages.flatMap(({ items: all }) => all);
    for (const { x, y } of items) {
      expect(x).toBeGreaterThan(15);
      expect(x).toBeLessThan(195);
      expect(y).toBeLessThan(292);
    }
    const text = pages.map((page) => page.text).join(' ');
    expect(text).not.toMatch(/[\p{Bidi_Control}\u200B\uFEFF]|\p{Mn}/u);
    const name = items.find((one) => one.text.includes('Brand'))!;
    const title = items.find((one) => one.text.includes(number))!;
    expect(name.x - title.x).toBeGreaterThan(50);
    const tooMany = { complaint: 'e'.padEnd(10_000, '\u0301') };
    expect((await counter.change('PATCH', `/tickets/${id}`, 1, tooMany)).status).toBe(400);
  });

  it('25: are never made into a pattern', () => {
    const found = sources(`RegExp\\(|\\.match(All)?\\((?![/A-Z])|SIMILAR TO| ~[*]? \\$`);
    // Classes of characters of one length each; names of months and figures of the program's own; one escaped character.
    expect(found).toEqual([
      'libs/build-date/compile-scheme.ts 1',
      'libs/papers/reader.ts 3',
      'libs/sheets/damage.ts 2',
      'libs/sheets/readers.ts 1',
    ]);
  });

  it('26: are put into a page as words by every part of it: nothing there is made from markup', () => {
    expect(
      sources('dangerouslySetInnerHTML|(inner|outer)HTML|insertAdjacentHTML|document\\.write|srcdoc|eval\\('),
    ).toEqual([]);
  });

  it('35: that are addresses are asked by nobody: every socket goes to the database', async () => {
    const asked: string[] = [];
    const connect = Object.getOwnPropertyDescriptor(Socket.prototype, 'connect')!;
    const real = connect.value as (this: Socket, ...args: unknown[]) => Socket;
    Socket.prototype.connect = function (this: Socket, ...args: unknown[]) {
      const [first] = (Array.isArray(args[0]) ? args[0] : args) as unknown[];
      const { host, port } = (typeof first === 'object' ? first : { host: args[1], port: first }) as Record<
        string,
        unknown
      >;
      asked.push(`${String(host)}:${String(port)}`);
      return real.apply(this, args);
    };
    const manager = await shop.as('manager');
    const address = 'http://169.254.169.254/latest http://[::ffff:127.0.0.1]/ http://localhost:1/';
    const body = {
      ...{ kind: 'service-bulletin', publisher: address, number: 'SB-35', title: address, summary: address },
      ...{ issued: '2026-10-01', received: '2026-10-20', draft: { opens: [], ends: [] } },
    };
    expect((await manager.ask('POST', '/bulletins', body)).status).toBeLessThan(300);
    await ticketOf(address, address, '17030035');
    // One that is asked would be seen.
    await expect(fetch('http://127.0.0.1:65535/')).rejects.toThrow();
    expect(asked.filter((one) => one.endsWith(':65535'))).toHaveLength(1);
    Object.defineProperty(Socket.prototype, 'connect', connect);
    const allowed = ['65535', new URL(shop.api.url).port, new URL(db.url).port];
    expect(asked.filter((one) => !allowed.includes(one.split(':').at(-1)!))).toEqual([]);
  });
});
