import { SerialSchemeSchema, type SerialScheme } from '../../build-date';
import type { SaveSerialScheme } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { LineRow, MakerRow } from '../ports/index';

/** What a scheme must fit to: the makers and lines of the catalogue. */
export interface Catalogue {
  readonly makers: readonly MakerRow[];
  readonly lines: readonly LineRow[];
}

/** A typed scheme checked whole, with the maker it belongs to; refused with one sentence. */
export function readScheme(
  typed: SaveSerialScheme['scheme'],
  id: string,
  { makers, lines }: Catalogue,
): Outcome<{ readonly scheme: SerialScheme; readonly maker: MakerRow }> {
  const read = SerialSchemeSchema.safeParse({ ...typed, id });
  if (!read.success) {
    const issue = read.error.issues[0]!;
    const field = ['scheme', ...issue.path].join('.');
    return refused('bad-input', `${field}: ${issue.message}.`, { field });
  }
  const maker = makers.find(({ code }) => code === read.data.maker);
  if (!maker)
    return bad('scheme.maker', `The catalogue has no maker '${read.data.maker}'; give the code of one it has.`);
  const ofMaker = lines.filter((line) => line.maker.id === maker.id).map(({ code }) => code);
  const strange = read.data.lines.find((code) => !ofMaker.includes(code));
  if (strange !== undefined)
    return bad('scheme.lines', `${maker.name} has no line '${strange}'; it has ${ofMaker.join(', ') || 'none yet'}.`);
  return done({ scheme: read.data, maker });
}

/** Line codes whose serials the scheme may read: those it names, or every line of its maker. */
export function linesReadBy({ maker, lines: named }: SerialScheme, { lines }: Catalogue): string[] {
  return named.length > 0 ? named : lines.filter((line) => line.maker.code === maker).map(({ code }) => code);
}

/** A code for a new scheme: the maker's code and the first letter, then number, that is free. */
export function freeSchemeId(maker: string, taken: ReadonlySet<string>): string {
  for (const letter of 'ABCDEFGHIJKLMNOPQRSTUVWXYZ') {
    if (!taken.has(`${maker}-${letter}`)) return `${maker}-${letter}`;
  }
  let number = 2;
  while (taken.has(`${maker}-${number}`)) number++;
  return `${maker}-${number}`;
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
