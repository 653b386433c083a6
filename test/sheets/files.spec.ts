import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import iconv from 'iconv-lite';
import { LARGEST_FILE } from '../../apps/api/src/sheets/take-file';
import type { Problem, SheetView } from '../../libs/contracts';
import { writeWorkbook } from '../../libs/sheet-files';
import { withDatabase } from '../../libs/testing';
import { ApiShop } from '../api/api-shop';
import { said, SheetDesk } from './sheet-desk';

const db = withDatabase();
let shop: ApiShop;
let desk: SheetDesk;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  desk = new SheetDesk(shop.api.url, await shop.as('manager'));
}, 300_000);

const HEAD = 'Maker,Part number,Name';
const plain = (name: string) => `${HEAD}\r\nHOLM,90-1,${name}\r\n`;
const partsOnFile = async () => (await db.pool.query<{ n: number }>('SELECT count(*)::int AS n FROM part')).rows[0]!.n;
const sheetsKept = async () =>
  (await db.pool.query<{ n: number }>('SELECT count(*)::int AS n FROM sheet_row')).rows[0]!.n;

/** An archive of one entry, whose head says what it is told to. */
function archive(name: string, content: Buffer, saysUnpacked = content.length): Buffer {
  const [packed, bytes] = [deflateRawSync(content), Buffer.from(name)];
  const head = (length: number) => Buffer.alloc(length);
  const local = head(30);
  local.writeUInt32LE(0x04034b50, 0);
  local.writeUInt16LE(8, 8);
  local.writeUInt32LE(packed.length, 18);
  local.writeUInt32LE(saysUnpacked, 22);
  local.writeUInt16LE(bytes.length, 26);
  const entry = head(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(8, 10);
  entry.writeUInt32LE(packed.length, 20);
  entry.writeUInt32LE(saysUnpacked, 24);
  entry.writeUInt16LE(bytes.length, 28);
  const end = head(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(1, 10);
  end.writeUInt32LE(46 + bytes.length, 12);
  end.writeUInt32LE(30 + bytes.length + packed.length, 16);
  return Buffer.concat([local, bytes, packed, entry, bytes, end]);
}

describe('a file is read as it was written', () => {
  it.each([
    ['UTF-8', Buffer.from(plain('Schäkel, groß — ñ')), 'utf-8', true],
    ['UTF-8 with a mark', Buffer.from(`\uFEFF${plain('Schäkel ñ')}`), 'utf-8', true],
    ['UTF-16', iconv.encode(plain('Schäkel ñ'), 'utf-16le', { addBOM: true }), 'utf-16le', true],
    ['UTF-16 the other way', iconv.encode(plain('Schäkel ñ'), 'utf-16be', { addBOM: true }), 'utf-16be', true],
  ])('%s', async (_, content, encoding, certain) => {
    const { body } = await desk.bring('parts', content);
    expect(body).toMatchObject({ encoding, encodingCertain: certain, headings: ['Maker', 'Part number', 'Name'] });
    expect(body.sample[0]![2]).toContain('Schäkel');
  });

  it('as an older encoding, which is a guess that a person can change', async () => {
    const content = iconv.encode(`${HEAD}\n${'HOLM,90-1,Kettensäge für große Bäume\n'.repeat(20)}`, 'windows-1252');
    const { body } = await desk.bring('parts', content);
    expect(body.encodingCertain).toBe(false);
    const chosen = await desk.bring('parts', content, 'a.csv', '&encoding=windows-1252');
    expect(chosen.body).toMatchObject({ encoding: 'windows-1252', encodingCertain: true });
    expect(chosen.body.sample[0]![2]).toBe('Kettensäge für große Bäume');
  });

  it('as a workbook, in which formulas and quantities are what they are', async () => {
    const book = await writeWorkbook('Parts', ['Maker', 'Part number', 'Name'], [['HOLM', '00123', 'Bolt']]);
    const { body } = await desk.bring('parts', book, 'our parts.XLSX');
    expect(body).toMatchObject({ format: 'xlsx', sample: [['HOLM', '00123', 'Bolt']] });
  });
});

describe('what a workbook has done to its cells', () => {
  it('is named by row and column, and nothing goes in', async () => {
    const cell = (place: string, text: string) => `<c r="${place}" t="inlineStr"><is><t>${text}</t></is></c>`;
    const row = (n: number, ...cells: readonly string[]) => `<row r="${n}">${cells.join('')}</row>`;
    const sheet = [
      row(1, cell('A1', 'Maker'), cell('B1', 'Part number'), cell('C1', 'Name')),
      row(2, cell('A2', 'HOLM'), '<c r="B2"><f>"96-"&amp;1</f><v>96</v></c>', cell('C2', 'by a formula')),
      row(3, cell('A3', 'HOLM'), cell('B3', '96-2'), cell('C3', 'over two rows')),
      row(4, cell('A4', 'HOLM'), cell('B4', '96-3')),
      row(5, cell('A5', 'HOLM'), '<c r="B5"><v>1.23E+17</v></c>', cell('C5', 'digits lost')),
      row(6, cell('A6', 'HOLM'), '<c r="B6" s="1"><v>43831</v></c>', cell('C6', 'a day')),
      row(7, cell('A7', 'HOLM'), '<c r="B7" t="e"><v>#REF!</v></c>', cell('C7', 'a fault')),
      row(8, cell('A8', 'HOLM'), cell('B8', '0096'), cell('C8', 'whole')),
    ];
    const files = unzipSync(await writeWorkbook('Parts', ['Maker'], []));
    const name = Object.keys(files).find((one) => one.startsWith('xl/worksheets/'))!;
    const merged = '<mergeCells count="1"><mergeCell ref="C3:C4"/></mergeCells>';
    files[name] = strToU8(`<worksheet><sheetData>${sheet.join('')}</sheetData>${merged}</worksheet>`);
    files['xl/styles.xml'] = strToU8(
      '<styleSheet><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>',
    );
    const before = await partsOnFile();
    const looked = await desk.look('parts', Buffer.from(zipSync(files)), { name: 'parts.xlsx' });
    expect(said(looked)).toEqual([
      '2 Part number formula',
      '4 Name merged',
      '5 Part number digits-lost',
      '6 Part number became-a-day',
      '7 Part number sheet-fault',
    ]);
    expect((await desk.import(looked)).status).toBe(409);
    expect(await partsOnFile()).toBe(before);
  });
});

describe('what is no spreadsheet, or means harm, is refused in one sentence and leaves nothing', () => {
  const big = Buffer.alloc(64 * 1024 * 1024);
  it.each<[string, string | Buffer, string, number]>([
    ['33: a program by another name', Buffer.from('7f454c460201010000', 'hex'), 'parts.csv', 400],
    ['33: a picture', Buffer.from('89504e470d0a1a0a0000', 'hex'), 'parts.csv', 400],
    ['33: an old workbook', Buffer.from('d0cf11e0a1b11ae10000', 'hex'), 'parts.xls', 400],
    ['33: an archive that is no workbook', archive('a.txt', Buffer.from('a')), 'parts.xlsx', 400],
    ['33: a workbook named as text', archive('xl/workbook.xml', Buffer.from('a')), 'parts.csv', 400],
    ['33: text named as a workbook', plain('x'), 'parts.csv.xlsx', 400],
    ['33: an archive that unpacks too far', archive('xl/worksheets/sheet1.xml', big, 1_200_000_000), 'parts.xlsx', 413],
    ['33: one that lies about how far', archive('xl/workbook.xml', big, 10), 'parts.xlsx', 413],
    ['33: a page named so', plain('x'), 'parts.html', 400],
    ['30: a quote that never closes', `${HEAD}\nHOLM,90-1,"open\n${'HOLM,90-2,x\n'.repeat(50)}`, 'parts.csv', 400],
    ['30: a quote inside a quoted cell', `${HEAD}\nHOLM,90-1,"a"b"\n`, 'parts.csv', 400],
    ['30: zeros among the letters', `${HEAD}\nHOLM,90\0-1,x\n`, 'parts.csv', 400],
    ['nothing at all', '', 'parts.csv', 400],
    ['a heading alone', `${HEAD}\n`, 'parts.csv', 400],
    ['a heading that says one thing twice', 'Maker,maker\nA,B\n', 'parts.csv', 400],
  ])(
    '%s',
    async (_, content, name, status) => {
      const before = await sheetsKept();
      const answer = await desk.bring<Problem>('parts', content, name);
      expect([answer.status, answer.body.field]).toEqual([status, 'file']);
      expect(answer.body.detail).toMatch(/\.$/);
      expect(await sheetsKept()).toBe(before);
    },
    60_000,
  );

  it('30: a cell of ten million characters is named by row and column, or the file refused', async () => {
    const answer = await desk.bring<SheetView & Problem>('parts', `${HEAD}\nHOLM,90-1,"${'x'.repeat(10_000_000)}"\n`);
    expect(answer.status).toBe(400);
    expect(said(await desk.look('parts', `${HEAD}\nHOLM,90-1,${'x'.repeat(40_000)}\n`))).toEqual(['2 Name too-long']);
  }, 60_000);

  /** A form as no browser writes it: its part says what the file is called. */
  const named = (disposition: string) =>
    fetch(`${shop.api.url}/api/sheets?kind=parts`, {
      method: 'POST',
      headers: { cookie: desk.caller.cookie, 'content-type': 'multipart/form-data; boundary=x' },
      body: `--x\r\ncontent-disposition: form-data; name="file"; ${disposition}\r\n\r\n${plain('x')}\r\n--x--\r\n`,
    });

  it('31, 33: a file name is a name and never a path or a header', async () => {
    const { body } = await desk.bring('parts', plain('x'), '../../etc/pass\u202ewd.csv');
    expect(body.fileName).toBe('passwd.csv');
    for (const disposition of [
      `filename*=UTF-8''parts%0d%0aSet-Cookie:%20revright=x.csv`,
      `filename="parts\rSet-Cookie: revright=x.csv"`,
      `filename="..%2f..%2fparts%0d%0aSet-Cookie: revright=x.csv"`,
    ]) {
      const answer = await named(disposition);
      const told = (await answer.json()) as Partial<SheetView>;
      expect([disposition, answer.headers.get('set-cookie')]).toEqual([disposition, null]);
      // Broken in two it is no form; else it is one line, whatever it says.
      if (answer.status !== 400)
        expect([answer.status, told.fileName]).toEqual([201, expect.stringMatching(/^[^\p{Cc}/\\]+\.csv$/u)]);
    }
    const { rows } = await db.pool.query<{ n: number }>(
      `SELECT count(*)::int AS n FROM sheet WHERE file_name ~ '[[:cntrl:]/]'`,
    );
    expect(rows[0]!.n).toBe(0);
  });

  it('33: a file may be as large as is said, and not a byte larger', async () => {
    const before = await sheetsKept();
    const head = `--x\r\ncontent-disposition: form-data; name="file"; filename="a.csv"\r\n\r\n`;
    const end = '\r\n--x--\r\n';
    const send = (bytes: number) =>
      fetch(`${shop.api.url}/api/sheets?kind=parts`, {
        method: 'POST',
        headers: { cookie: desk.caller.cookie, 'content-type': 'multipart/form-data; boundary=x' },
        body: Buffer.concat([Buffer.from(head), Buffer.alloc(bytes), Buffer.from(end)]),
      });
    // What is let in is looked at, and holds zeros among its letters.
    for (const [bytes, status] of [
      [LARGEST_FILE, 400],
      [LARGEST_FILE + 1, 413],
    ] as const)
      expect([bytes, (await send(bytes)).status]).toEqual([bytes, status]);
    expect(await sheetsKept()).toBe(before);
  }, 120_000);

  it('without a file, with a strange kind, or for who may not', async () => {
    expect((await desk.caller.ask('POST', '/sheets?kind=parts', {})).status).toBe(400);
    expect((await desk.bring('spoons' as 'parts', plain('x'))).status).toBe(400);
    const technician = await shop.as('technician');
    const upload = await technician.upload('/sheets?kind=parts', { name: 'a.csv', text: plain('x') });
    expect(upload.status).toBe(403);
    expect((await technician.get('/sheets/exports/owners')).status).toBe(403);
    expect((await technician.get('/rulebook-file')).status).toBe(403);
  });

  it('and nobody sees or imports what another brought', async () => {
    const { id, version } = await desk.look('parts', plain('x'));
    const other = await shop.as('administrator');
    expect((await other.get(`/sheets/${id}`)).status).toBe(404);
    expect((await other.change('POST', `/sheets/${id}/import`, version, {})).status).toBe(404);
  });
});

describe('29: what a spreadsheet would run', () => {
  it('is marked in an export, and read back as it was', async () => {
    const names = ['=1+1', '+49 1', '-5', '@SUM(A1)', "'quoted", "'=x", 'plain'];
    const rows = names.map(
      (name, n) => `HOLM,95-${n},"${name.startsWith("'=") ? `'${name}` : /^[=+\-@]/.test(name) ? `'${name}` : name}"`,
    );
    await desk.take('parts', `${HEAD}\n${rows.join('\n')}\n`);
    const kept = await db.pool.query<{ name: string }>(`SELECT name FROM part WHERE canonical LIKE '95_' ORDER BY key`);
    expect(kept.rows.map(({ name }) => name)).toEqual(names);
    const text = (await desk.export('parts')).toString();
    expect(text).not.toMatch(/(^|,)"?[=+\-@]/m);
    const again = await desk.look('parts', text);
    expect(again.outcome).toMatchObject({ add: 0, change: 0, rejected: 0 });
  });
});

describe('any file at all', () => {
  it('goes in whole or not at all, and every rejected row says why', async () => {
    const cell = fc.oneof(
      fc.constantFrom(
        'HOLM',
        'NOBODY',
        '',
        '1.23E+11',
        '0012',
        '12',
        '=1',
        '43831',
        '"',
        '\uFFFD',
        'Ã¤',
        '#REF!',
        '12-Mar',
        '1,5',
      ),
      fc.string({ maxLength: 12 }),
    );
    const quoted = (text: string) => `"${text.replaceAll('"', '""').replaceAll('\0', '')}"`;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.constantFrom('HOLM', 'HOLM', 'X'), cell, cell), { minLength: 1, maxLength: 12 }),
        async (rows) => {
          const file = `${HEAD}\n${rows.map((row) => row.map(quoted).join(',')).join('\n')}\n`;
          const looked = await desk.look('parts', file);
          const { add, change, same, rejected } = looked.outcome!;
          expect(add + change + same + rejected).toBe(looked.rows);
          expect(looked.rejected).toHaveLength(rejected);
          for (const { problems } of looked.rejected)
            expect(problems.map(({ says }) => says.length > 10)).not.toContain(false);
          const before = await partsOnFile();
          const refused = rejected > 0 ? await desk.import<Problem>(looked) : null;
          if (refused) expect([refused.status, await partsOnFile()]).toEqual([409, before]);
          if (add + change === 0) return;
          expect((await desk.import(looked, true)).status).toBe(200);
          expect(await partsOnFile()).toBe(before + add);
          expect((await desk.look('parts', file)).outcome).toMatchObject({
            add: 0,
            change: 0,
            same: add + change + same,
          });
        },
      ),
      { numRuns: 12 },
    );
  }, 120_000);
});

describe('43: exports', () => {
  it('are a hundred a minute for each person, and then refused with how long to wait', async () => {
    const administrator = await shop.as('administrator');
    const statuses = [];
    for (let n = 0; n < 101; n++) statuses.push((await administrator.get('/sheets/exports/makers')).status);
    expect(statuses.filter((status) => status === 200)).toHaveLength(100);
    expect(statuses[100]).toBe(429);
    expect((await desk.caller.get('/sheets/exports/makers')).status).toBe(200);
  }, 60_000);
});
