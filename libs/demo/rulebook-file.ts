import { formatDay } from '../day';
import type { RulebookFile, SourceFile } from '../fit-rules';
import type { DemoShop } from './demo-shop';

/** Name and version that stand at the head of every rulebook file. */
export const RULEBOOK_FORMAT = 'revright-rulebook';
export const RULEBOOK_VERSION = 1;

/** A rulebook with the catalogue it speaks of, as one JSON-safe file. */
export interface DemoRulebookFile {
  readonly format: typeof RULEBOOK_FORMAT;
  readonly version: typeof RULEBOOK_VERSION;
  readonly makers: readonly { code: string; name: string; numberRules: unknown }[];
  readonly lines: readonly {
    code: string;
    maker: string;
    name: string;
    kind: string;
    producedFrom: string;
    producedUntil: string | null;
    models: readonly { number: string; name: string }[];
    options: readonly { code: string; name: string }[];
    positions: readonly { code: string; name: string; assembly: string; places: readonly string[]; joint: unknown }[];
  }[];
  readonly parts: readonly { key: string; number: string; name: string; fastener: unknown }[];
  /** Rules, sources, supersessions and standing, as libs/fit-rules reads them. Drafts stay at home. */
  readonly rulebook: RulebookFile;
}

/** The rulebook of the demo shop as a file: what the shop knows, without its owners, units and tickets. */
export function demoRulebookFile(shop: DemoShop): DemoRulebookFile {
  return {
    format: RULEBOOK_FORMAT,
    version: RULEBOOK_VERSION,
    makers: shop.makers.map(({ code, name, numberRules }) => ({ code, name, numberRules })),
    lines: shop.lines.map(({ code, maker, name, kind, models, options, positions, producedFrom, producedUntil }) => ({
      code,
      maker,
      name,
      kind,
      producedFrom: formatDay(producedFrom),
      producedUntil: producedUntil === null ? null : formatDay(producedUntil),
      models,
      options,
      positions: positions.map((one) => ({
        code: one.code,
        name: one.name,
        assembly: one.assembly,
        places: one.placeNames,
        joint: one.joint,
      })),
    })),
    parts: shop.parts.map(({ key, number, name, fastener }) => ({ key, number, name, fastener })),
    rulebook: {
      rules: [...shop.rules],
      sources: shop.sources.filter(({ state }) => state === 'published').map(sourceFileOnly),
      supersessions: [...shop.supersessions],
      standing: shop.settings.standing,
    },
  };
}

function sourceFileOnly(source: SourceFile): SourceFile {
  const { key, kind, publisher, number, title, issued, effective, received } = source;
  return { key, kind, publisher, number, title, issued, effective, received };
}
