import { broken } from './unpack';

/** What a reader of XML wants to hear; names are without their prefix. */
export interface XmlHearer {
  open?(name: string, attributes: Readonly<Record<string, string>>): void;
  close?(name: string): void;
  text?(text: string): void;
}

/**
 * Reads XML piece by piece; after each piece it stops, so that what was heard can be handed on before more is read.
 * XML that is broken is refused.
 */
export async function* xmlEvents(pieces: AsyncIterable<string>, hearer: XmlHearer): AsyncGenerator<void> {
  // Loaded when the first workbook comes: programs that read text alone need not wait for it.
  const { Parser } = await import('saxen');
  const parser = new Parser();
  let fault: unknown = null;
  parser.on('error', (error) => (fault ??= error));
  parser.on('openTag', (name, attributes, decode) => hearer.open?.(bare(name), decoded(attributes(), decode)));
  parser.on('closeTag', (name) => hearer.close?.(bare(name)));
  parser.on('text', (text, decode) => hearer.text?.(decode(text)));
  parser.on('cdata', (text) => hearer.text?.(text));
  for await (const piece of pieces) {
    if (piece !== '') parser.write(piece);
    if (fault) throw broken();
    yield;
  }
  if (parser.end() ?? fault) throw broken();
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
