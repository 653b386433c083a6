import type { BenchRow, CatalogueStore, LineRow, MakerRow, PartRow, PositionRow, TradeNumberRow } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { Together } from '../together';
import { readMark } from './read-mark';
import { readShapes } from './read-shapes';
import { readShopData } from './read-shop-data';

const PART = Prisma.sql`
  p.id, p.key, p.number, p.name, m.name AS maker, p.listed, p.fastener, p.price_minor AS "priceMinor"
  FROM part p JOIN maker m ON m.id = p.maker_id`;

export function catalogueStore(db: Db): CatalogueStore {
  const marks = new Together(async () => new Map([['mark', await readMark(db)]]));
  return {
    mark: async () => (await marks.of('mark'))!,
    benches: () => db.$queryRaw<BenchRow[]>`
      SELECT b.id, b.code, b.name, l.name AS location
      FROM bench b JOIN location l ON l.id = b.location_id ORDER BY l.code, b.code`,
    makers: () => db.$queryRaw<MakerRow[]>`
      SELECT id, code, name, number_rules AS "numberRules" FROM maker ORDER BY id`,
    lines: () => readLines(db, Prisma.empty),
    lineByCode: async (code) => (await readLines(db, Prisma.sql`WHERE l.code = ${code}`))[0] ?? null,
    positionsOf: (lineId) => db.$queryRaw<PositionRow[]>`
      SELECT id, code, name, assembly, places, place_names AS "placeNames",
             sketch_x AS "sketchX", sketch_y AS "sketchY", joint
      FROM position WHERE line_id = ${lineId} ORDER BY sort_order, id`,
    partsByKeys: async (keys) =>
      keys.length === 0
        ? []
        : db.$queryRaw<PartRow[]>`SELECT ${PART} WHERE p.key = ANY(${[...keys]}::text[]) ORDER BY p.key`,
    partsByIds: async (ids) =>
      ids.length === 0
        ? []
        : db.$queryRaw<PartRow[]>`SELECT ${PART} WHERE p.id = ANY(${[...ids]}::int[]) ORDER BY p.key`,
    searchParts: (canonicals, word, most) => db.$queryRaw<PartRow[]>`
      SELECT ${PART}
      WHERE p.listed AND (
        EXISTS (SELECT FROM unnest(${[...canonicals]}::text[]) c WHERE c <> '' AND starts_with(p.canonical, c))
        OR p.name ILIKE ${`%${escapeLike(word)}%`})
      ORDER BY p.number, p.id LIMIT ${most}`,
    async insertUnlisted({ key, makerId, number, canonical }) {
      await db.$executeRaw`
        INSERT INTO part (key, maker_id, number, canonical, name, listed)
        VALUES (${key}, ${makerId}, ${number}, ${canonical}, 'Not in the catalogue', false)
        ON CONFLICT (key) DO NOTHING`;
      const rows = await db.$queryRaw<PartRow[]>`SELECT ${PART} WHERE p.key = ${key}`;
      return rows[0]!;
    },
    ...tradeNumbers(db),
    shopData: () => readShopData(db),
    shapes: () => readShapes(db),
  };
}

function tradeNumbers(
  db: Db,
): Pick<CatalogueStore, 'partsByTradeNumbers' | 'tradeNumbersOf' | 'addTradeNumber' | 'removeTradeNumber'> {
  return {
    async partsByTradeNumbers(gtins) {
      if (gtins.length === 0) return [];
      const found = await db.$queryRaw<TradeNumberRow[]>`
        SELECT gtin, part_id AS "partId", pack FROM part_trade_number WHERE gtin = ANY(${[...gtins]}::text[])`;
      if (found.length === 0) return [];
      const ids = found.map(({ partId }) => partId);
      const parts = await db.$queryRaw<PartRow[]>`SELECT ${PART} WHERE p.id = ANY(${ids}::int[])`;
      return found.map(({ gtin, partId, pack }) => ({ gtin, pack, part: parts.find(({ id }) => id === partId)! }));
    },
    tradeNumbersOf: (partIds) => db.$queryRaw<TradeNumberRow[]>`
      SELECT gtin, part_id AS "partId", pack FROM part_trade_number
      WHERE part_id = ANY(${[...partIds]}::int[]) ORDER BY part_id, gtin`,
    async addTradeNumber({ partId, gtin, pack }) {
      const count = await db.$executeRaw`
        INSERT INTO part_trade_number (gtin, part_id, pack) VALUES (${gtin}, ${partId}::int, ${pack}::int)
        ON CONFLICT (gtin) DO NOTHING`;
      return count === 1;
    },
    async removeTradeNumber(partId, gtin) {
      const count = await db.$executeRaw`
        DELETE FROM part_trade_number WHERE part_id = ${partId}::int AND gtin = ${gtin}`;
      return count === 1;
    },
  };
}

/** Text as it is, for LIKE. */
export function escapeLike(text: string): string {
  return text.replace(/[\\%_]/g, (character) => `\\${character}`);
}

function readLines(db: Db, where: Prisma.Sql): Promise<LineRow[]> {
  return db.$queryRaw<LineRow[]>`
    SELECT l.id, l.code, l.name, l.kind, l.sketch, l.options,
           json_build_object('id', m.id, 'code', m.code, 'name', m.name) AS maker,
           l.produced_from::text AS "producedFrom", l.produced_until::text AS "producedUntil",
           coalesce((SELECT json_agg(json_build_object('id', o.id, 'number', o.number, 'name', o.name) ORDER BY o.number)
                     FROM model o WHERE o.line_id = l.id), '[]'::json) AS models
    FROM product_line l JOIN maker m ON m.id = l.maker_id ${where} ORDER BY m.name, l.name`;
}
