import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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
async function rowsOf(rows: readonly (readonly object[])[], name: string): Promise<(readonly Cell[])[]> {
  const path = join(folder, name);
  await writeFile(path, await write(rows).toBuffer());
  const read: (readonly Cell[])[] = [];
  for await (const batch of (await openSheet(path, name)).rows) read.push(...batch.map(({ cells }) => cells));
  return read;
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
