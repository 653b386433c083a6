import { formatDay } from '../../day';
import type { DemoShop } from '../../demo';
import { splitPartKey } from '../../part-number';
import type { Db } from '../db';
import { shopDataStore } from '../shop-data/shop-data-store';
import { idsFor, insertRows, type IdsByKey } from './insert-rows';

export interface CatalogueIds {
  readonly maker: IdsByKey;
  readonly line: IdsByKey;
  /** `line model` */
  readonly model: IdsByKey;
  /** `line position` */
  readonly position: IdsByKey;
  /** By part key. */
  readonly part: IdsByKey;
}

/** Makers, lines, models, positions, parts, supersessions, serial schemes and editions of standards. */
export async function seedCatalogue(db: Db, shop: DemoShop): Promise<CatalogueIds> {
  const inLine = <T>(pick: (line: DemoShop['lines'][number]) => readonly T[], name: (one: T) => string): string[] =>
    shop.lines.flatMap((line) => pick(line).map((one) => `${line.code} ${name(one)}`));
  const ids: CatalogueIds = {
    maker: await idsFor(
      db,
      'maker',
      shop.makers.map(({ code }) => code),
    ),
    line: await idsFor(
      db,
      'product_line',
      shop.lines.map(({ code }) => code),
    ),
    model: await idsFor(
      db,
      'model',
      inLine(
        ({ models }) => models,
        ({ number }) => number,
      ),
    ),
    position: await idsFor(
      db,
      'position',
      inLine(
        ({ positions }) => positions,
        ({ code }) => code,
      ),
    ),
    part: await idsFor(
      db,
      'part',
      shop.parts.map(({ key }) => key),
    ),
  };
  await seedMakers(db, shop, ids);
  await seedLines(db, shop, ids);
  await seedPositions(db, shop, ids);
  await seedParts(db, shop, ids);
  return ids;
}

async function seedMakers(db: Db, shop: DemoShop, { maker }: CatalogueIds): Promise<void> {
  const makers = shop.makers.map(({ code, name, numberRules }) => ({
    id: maker.of(code),
    code,
    name,
    number_rules: numberRules,
  }));
  await insertRows(db, 'maker', { id: 'int', code: 'text', name: 'text', number_rules: 'jsonb' }, makers);
  const schemes = shop.schemes.map((scheme) => ({ maker_id: maker.of(scheme.maker), code: scheme.id, scheme }));
  await insertRows(db, 'serial_scheme', { maker_id: 'int', code: 'text', scheme: 'jsonb' }, schemes);
  await shopDataStore(db).addMissingEditions(shop.editions);
}

async function seedLines(db: Db, shop: DemoShop, { maker, line, model }: CatalogueIds): Promise<void> {
  const lines = shop.lines.map((one) => ({
    id: line.of(one.code),
    code: one.code,
    maker_id: maker.of(one.maker),
    name: one.name,
    kind: one.kind,
    options: one.options,
    sketch: one.sketch,
    produced_from: formatDay(one.producedFrom),
    produced_until: one.producedUntil === null ? null : formatDay(one.producedUntil),
  }));
  const columns = {
    id: 'int',
    code: 'text',
    maker_id: 'int',
    name: 'text',
    kind: 'text',
    options: 'jsonb',
    sketch: 'text',
  };
  await insertRows(db, 'product_line', { ...columns, produced_from: 'date', produced_until: 'date' }, lines);
  const models = shop.lines.flatMap((one) =>
    one.models.map(({ number, name }) => ({
      id: model.of(`${one.code} ${number}`),
      line_id: line.of(one.code),
      number,
      name,
    })),
  );
  await insertRows(db, 'model', { id: 'int', line_id: 'int', number: 'text', name: 'text' }, models);
}

async function seedPositions(db: Db, shop: DemoShop, { line, position }: CatalogueIds): Promise<void> {
  const rows = shop.lines.flatMap((one) =>
    one.positions.map(({ code, name, assembly, placeNames, sketchX, sketchY, joint }, index) => ({
      id: position.of(`${one.code} ${code}`),
      line_id: line.of(one.code),
      code,
      name,
      assembly,
      places: placeNames.length,
      place_names: placeNames,
      sort_order: index + 1,
      joint,
      sketch_x: sketchX,
      sketch_y: sketchY,
    })),
  );
  const columns = {
    id: 'int',
    line_id: 'int',
    code: 'text',
    name: 'text',
    assembly: 'text',
    places: 'int',
    joint: 'jsonb',
  };
  const more = { place_names: 'text[]', sort_order: 'int', sketch_x: 'float8', sketch_y: 'float8' };
  await insertRows(db, 'position', { ...columns, ...more }, rows);
}

async function seedParts(db: Db, shop: DemoShop, { maker, part }: CatalogueIds): Promise<void> {
  const rows = shop.parts.map((one) => ({
    id: part.of(one.key),
    key: one.key,
    maker_id: maker.of(one.maker),
    number: one.number,
    canonical: splitPartKey(one.key).canonical,
    name: one.name,
    fastener: one.fastener,
    price_minor: one.priceMinor,
  }));
  const columns = { id: 'int', key: 'text', maker_id: 'int', number: 'text', canonical: 'text', name: 'text' };
  await insertRows(db, 'part', { ...columns, fastener: 'jsonb', price_minor: 'int' }, rows);
  const gone = shop.supersessions.map(({ from, to, direction, known }) => ({
    from_key: from,
    to_key: to,
    direction,
    known_from: known.from,
    known_to: known.to,
  }));
  const spans = { known_from: 'timestamptz', known_to: 'timestamptz' };
  await insertRows(db, 'supersession', { from_key: 'text', to_key: 'text', direction: 'text', ...spans }, gone);
}
