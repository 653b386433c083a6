import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import writeXlsxFile from 'write-excel-file/node';
import type { Cell } from '../sheets';
import { openSheet } from './open-sheet';

let folder: string;
beforeAll(async () => void (folder = await mkdtemp(join(tmpdir(), 'sheets-'))));
afterAll(() => rm(folder, { recursive: true }));

/** What is used of it, where its own types know a workbook of several sheets too. */
const write = writeXlsxFile as unknown as (rows: readonly (readonly object[])[]) => { toBuffer(): Promise<Buffer> };
const NOTHING = { value: null };

/** Rows of a workbook that the library of another author has written, without the heading. */
const rowsOf = async (rows: readonly (readonly object[])[], name: string) => rowsIn(await write(rows).toBuffer(), name);

async function rowsIn(workbook: Uint8Array, name: string): Promise<(readonly Cell[])[]> {
  const path = join(folder, name);
  await writeFile(path, workbook);
  const read: (readonly Cell[])[] = [];
  for await (const batch of (await openSheet(path, name)).rows) read.push(...batch.map(({ cells }) => cells));
  return read;
}

const DAY_STYLE = '<styleSheet><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>';

/** A workbook of the library whose sheet is another. */
async function withSheet(rows: string, behind = '', styles?: string): Promise<Uint8Array> {
  const files = unzipSync(await write([[{ value: 'x' }]]).toBuffer());
  const [name] = Object.keys(files).filter((one) => one.startsWith('xl/worksheets/'));
  files[name!] = strToU8(`<worksheet><sheetData>${rows}</sheetData>${behind}</worksheet>`);
  if (styles !== undefined) files['xl/styles.xml'] = strToU8(styles);
  return zipSync(files);
}

describe('a workbook', () => {
  it('says what is a day, a number, a text and a yes', async () => {
    const day = (text: string) => ({ value: new Date(text), type: Date, format: 'yyyy-mm-dd' });
    const rows = await rowsOf(
      [
        [{ value: 'Fitted on' }, { value: 'Pieces' }, { value: 'Number' }, { value: 'Kept' }],
        [day('2024-02-29T00:00:00Z'), { value: 14, type: Number }, { value: '00123' }, { value: true, type: Boolean }],
        [day('1999-12-31T00:00:00Z'), { value: 0.5, type: Number }, { value: 'a & b <c>' }, NOTHING],
      ],
      'kinds.xlsx',
    );
    expect(rows).toEqual([
      [{ date: '2024-02-29' }, 14, '00123', true],
      [{ date: '1999-12-31' }, 0.5, 'a & b <c>'],
    ]);
  });

  it('counts its days from 1904 where it says so', async () => {
    const written = await write([
      [{ value: 'Fitted on' }],
      [{ value: new Date('2024-02-29T00:00:00Z'), type: Date, format: 'yyyy-mm-dd' }],
    ]).toBuffer();
    const files = unzipSync(written);
    const workbook = strFromU8(files['xl/workbook.xml']!);
    const said = workbook.replace('<workbookPr', '<workbookPr date1904="1"');
    expect(said).not.toBe(workbook);
    files['xl/workbook.xml'] = strToU8(said);
    // The number of a day is 1,462 less when counted from 1904 (ECMA-376 part 1, 18.17.4.1, from memory).
    expect(await rowsIn(zipSync(files), 'from-1904.xlsx')).toEqual([[{ date: '2028-03-01' }]]);
  });

  it('may do without a list of texts and without styles, as what programs write by the stream often does', async () => {
    const files = unzipSync(
      await withSheet('<row><c t="inlineStr"><is><t>Number</t></is></c></row><row><c><v>7</v></c></row>'),
    );
    const bare = Object.entries(files).filter(([name]) => !/sharedStrings|styles/.test(name));
    expect(bare.length).toBeLessThan(Object.keys(files).length - 1);
    expect(await rowsIn(zipSync(Object.fromEntries(bare)), 'bare.xlsx')).toEqual([[7]]);
  });

  it('says which cells hold a formula, whatever stands there as its answer, and which lie under a merged one', async () => {
    const rows = await rowsIn(
      await withSheet(
        `<row r="1"><c r="A1" t="inlineStr"><is><t>Number</t></is></c><c r="B1" t="inlineStr"><is><t>Name</t></is></c></row>
         <row r="2"><c r="A2"><f>B2&amp;"-1"</f><v>7</v></c><c r="B2" t="inlineStr"><is><t>Pin</t></is></c></row>
         <row r="3"><c r="A3" t="str"><v>Key</v></c></row>
         <row r="4"><c r="A4" t="e"><v>#REF!</v></c><c r="B4" t="s"><v>99</v></c></row>`,
        '<mergeCells count="1"><mergeCell ref="B2:B3"/></mergeCells>',
      ),
      'formulas.xlsx',
    );
    expect(rows).toEqual([
      [{ formula: '=B2&"-1"' }, 'Pin'],
      ['Key', { merged: 'B2:B3' }],
      [{ fault: '#REF!' }, { fault: 'a text that is not in the workbook' }],
    ]);
  });

  it('counts the 29 February 1900 that never was, as spreadsheets do', async () => {
    // ECMA-376 part 1, 18.17.4.1: 1 is 1 January 1900, 60 the day that never was, 61 is 1 March 1900.
    const cells = [1, 59, 61, 43_831].map(
      (day, at) => `<row r="${at + 2}"><c r="A${at + 2}" s="1"><v>${day}</v></c></row>`,
    );
    const rows = await rowsIn(
      await withSheet(`<row r="1"><c r="A1" t="str"><v>Fitted on</v></c></row>${cells.join('')}`, '', DAY_STYLE),
      'from-1900.xlsx',
    );
    expect(rows).toEqual([
      [{ date: '1900-01-01' }],
      [{ date: '1900-02-28' }],
      [{ date: '1900-03-01' }],
      [{ date: '2020-01-01' }],
    ]);
  });

  it('of very many rows is read to its end', async () => {
    const many = 20_000;
    const row = (n: number) => Array.from({ length: 10 }, (_, at) => ({ value: `${n} ${at}` }));
    const rows = await rowsOf(
      Array.from({ length: many + 1 }, (_, n) => row(n)),
      'many.xlsx',
    );
    expect(rows).toHaveLength(many);
    expect(rows.at(-1)![9]).toBe(`${many} 9`);
  }, 120_000);
});
