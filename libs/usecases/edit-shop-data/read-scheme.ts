import { SerialSchemeSchema, type SerialScheme } from '../../build-date';
import type { SaveSerialScheme } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { LineRow, MakerRow } from '../ports/index';
import { readShape } from '../../shape';

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
  const read = readShape(SerialSchemeSchema, { ...typed, id });
  if (!read.ok) {
    const [{ path, words }] = read.problems;
    const field = ['scheme', ...path].join('.');
    return refused('bad-input', `${field}: ${words}.`, { field });
  }
  const maker = makers.find(({ code }) => code === read.value.maker);
  if (!maker)
    return bad('scheme.maker', `The catalogue has no maker '${read.value.maker}'; give the code of one it has.`);
  const ofMaker = lines.filter((line) => line.maker.id === maker.id).map(({ code }) => code);
  const strange = read.value.lines.find((code) => !ofMaker.includes(code));
  if (strange !== undefined)
    return bad('scheme.lines', `${maker.name} has no line '${strange}'; it has ${ofMaker.join(', ') || 'none yet'}.`);
  return done({ scheme: read.value, maker });
}

/** Line codes whose serials the scheme may read: those it names, or every line of its maker. */
export function linesReadBy({ maker, lines: named }: SerialScheme, { lines }: Catalogue): string[] {
  return named.length > 0 ? named : lines.filter((line) => line.maker.code === maker).map(({ code }) => code);
}

/** Codes for new schemes: the maker's code and the first letter, then number, that is free. */
export class FreeSchemeIds {
  private readonly taken: Set<string>;
  /** By maker, how many of its codes are known to be taken. */
  private readonly passed = new Map<string, number>();

  constructor(taken: Iterable<string>) {
    this.taken = new Set(taken);
  }

  /** The same one again until it is taken. */
  next(maker: string): string {
    let passed = this.passed.get(maker) ?? 0;
    while (this.taken.has(schemeId(maker, passed))) passed++;
    this.passed.set(maker, passed);
    return schemeId(maker, passed);
  }

  take(id: string): void {
    this.taken.add(id);
  }
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** `HOLM-A` to `HOLM-Z`, then `HOLM-2`, `HOLM-3` and so on. */
const schemeId = (maker: string, at: number): string => `${maker}-${LETTERS[at] ?? at - LETTERS.length + 2}`;

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
