import fc from 'fast-check';
import { Refusal } from '../refusal';
import { openTable, type BadRow, type TableRow } from './read-table';
import { csvHeading, csvText } from './write-rows';

async function* inPieces(bytes: Uint8Array, sizes: readonly number[]): AsyncGenerator<Uint8Array> {
  for (let at = 0, i = 0; at < bytes.length; i++) {
    const size = sizes[i % sizes.length] ?? bytes.length;
    await Promise.resolve();
    yield bytes.subarray(at, at + size);
    at += size;
  }
}

async function read(text: string | Uint8Array, sizes: readonly number[] = [1_000_000]) {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const table = await openTable({ name: 'file.csv', size: null, bytes: inPieces(bytes, sizes) }, () => {});
  const rows: (TableRow | BadRow)[] = [];
  for await (const batch of table.rows) rows.push(...batch);
  return { ...table, rows };
}

const valuesOf = async (text: string | Uint8Array) =>
  (await read(text)).rows.map((row) => 'values' in row && row.values);
const refusal = async (text: string | Uint8Array): Promise<string> => {
  try {
    await read(text);
    return 'nothing was refused';
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
};
const bytesOf = (...codes: number[]) => Uint8Array.from(codes);

describe('reading a table', () => {
  it('reads a byte order mark, semicolons, tabs and any line end', async () => {
    const expected = [{ line: 'A', part: '1,5' }];
    expect(await valuesOf('\uFEFFline;part\r\nA;1,5\r\n')).toEqual(expected);
    expect(await valuesOf('line\tpart\rA\t1,5\r')).toEqual(expected);
    expect(await valuesOf('line,part\n\n  \nA,"1,5"')).toEqual(expected);
  });

  it('takes columns in any case, with blanks, dashes and capitals inside', async () => {
    expect(await valuesOf('Fitted on,BUILT-FROM,could_have_known\n1,2,3\n')).toEqual([
      { fitted_on: '1', built_from: '2', could_have_known: '3' },
    ]);
    expect(await valuesOf('{"fittedOn":1}\n')).toEqual([{ fitted_on: 1 }]);
  });

  it('keeps part numbers as the text they are', async () => {
    expect(await valuesOf('part\n007\n1E5\n30-1120\n1.50\n')).toEqual(
      ['007', '1E5', '30-1120', '1.50'].map((part) => ({ part })),
    );
  });

  it('counts lines over quoted line ends and blank lines, so that a message names the right one', async () => {
    const { rows } = await read('a,b\n"one\ntwo",1\n\nx,2\n"3"\n');
    expect(rows).toEqual([
      { line: 2, values: { a: 'one\ntwo', b: '1' } },
      { line: 5, values: { a: 'x', b: '2' } },
      { line: 6, problem: 'the row has 1 cells, and the heading has 2 columns.' },
    ]);
  });

  it('gives back every table it wrote, on the right lines, however the bytes are cut', async () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom('=1+1', '-5', '+x', '@y', "'=z", '"', 'a"b', 'é', '\u{1F529}', 'a\nb', ';', ','),
    );
    const plain = cell
      .map((text) => text.replace(/\r\n?/g, '\n').replaceAll('\0', ''))
      .filter((text) => !/^'[=+\-@\t]/.test(text));
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(plain, plain), { minLength: 1, maxLength: 12 }),
        fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 5 }),
        fc.constantFrom(',', ';', '\t'),
        async (cells, sizes, delimiter) => {
          const written = cells.map(([a, b]) => ({ a: `x${a}`, b }));
          const text = csvHeading(['a', 'b'], delimiter) + csvText(['a', 'b'], written, delimiter);
          const { rows } = await read(text, sizes);
          let line = 2;
          expect(rows).toEqual(
            written.map((values) => {
              const row = { line, values };
              line += 1 + `${values.a}${values.b}`.split('\n').length - 1;
              return row;
            }),
          );
        },
      ),
      { numRuns: 300 },
    );
  });

  it('reads the same JSON lines however the bytes are cut, and names a line that is none', async () => {
    const text = '{"a":"é"}\n\n[1]\n{"b":\n{"c":3}';
    const whole = (await read(text)).rows;
    expect(whole.map(({ line }) => line)).toEqual([1, 3, 4, 5]);
    expect(whole.filter((row) => 'problem' in row)).toHaveLength(2);
    for (const size of [1, 2, 3, 5]) expect((await read(text, [size])).rows).toEqual(whole);
  });
});

describe('a table that cannot be read', () => {
  it.each([
    ['nothing at all', '', 'file.csv is empty'],
    ['an unclosed quote', 'a,b\n1,2\n"3,4\n5,6\n', 'file.csv:3: a quote is opened here and never closed.'],
    ['a stray quote', 'a,b\n"1"x,2\n', 'file.csv:2: a quote stands inside a quoted cell'],
    ['a column that stands twice', 'part,Part\n1,2\n', 'file.csv:1: column "part" stands in the heading twice.'],
    ['a JSON list', '[{"a":1}]', 'file.csv is a JSON list; give one object per line'],
    ['a workbook', bytesOf(0x50, 0x4b, 3, 4), 'file.csv is a spreadsheet workbook'],
    ['UTF-16', bytesOf(0xff, 0xfe, 0x61, 0), 'file.csv is UTF-16 text'],
    ['UTF-16 without its mark', bytesOf(0x61, 0, 0x62, 0), 'file.csv is not plain text'],
    [
      'Latin-1',
      bytesOf(0x61, 0x0a, 0x62, 0x0a, 0xe9, 0x0a),
      'file.csv:3: this is not UTF-8 text; save it as "CSV UTF-8"',
    ],
    ['a character that is cut off', bytesOf(0x61, 0x0a, 0xc3), 'file.csv:2: this is not UTF-8 text'],
  ])('is refused in one sentence: %s', async (_what, text, expected) => {
    expect(await refusal(text)).toContain(expected);
  });

  it('does not take in a whole file when a quote is never closed', async () => {
    let given = 0;
    async function* endless(): AsyncGenerator<Uint8Array> {
      yield new TextEncoder().encode('a\n"');
      for (;;) {
        await Promise.resolve();
        given++;
        yield new Uint8Array(100_000).fill(0x61);
      }
    }
    const table = await openTable({ name: 'file.csv', size: null, bytes: endless() }, () => {});
    await expect(async () => {
      for await (const _batch of table.rows);
    }).rejects.toThrow('file.csv:2: a quote is opened here and never closed.');
    expect(given).toBeLessThan(15);
  });
});
