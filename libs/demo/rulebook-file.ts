import { formatDay } from '../day';
import {
  RULEBOOK_FORMAT,
  RULEBOOK_VERSION,
  rulebookDocument,
  type RulebookDocument,
  type RulebookDocumentInput,
} from '../contracts';
import type { DemoLine, DemoShop, DemoSource } from './demo-shop';

/** The rulebook of the demo shop as a file: what the shop knows, without its owners, units, tickets and drafts. */
export function demoRulebookFile(shop: DemoShop): RulebookDocument {
  const file: RulebookDocumentInput = {
    format: RULEBOOK_FORMAT,
    version: RULEBOOK_VERSION,
    makers: shop.makers.map(({ code, name, numberRules: { makerCode: _code, ...numberRules } }) => {
      return { code, name, numberRules };
    }),
    serialSchemes: [...shop.schemes],
    standardEditions: [...shop.editions],
    lines: shop.lines.map(lineEntry),
    parts: shop.parts.map(({ key, number, name, fastener, priceMinor }) => {
      return { key, number, name, fastener, priceMinor };
    }),
    sources: shop.sources.filter(({ state }) => state === 'published').map(sourceEntry),
    rules: [...shop.rules],
    supersessions: [...shop.supersessions],
    standing: shop.settings.standing,
  };
  return rulebookDocument.parse(file);
}

function lineEntry(line: DemoLine): RulebookDocumentInput['lines'] extends (infer L)[] | undefined ? L : never {
  const { code, maker, name, kind, sketch, producedFrom, producedUntil } = line;
  return {
    code,
    maker,
    name,
    kind,
    producedFrom: formatDay(producedFrom),
    producedUntil: producedUntil === null ? null : formatDay(producedUntil),
    sketch,
    models: [...line.models],
    options: [...line.options],
    positions: line.positions.map((one) => ({
      code: one.code,
      name: one.name,
      assembly: one.assembly,
      places: [...one.placeNames],
      joint: one.joint,
      sketchX: one.sketchX,
      sketchY: one.sketchY,
    })),
  };
}

function sourceEntry(source: DemoSource) {
  const { key, kind, publisher, number, title, summary, issued, effective, received, publishedAt } = source;
  const at = publishedAt === null ? null : new Date(publishedAt).toISOString();
  return { key, kind, publisher, number, title, issued, effective, received, summary, publishedAt: at };
}
