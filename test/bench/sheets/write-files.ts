import { createWriteStream } from 'node:fs';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createDeflateRaw } from 'node:zlib';
import { kindOf, type SheetKind } from '../../../libs/sheets';
import { ROWS } from './rows-of-kinds';

/** What is written of a kind: so many rows under their usual headings. */
export interface FileOf {
  readonly kind: SheetKind;
  readonly rows: number;
}

const AT_ONCE = 2_000;

/** Writes a CSV file piece by piece. */
export async function writeCsv(path: string, { kind, rows }: FileOf): Promise<void> {
  const quoted = (cells: readonly string[]) => `${cells.join(',')}\r\n`;
  await pipeline(Readable.from(pieces(kind, rows, quoted)), createWriteStream(path));
}

/** Writes a workbook as a spreadsheet does: every text once, cells that name it by its number. */
export async function writeXlsx(path: string, { kind, rows }: FileOf): Promise<void> {
  const numbers = new Map<string, number>();
  const named = (text: string) => {
    const known = numbers.get(text);
    if (known !== undefined) return known;
    numbers.set(text, numbers.size);
    return numbers.size - 1;
  };
  let n = 0;
  const row = (cells: readonly string[]) => {
    n++;
    return `<row r="${n}">${cells.map((text, at) => `<c r="${letters(at)}${n}" t="s"><v>${named(text)}</v></c>`).join('')}</row>`;
  };
  const sheet = await packed(between('<worksheet><sheetData>', pieces(kind, rows, row), '</sheetData></worksheet>'));
  const texts = await packed(between('<sst>', textPieces(numbers), '</sst>'));
  const entries = [
    ['xl/workbook.xml', await packed([WORKBOOK])],
    ['xl/_rels/workbook.xml.rels', await packed([RELATIONS])],
    ['xl/sharedStrings.xml', texts],
    ['xl/worksheets/sheet1.xml', sheet],
  ] as const;
  await pipeline(Readable.from(archive(entries)), createWriteStream(path));
}

const RELATION = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const WORKBOOK = '<workbook><sheets><sheet name="Sheet" sheetId="1" r:id="rId1"/></sheets></workbook>';
const RELATIONS = `<Relationships>
  <Relationship Id="rId1" Type="${RELATION}/worksheet" Target="worksheets/sheet1.xml"/>
  <Relationship Id="rId2" Type="${RELATION}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`;

function* pieces(kind: SheetKind, rows: number, write: (cells: readonly string[]) => string): Generator<string> {
  const fields = Object.keys(ROWS[kind](0));
  yield write(fields.map((field) => kindOf(kind).columns[field]!.heading));
  for (let from = 0; from < rows; from += AT_ONCE) {
    let text = '';
    for (let n = from; n < Math.min(from + AT_ONCE, rows); n++) {
      const row = ROWS[kind](n);
      text += write(fields.map((field) => row[field]!));
    }
    yield text;
  }
}

function* textPieces(numbers: ReadonlyMap<string, number>): Generator<string> {
  for (const text of numbers.keys()) yield `<si><t>${text}</t></si>`;
}

function* between(before: string, middle: Iterable<string>, after: string): Generator<string> {
  yield before;
  yield* middle;
  yield after;
}

const letters = (at: number): string => String.fromCharCode(65 + at);

interface Packed {
  readonly bytes: Buffer;
  readonly unpacked: number;
}

async function packed(text: Iterable<string>): Promise<Packed> {
  let unpacked = 0;
  const deflate = Readable.from(
    (function* () {
      for (const piece of text) {
        unpacked += Buffer.byteLength(piece);
        yield piece;
      }
    })(),
  ).pipe(createDeflateRaw({ level: 1 }));
  const all: Buffer[] = [];
  for await (const piece of deflate) all.push(piece as Buffer);
  return { bytes: Buffer.concat(all), unpacked };
}

/** A ZIP archive by its published form (APPNOTE 4.3), without checksums: nobody here reads them. */
function* archive(entries: readonly (readonly [name: string, Packed])[]): Generator<Buffer> {
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, { bytes, unpacked }] of entries) {
    const head = Buffer.alloc(30);
    head.writeUInt32LE(0x04034b50, 0);
    head.writeUInt16LE(8, 8);
    head.writeUInt32LE(bytes.length, 18);
    head.writeUInt32LE(unpacked, 22);
    head.writeUInt16LE(name.length, 26);
    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(0x02014b50, 0);
    entry.writeUInt16LE(8, 10);
    entry.writeUInt32LE(bytes.length, 20);
    entry.writeUInt32LE(unpacked, 24);
    entry.writeUInt16LE(name.length, 28);
    entry.writeUInt32LE(at, 42);
    directory.push(entry, Buffer.from(name));
    yield head;
    yield Buffer.from(name);
    yield bytes;
    at += head.length + name.length + bytes.length;
  }
  const entriesOf = Buffer.concat(directory);
  yield entriesOf;
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(entries.length, 8);
  end.writeUInt16LE(entries.length, 10);
  end.writeUInt32LE(entriesOf.length, 12);
  end.writeUInt32LE(at, 16);
  yield end;
}
