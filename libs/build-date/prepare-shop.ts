import { spanOfPartialDate, dayOf, type Day } from '../day';
import { compileScheme, type CompiledScheme } from './compile-scheme';
import type { ShopData } from './shop-data';
import type { StandardEdition } from './standard-edition';

/** An edition with the first day a plate can have named it. */
export interface KnownEdition {
  readonly edition: StandardEdition;
  readonly floor: Day;
}

/** The shop's data made ready for reading; make it once and again only when the data changes. */
export interface PreparedShop {
  /** Schemes of a maker, and of a line when one is named; maker and line compare without case. */
  schemes(maker: string, line?: string): readonly CompiledScheme[];
  /** An edition by its standard's name, whatever its dashes, dots and blanks, and its year. */
  edition(standard: string, edition: string): KnownEdition | undefined;
  readonly editions: readonly KnownEdition[];
}

const NONE: readonly CompiledScheme[] = [];

/** Compiles schemes and indexes editions. The data must have passed `ShopDataSchema`. */
export function prepareShop(data: ShopData): PreparedShop {
  const byMaker = groupBy(data.serialSchemes.map(compileScheme), ({ scheme }) => plainName(scheme.maker));
  const editions = data.standardEditions.map((edition) => ({ edition, floor: floorOfEdition(edition) }));
  const byStandard = groupBy(editions, ({ edition }) => plainStandard(edition.standard));
  // Names are nearly always written as they are stored; only others pay for being brought to the plain form.
  const asStored = {
    makers: new Map(data.serialSchemes.map(({ maker }) => [maker, byMaker.get(plainName(maker))])),
    standards: new Map(
      data.standardEditions.map(({ standard }) => [standard, byStandard.get(plainStandard(standard))]),
    ),
  };
  return {
    schemes(maker, line) {
      const all = asStored.makers.get(maker) ?? byMaker.get(plainName(maker)) ?? NONE;
      return line === undefined ? all : all.filter((compiled) => isFor(compiled, plainName(line)));
    },
    edition(standard, year) {
      const all = asStored.standards.get(standard) ?? byStandard.get(plainStandard(standard));
      return all?.find(({ edition }) => edition.edition === year);
    },
    editions,
  };
}

/** Approval, else publication; with neither known, the year before the one it is named after, when it can be approved. */
function floorOfEdition({ approved, published, edition }: StandardEdition): Day {
  const known = approved ?? published;
  return known === null ? dayOf(Number(edition) - 1, 1, 1) : spanOfPartialDate(known)!.from;
}

function isFor({ scheme }: CompiledScheme, line: string): boolean {
  return scheme.lines.length === 0 || scheme.lines.some((named) => plainName(named) === line);
}

function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
}

function plainName(name: string): string {
  return name.trim().toLowerCase();
}

/** A plate may leave out the body that publishes a standard beside its owner: `ANSI/OPEI B71.3` is `ANSI B71.3`. */
function plainStandard(standard: string): string {
  const letters = standard.toUpperCase().replace(/^ANSI\s*\/\s*[A-Z]+/, 'ANSI');
  return letters.replace(/[^A-Z0-9]/g, '');
}
