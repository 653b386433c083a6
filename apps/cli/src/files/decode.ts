import { TextDecoder } from 'node:util';
import { countLines } from '../../../../libs/sheet-files';
import { Refusal } from '../refusal';

const UTF8_HELP = 'save it as "CSV UTF-8" (or as plain UTF-8 text) and try again';

/**
 * Decodes bytes as strict UTF-8, piece by piece: a byte order mark is taken off and every kind of line end becomes
 * `\n`. Anything else (another encoding, a workbook) is refused in one sentence that names the file and the line.
 */
export async function* textOf(bytes: AsyncIterable<Uint8Array>, name: string): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let [line, held, first] = [1, '', true];
  for await (const piece of bytes) {
    if (first) refuseOtherFormats(piece, name);
    first = false;
    const text = held + decode(decoder, piece, name, line);
    held = text.endsWith('\r') ? '\r' : '';
    const whole = withPlainLineEnds(held === '' ? text : text.slice(0, -1));
    if (whole.includes('\0')) throw new Refusal(`${name} is not plain text; ${UTF8_HELP}.`);
    line += countLines(whole);
    if (whole !== '') yield whole;
  }
  const rest = held + decode(decoder, null, name, line);
  if (rest !== '') yield withPlainLineEnds(rest);
}

function decode(decoder: TextDecoder, piece: Uint8Array | null, name: string, line: number): string {
  try {
    return piece === null ? decoder.decode() : decoder.decode(piece, { stream: true });
  } catch {
    const good = piece === null ? '' : (new TextDecoder().decode(piece).split('\uFFFD')[0] ?? '');
    throw new Refusal(`${name}:${line + countLines(withPlainLineEnds(good))}: this is not UTF-8 text; ${UTF8_HELP}.`);
  }
}

function refuseOtherFormats(piece: Uint8Array, name: string): void {
  const [a, b] = piece;
  if (a === 0x50 && b === 0x4b) throw new Refusal(`${name} is a spreadsheet workbook or an archive; ${UTF8_HELP}.`);
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff))
    throw new Refusal(`${name} is UTF-16 text; ${UTF8_HELP}.`);
}

function withPlainLineEnds(text: string): string {
  return text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text;
}
