import { createWriteStream } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import iconv from 'iconv-lite';
import type { Encoding } from './encoding';
import { openSheet } from './open-sheet';

let folder: string;
beforeAll(async () => void (folder = await mkdtemp(join(tmpdir(), 'csv-'))));
afterAll(() => rm(folder, { recursive: true }));

/** A file as it is read, all rows at once. */
async function readFile(content: string | Buffer, encoding?: Encoding) {
  const path = join(folder, 'file.csv');
  await writeFile(path, content);
  return readAll(path, encoding);
}

async function readAll(path: string, encoding?: Encoding) {
  const { rows, ...sheet } = await openSheet(path, 'file.csv', encoding);
  const all: (readonly [number, ...unknown[]])[] = [];
  for await (const batch of rows) for (const { n, cells } of batch) all.push([n, ...cells]);
  return { ...sheet, rows: all };
}

describe('a CSV file', () => {
  it.each([
    ['commas', 'Maker,Name\nHOLM,Pin\n', ','],
    ['semicolons, where a comma is for decimals', 'Maker;Price\nHOLM;0,10\n', ';'],
    ['tabs', 'Maker\tName\nHOLM\tPin, short\n', '\t'],
    ['a delimiter inside a quoted heading', '"Maker; by name";Name\nHOLM;Pin\n', ';'],
    ['one column', 'Maker\nHOLM\n', ','],
  ])('with %s is cut at them', async (_, text, delimiter) => {
    const { rows, headings, ...sheet } = await readFile(text);
    expect(sheet.delimiter).toBe(delimiter);
    expect(rows[0]).toHaveLength(headings.length + 1);
  });

  it.each([
    ['a line feed', '\n'],
    ['both', '\r\n'],
    ['a carriage return alone, as old machines wrote', '\r'],
  ])('whose lines end with %s', async (_, end) => {
    expect((await readFile(['Maker,Name', 'HOLM,Pin', '', 'HOLM,Key'].join(end))).rows).toEqual([
      [2, 'HOLM', 'Pin'],
      [4, 'HOLM', 'Key'],
    ]);
  });

  it('keeps line ends, quotes and delimiters that stand inside quotes, and numbers rows as a spreadsheet does', async () => {
    const text = 'Maker,Name\r\nHOLM,"Pin,\r\nleft ""A"""\r\nHOLM,Key\r\n';
    expect((await readFile(text)).rows).toEqual([
      [2, 'HOLM', 'Pin,\nleft "A"'],
      [3, 'HOLM', 'Key'],
    ]);
  });

  it.each<[string, Buffer, string]>([
    ['UTF-8', Buffer.from('\uFEFFMaker,Name\nHOLM,Schäkel\n'), 'utf-8'],
    ['UTF-16, small end first', iconv.encode('Maker,Name\nHOLM,Schäkel\n', 'utf-16le', { addBOM: true }), 'utf-16le'],
    ['UTF-16, large end first', iconv.encode('Maker,Name\nHOLM,Schäkel\n', 'utf-16be', { addBOM: true }), 'utf-16be'],
  ])('takes the mark of %s for what it is, and not into the first heading', async (_, content, encoding) => {
    const sheet = await readFile(content);
    expect(sheet).toMatchObject({ encoding, encodingCertain: true, headings: ['Maker', 'Name'] });
    expect(sheet.rows).toEqual([[2, 'HOLM', 'Schäkel']]);
  });

  it('shows with a mark of its own what cannot be read in the encoding that was chosen', async () => {
    const latin = iconv.encode('Maker,Name\nHOLM,Schäkel\n', 'windows-1252');
    expect((await readFile(latin, 'utf-8')).rows).toEqual([[2, 'HOLM', 'Sch\uFFFDkel']]);
    expect((await readFile(latin, 'windows-1252')).rows).toEqual([[2, 'HOLM', 'Schäkel']]);
  });

  it('is never certain of an encoding that it only guesses', async () => {
    const latin = iconv.encode(`Maker,Name\n${'HOLM,Schäkel für große Bäume\n'.repeat(30)}`, 'windows-1252');
    expect((await readFile(latin)).encodingCertain).toBe(false);
  });

  it('of as many rows as a spreadsheet has is read to its end, and of one more is refused', async () => {
    const path = join(folder, 'many.csv');
    const write = (rows: number) =>
      pipeline(
        Readable.from(
          (function* () {
            yield 'Maker\n';
            for (let at = 1; at < rows; at += 1_000) yield 'H\n'.repeat(Math.min(1_000, rows - at));
          })(),
        ),
        createWriteStream(path),
      );
    await write(1_048_576);
    let last = 0;
    for await (const batch of (await openSheet(path, 'many.csv')).rows) last = batch.at(-1)!.n;
    expect(last).toBe(1_048_576);
    await write(1_048_577);
    await expect(readAll(path)).rejects.toMatchObject({
      message: 'The file has more than 1048576 rows; split it.',
      tooLarge: true,
    });
  }, 120_000);
});
