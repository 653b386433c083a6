import { fastenerSpecSchema, shearJointSchema } from '../../fastener';
import { splitPartKey } from '../../part-number';
import { cellsOfFastener, cellsOfJoint, type SheetKind } from '../../sheets';
import type { Tables } from '../ports/index';

/** A row by field, as the kind's columns write it. */
export type Values = Readonly<Record<string, unknown>>;

const AT_ONCE = 2_000;

/** Makers, lines, positions, parts, supersessions and serial schemes. */
export async function* catalogueRows(
  store: Tables,
  id: Exclude<SheetKind, 'owners' | 'tickets' | 'rules'>,
): AsyncGenerator<readonly Values[]> {
  if (id === 'parts') yield* partRows(store);
  else yield await ROWS[id](store);
}

async function* partRows(store: Tables): AsyncGenerator<readonly Values[]> {
  for (let after = 0; ;) {
    const parts = await store.bulk.pageOfParts(after, AT_ONCE);
    if (parts.length === 0) return;
    yield parts.map(({ maker, number, name, priceMinor, tradeNumbers, fastener }) => ({
      maker,
      number,
      name,
      price: priceMinor === null ? null : priceMinor / 100,
      tradeNumbers: tradeNumbers?.length === 0 ? null : tradeNumbers,
      ...cellsOfFastener(fastener && fastenerSpecSchema.parse(fastener)),
    }));
    after = parts[parts.length - 1]!.id;
  }
}

const ROWS: Readonly<
  Record<'makers' | 'lines' | 'positions' | 'supersessions' | 'schemes', (store: Tables) => Promise<readonly Values[]>>
> = {
  makers: async ({ catalogue }) =>
    (await catalogue.makers()).map(({ code, name, numberRules }) => ({
      code,
      name,
      noise: numberRules.noise,
      packMarks: numberRules.packMarks,
      letter: numberRules.trailingLetterIsRevision,
    })),
  lines: async ({ catalogue }) =>
    (await catalogue.lines()).map((line) => ({
      code: line.code,
      maker: line.maker.code,
      name: line.name,
      sort: line.kind,
      from: line.producedFrom,
      until: line.producedUntil,
      models: line.models.map(({ number, name }) => ({ code: number, name })),
      options: line.options,
    })),
  positions: async ({ bulk }) =>
    (await bulk.positions()).map(({ line, code, name, assembly, placeNames, sketchX, sketchY, joint }) => ({
      line,
      code,
      name,
      assembly,
      places: placeNames,
      sketchX,
      sketchY,
      ...cellsOfJoint(joint && shearJointSchema.parse(joint)),
    })),
  async supersessions({ bulk, catalogue }) {
    const all = await bulk.supersessions();
    const keys = [...new Set(all.flatMap(({ from, to }) => (to === null ? [from] : [from, to])))];
    const numbers = new Map((await catalogue.partsByKeys(keys)).map(({ key, number }) => [key, number]));
    const numberOf = (key: string) => numbers.get(key) ?? splitPartKey(key).canonical;
    return all.map(({ from, to, direction }) => {
      const [maker, byMaker] = [splitPartKey(from).makerCode, to === null ? null : splitPartKey(to).makerCode];
      const by = to === null ? null : numberOf(to);
      return { maker, number: numberOf(from), by, byMaker: byMaker === maker ? null : byMaker, how: direction };
    });
  },
  schemes: async ({ shopData }) =>
    (await shopData.schemes()).map(({ scheme }) => ({
      maker: scheme.maker,
      name: scheme.name,
      lines: scheme.lines,
      from: scheme.validFrom,
      until: scheme.validTo,
      fields: scheme.fields,
      source: scheme.source,
    })),
};
