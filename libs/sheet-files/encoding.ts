import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { TextDecoder } from 'node:util';
import { analyse } from 'chardet';
import iconv from 'iconv-lite';
import { SheetRefused } from './refusal';

/** What a person may choose where the guess is wrong: those that spreadsheets of the trade's countries write. */
export const ENCODINGS = [
  'utf-8',
  'utf-16le',
  'utf-16be',
  'windows-1252',
  'windows-1250',
  'windows-1251',
  'iso-8859-15',
  'macintosh',
  'shift_jis',
] as const;
export type Encoding = (typeof ENCODINGS)[number];

/** How much of a file is looked at to guess its encoding. */
const SAMPLE = 256 * 1024;
const PIECE = 256 * 1024;

/** How a text file is encoded, and whether that is certain (a mark, or all of it is UTF-8) or a guess. */
export interface FoundEncoding {
  readonly encoding: Encoding;
  readonly certain: boolean;
}

/** Tells the encoding of a text file. Only UTF-8 and files with a byte order mark are certain. */
export async function findEncoding(path: string): Promise<FoundEncoding> {
  const sample = await startOf(path, SAMPLE);
  const marked = byMark(sample);
  if (marked) return { encoding: marked, certain: true };
  if (looksUtf16(sample)) return { encoding: sample[0] === 0 ? 'utf-16be' : 'utf-16le', certain: false };
  if (sample.includes(0)) throw new SheetRefused('The file is no text and no workbook; give CSV or XLSX.');
  if (await isUtf8(path)) return { encoding: 'utf-8', certain: true };
  const known = analyse(sample).map(({ name }) => name.toLowerCase().replace('iso-8859-1', 'windows-1252'));
  const guess = known.map((name) => ENCODINGS.find((one) => name === one)).find((one) => one && !one.startsWith('utf'));
  return { encoding: guess ?? 'windows-1252', certain: false };
}

/** The text of a file piece by piece: its mark taken off, every line end a `\n`, U+FFFD where nothing could be read. */
export async function* textOf(path: string, encoding: Encoding): AsyncGenerator<string> {
  const decoder = iconv.getDecoder(encoding === 'utf-8' ? 'utf8' : encoding, { stripBOM: true });
  let held = '';
  for await (const piece of createReadStream(path, { highWaterMark: PIECE })) {
    const text = held + decoder.write(piece as Buffer);
    held = text.endsWith('\r') ? '\r' : '';
    const whole = held === '' ? text : text.slice(0, -1);
    if (whole !== '') yield whole.replace(/\r\n?/g, '\n');
  }
  const rest = held + (decoder.end() ?? '');
  if (rest !== '') yield rest.replace(/\r\n?/g, '\n');
}

/** The first bytes of a file. */
export async function startOf(path: string, length: number): Promise<Buffer> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(length), 0, length, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}

function byMark([a, b, c]: Buffer): Encoding | null {
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8';
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  return a === 0xfe && b === 0xff ? 'utf-16be' : null;
}

/** Text in letters of one byte written as two has a zero in every second place. */
function looksUtf16(sample: Buffer): boolean {
  const zeros = [0, 0];
  for (let at = 0; at < Math.min(sample.length, 4_096); at++) if (sample[at] === 0) zeros[at % 2]!++;
  const [even, odd] = zeros as [number, number];
  const half = Math.min(sample.length, 4_096) / 2;
  return (even === 0 && odd > half * 0.6) || (odd === 0 && even > half * 0.6);
}

async function isUtf8(path: string): Promise<boolean> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    for await (const piece of createReadStream(path, { highWaterMark: PIECE }))
      decoder.decode(piece as Buffer, { stream: true });
    decoder.decode();
    return true;
  } catch {
    return false;
  }
}
