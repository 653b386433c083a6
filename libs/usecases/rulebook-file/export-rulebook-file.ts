import {
  RULEBOOK_FORMAT,
  RULEBOOK_VERSION,
  rulebookDocument,
  type RulebookDocument,
  type RulebookDocumentInput,
} from '../../contracts';
import type { Tables } from '../ports/index';
import type { Ports } from '../run';

/** All that the shop holds true about parts as one document: no owner, unit, ticket or draft is in it. */
export function exportRulebookFile({ store }: Ports): Promise<RulebookDocument> {
  return documentOf(store);
}

/** The same by what a transaction sees. */
export async function documentOf(tables: Tables): Promise<RulebookDocument> {
  const { rules, supersessions, standing } = await tables.rulebook.load();
  const data = await tables.catalogue.shopData();
  const file: RulebookDocumentInput = {
    format: RULEBOOK_FORMAT,
    version: RULEBOOK_VERSION,
    makers: (await tables.catalogue.makers()).map(
      ({ code, name, numberRules: { makerCode: _code, ...numberRules } }) => {
        return { code, name, numberRules };
      },
    ),
    serialSchemes: [...data.serialSchemes],
    standardEditions: [...data.standardEditions],
    lines: await linesOf(tables),
    parts: await partsOf(tables),
    sources: await sourcesOf(tables),
    rules: [...rules],
    supersessions: [...supersessions],
    standing,
  };
  return rulebookDocument.parse(file);
}

async function linesOf(tables: Tables): Promise<NonNullable<RulebookDocumentInput['lines']>> {
  const positions = await tables.bulk.positions();
  return (await tables.catalogue.lines()).map((line) => ({
    code: line.code,
    maker: line.maker.code,
    name: line.name,
    kind: line.kind,
    producedFrom: line.producedFrom,
    producedUntil: line.producedUntil,
    sketch: line.sketch,
    models: line.models.map(({ number, name }) => ({ number, name })),
    options: line.options.map(({ code, name }) => ({ code, name })),
    positions: positions
      .filter((one) => one.line === line.code)
      .map(({ code, name, assembly, placeNames, joint, sketchX, sketchY }) => {
        return { code, name, assembly, places: [...placeNames], joint, sketchX, sketchY };
      }),
  }));
}

async function partsOf({ bulk }: Tables): Promise<NonNullable<RulebookDocumentInput['parts']>> {
  const parts: NonNullable<RulebookDocumentInput['parts']> = [];
  for (let after = 0; ;) {
    const page = await bulk.pageOfParts(after, 5_000);
    if (page.length === 0) return parts;
    for (const { key, number, name, fastener, priceMinor } of page)
      parts.push({ key, number, name, fastener, priceMinor });
    after = page[page.length - 1]!.id;
  }
}

/** Papers that are published or were withdrawn, the earliest first. */
async function sourcesOf({ bulletins }: Tables): Promise<RulebookDocumentInput['sources']> {
  const sources: RulebookDocumentInput['sources'] = [];
  for (const { id, state } of [...(await bulletins.list())].reverse()) {
    if (state === 'draft') continue;
    const paper = (await bulletins.find(id))!;
    const { key, kind, publisher, number, title, issued, effective, received, summary, publishedAt, withdrawnAt } =
      paper;
    const withdrawn = withdrawnAt === null ? null : { at: withdrawnAt, why: paper.withdrawnWhy ?? '' };
    sources.push({ key, kind, publisher, number, title, issued, effective, received, summary, publishedAt, withdrawn });
  }
  return sources;
}
