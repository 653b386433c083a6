import { compileScheme, type CompiledScheme } from './compile-scheme';
import type { ShopData } from './shop-data';
import type { StandardEdition } from './standard-edition';

/** The shop's data made ready for reading; make it once and again only when the data changes. */
export interface PreparedShop {
  /** Schemes of a maker, and of a line when one is named; maker and line compare without case. */
  schemes(maker: string, line?: string): readonly CompiledScheme[];
  /** An edition by its standard's name, whatever its dashes, dots and blanks, and its year. */
  edition(standard: string, edition: string): StandardEdition | undefined;
  readonly editions: readonly StandardEdition[];
}

const NONE: readonly CompiledScheme[] = [];

/** Compiles schemes and indexes editions. The data must have passed `ShopDataSchema`. */
export function prepareShop(data: ShopData): PreparedShop {
  const byMaker = new Map<string, CompiledScheme[]>();
  for (const scheme of data.serialSchemes) {
    const maker = plain(scheme.maker);
    byMaker.set(maker, [...(byMaker.get(maker) ?? []), compileScheme(scheme)]);
  }
  const editions = new Map(data.standardEditions.map((found) => [editionKey(found.standard, found.edition), found]));
  return {
    schemes(maker, line) {
      const all = byMaker.get(plain(maker)) ?? NONE;
      return line === undefined ? all : all.filter((compiled) => isFor(compiled, plain(line)));
    },
    edition: (standard, edition) => editions.get(editionKey(standard, edition)),
    editions: data.standardEditions,
  };
}

function isFor({ scheme }: CompiledScheme, line: string): boolean {
  return scheme.lines.length === 0 || scheme.lines.some((named) => plain(named) === line);
}

function plain(name: string): string {
  return name.trim().toLowerCase();
}

/** A plate may leave out the body that publishes a standard beside its owner: `ANSI/OPEI B71.3` is `ANSI B71.3`. */
function editionKey(standard: string, edition: string): string {
  const letters = standard.toUpperCase().replace(/^ANSI\s*\/\s*[A-Z]+/, 'ANSI');
  return `${letters.replace(/[^A-Z0-9]/g, '')}:${edition}`;
}
