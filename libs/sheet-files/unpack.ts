import { promisify } from 'node:util';
import { inflateRaw } from 'node:zlib';
import { SheetRefused } from './refusal';

const inflate = promisify(inflateRaw);
const MOST_ENTRIES = 2_000;
/** All of a workbook unpacked; what wants to grow beyond is refused before it has. */
export const MOST_UNPACKED = 256 * 1024 * 1024;

const [END, ENTRY, LOCAL] = [0x06054b50, 0x02014b50, 0x04034b50];

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly packed: number;
  readonly unpacked: number;
  readonly at: number;
}

/**
 * Unpacks the entries of a workbook whose names are wanted. An archive that is broken, encrypted, or that would
 * unpack to more than it says or than is allowed is refused.
 */
export async function unpack(file: Buffer, wanted: (name: string) => boolean): Promise<ReadonlyMap<string, Buffer>> {
  const entries = entriesOf(file);
  const said = entries.reduce((sum, { unpacked }) => sum + unpacked, 0);
  if (said > MOST_UNPACKED) throw tooLarge();
  const found = new Map<string, Buffer>();
  for (const entry of entries) if (wanted(entry.name)) found.set(entry.name, await bytesOf(file, entry));
  return found;
}

/** Every entry of the archive is unpacked and thrown away: true when none is larger than it says. */
export async function checkArchive(file: Buffer): Promise<void> {
  for (const entry of entriesOf(file)) await bytesOf(file, entry);
}

const tooLarge = () =>
  new SheetRefused('The workbook unpacks to more than 256 MB; save its sheet as CSV, or split it.', true);
const broken = () =>
  new SheetRefused('The workbook is broken or no workbook; open it in a spreadsheet and save it again.');

function entriesOf(file: Buffer): Entry[] {
  const end = file.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]));
  if (end === -1 || end + 22 > file.length || file.readUInt32LE(end) !== END) throw broken();
  const [count, start] = [file.readUInt16LE(end + 10), file.readUInt32LE(end + 16)];
  if (count > MOST_ENTRIES)
    throw new SheetRefused(`The workbook holds ${count} files; a workbook holds at most ${MOST_ENTRIES}.`);
  const entries: Entry[] = [];
  let at = start;
  for (let n = 0; n < count; n++) {
    if (at + 46 > file.length || file.readUInt32LE(at) !== ENTRY) throw broken();
    if ((file.readUInt16LE(at + 8) & 1) !== 0)
      throw new SheetRefused('The workbook has a password; save it without one.');
    const [nameLength, extra, comment] = [28, 30, 32].map((offset) => file.readUInt16LE(at + offset)) as [
      number,
      number,
      number,
    ];
    entries.push({
      name: file.toString('utf8', at + 46, at + 46 + nameLength),
      method: file.readUInt16LE(at + 10),
      packed: file.readUInt32LE(at + 20),
      unpacked: file.readUInt32LE(at + 24),
      at: file.readUInt32LE(at + 42),
    });
    at += 46 + nameLength + extra + comment;
  }
  return entries;
}

async function bytesOf(file: Buffer, { method, packed, unpacked, at }: Entry): Promise<Buffer> {
  if (at + 30 > file.length || file.readUInt32LE(at) !== LOCAL) throw broken();
  const from = at + 30 + file.readUInt16LE(at + 26) + file.readUInt16LE(at + 28);
  const bytes = file.subarray(from, from + packed);
  if (bytes.length !== packed) throw broken();
  if (method === 0) return bytes;
  if (method !== 8) throw broken();
  try {
    return await inflate(bytes, { maxOutputLength: Math.max(1, Math.min(unpacked, MOST_UNPACKED)) });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE') throw tooLarge();
    throw broken();
  }
}
