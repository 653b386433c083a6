import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { ENCODINGS } from './encoding';
import { openSheet } from './open-sheet';
import { SheetRefused } from './refusal';
import { writeWorkbook } from './write-workbook';

let folder: string;
beforeAll(async () => void (folder = await mkdtemp(join(tmpdir(), 'damaged-'))));
afterAll(() => rm(folder, { recursive: true }));

/** Reads a file to its end: how many rows it has, or the sentence it is refused with. Any other failure is thrown. */
async function read(
  content: Uint8Array,
  name: string,
  encoding?: (typeof ENCODINGS)[number],
): Promise<number | string> {
  const path = join(folder, name);
  await writeFile(path, content);
  try {
    const sheet = await openSheet(path, name, encoding);
    let [count, before] = [0, 0];
    for await (const batch of sheet.rows)
      for (const { n, cells } of batch) {
        expect(n).toBeGreaterThan(before);
        expect(cells.some((cell) => typeof cell === 'string' && cell.includes('\0'))).toBe(false);
        [count, before] = [count + 1, n];
      }
    return count;
  } catch (error) {
    if (!(error instanceof SheetRefused)) throw error;
    return error.message;
  }
}

/** What a refusal says to a person. */
const isSentence = (said: number | string) => typeof said === 'number' || /^[A-Z][^\n]{10,300}\.$/.test(said);

/** A change of one byte, a piece cut out, a piece doubled, the end cut off. */
const damage = fc.oneof(
  fc.record({ how: fc.constant('change' as const), at: fc.nat(), to: fc.nat(255) }),
  fc.record({
    how: fc.constantFrom('cut' as const, 'double' as const),
    at: fc.nat(),
    to: fc.integer({ min: 1, max: 400 }),
  }),
  fc.record({ how: fc.constant('end' as const), at: fc.nat(), to: fc.constant(0) }),
);

function damaged(whole: Uint8Array, all: readonly { how: string; at: number; to: number }[]): Uint8Array {
  return all.reduce<Uint8Array>((bytes, { how, at: somewhere, to }) => {
    if (bytes.length === 0) return bytes;
    const at = somewhere % bytes.length;
    if (how === 'change') return Buffer.concat([bytes.subarray(0, at), Buffer.from([to]), bytes.subarray(at + 1)]);
    if (how === 'end') return bytes.subarray(0, at);
    const piece = bytes.subarray(at, at + to);
    const rest = bytes.subarray(at + to);
    return Buffer.concat(how === 'cut' ? [bytes.subarray(0, at), rest] : [bytes.subarray(0, at), piece, piece, rest]);
  }, whole);
}

describe('whatever bytes a file holds', () => {
  it('it is read, or refused in one sentence', () =>
    fc.assert(
      fc.asyncProperty(
        fc.uint8Array({ maxLength: 400 }),
        fc.constantFrom('a.csv', 'a.xlsx', 'a.txt', 'a'),
        fc.option(fc.constantFrom(...ENCODINGS), { nil: undefined }),
        async (bytes, name, encoding) => expect(isSentence(await read(bytes, name, encoding))).toBe(true),
      ),
      { numRuns: 300 },
    ));

  it('a table in any encoding, damaged anywhere, is read or refused in one sentence', () => {
    const table = Buffer.from(
      'Maker;"Part; No";Name\r\nHOLM;"70-""4";Schäkel\r\nHOLM;0012;"über\r\nzwei"\r\n'.repeat(4),
    );
    return fc.assert(
      fc.asyncProperty(
        fc.array(damage, { minLength: 1, maxLength: 4 }),
        fc.option(fc.constantFrom(...ENCODINGS), { nil: undefined }),
        async (all, encoding) => expect(isSentence(await read(damaged(table, all), 'a.csv', encoding))).toBe(true),
      ),
      { numRuns: 300 },
    );
  });

  it('a workbook damaged anywhere is read or refused in one sentence', async () => {
    const rows = Array.from({ length: 40 }, (_, n) => ['HOLM', `70-${n}`, `Part ${n}`]);
    const workbook = await writeWorkbook('Parts', ['Maker', 'Part number', 'Name'], rows);
    expect(await read(workbook, 'a.xlsx')).toBe(40);
    await fc.assert(
      fc.asyncProperty(fc.array(damage, { minLength: 1, maxLength: 4 }), async (all) =>
        expect(isSentence(await read(damaged(workbook, all), 'a.xlsx'))).toBe(true),
      ),
      { numRuns: 300 },
    );
  }, 60_000);
});
