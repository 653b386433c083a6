import { SheetRefused } from './refusal';
import { broken } from './unpack';

/** A tag or a text that goes on for longer than this is none of a table's. */
const LONGEST_PIECE = 1_000_000;

/** What a reader of XML wants to hear; names are without their prefix. */
export interface XmlHearer {
  open?(name: string, attributes: Readonly<Record<string, string>>): void;
  close?(name: string): void;
  text?(text: string): void;
}

/**
 * Reads XML piece by piece; after each piece it stops, so that what was heard can be handed on before more is read.
 * XML that is broken is refused; no piece at all is a part that the workbook does without.
 */
export async function* xmlEvents(pieces: AsyncIterable<string>, hearer: XmlHearer): AsyncGenerator<void> {
  // Loaded when the first workbook comes: programs that read text alone need not wait for it.
  const { Parser } = await import('saxen');
  const parser = new Parser();
  let fault: unknown = null;
  parser.on('error', (error) => (fault ??= error));
  let heard: boolean;
  parser.on('openTag', (name, attributes, decode) => {
    heard = true;
    hearer.open?.(bare(name), decoded(attributes(), decode));
  });
  parser.on('closeTag', (name) => {
    heard = true;
    hearer.close?.(bare(name));
  });
  parser.on('text', (text, decode) => hearer.text?.(decode(text)));
  parser.on('cdata', (text) => hearer.text?.(text));
  let [silent, isThere] = [0, false];
  for await (const piece of pieces) {
    [heard, isThere] = [false, true];
    if (piece !== '') parser.write(piece);
    if (fault instanceof SheetRefused) throw fault;
    if (fault) throw broken();
    // What has not come to its end is kept by the parser.
    silent = heard ? piece.length : silent + piece.length;
    if (silent > LONGEST_PIECE)
      throw new SheetRefused(`The workbook holds one piece of more than ${LONGEST_PIECE} characters.`, true);
    yield;
  }
  if (isThere && (parser.end() ?? fault)) throw broken();
}

/** Reads XML to its end. */
export async function hearXml(pieces: AsyncIterable<string>, hearer: XmlHearer): Promise<void> {
  const events = xmlEvents(pieces, hearer);
  while (!(await events.next()).done);
}

/** Attributes come as they are written, with `&quot;` and its like. */
function decoded(
  attributes: Readonly<Record<string, string>>,
  decode: (text: string) => string,
): Readonly<Record<string, string>> {
  if (!Object.values(attributes).some((value) => value.includes('&'))) return attributes;
  return Object.fromEntries(Object.entries(attributes).map(([name, value]) => [name, decode(value)]));
}

const bare = (name: string): string => name.slice(name.indexOf(':') + 1);
