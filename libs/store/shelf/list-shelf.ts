import type { ShelfItem } from '../../contracts';
import type { ShelfFilter } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { COMING, ITEM, ITEM_TABLES, TO_PULL } from './item-columns';

const ONLY: Readonly<Record<NonNullable<ShelfFilter['only']>, Prisma.Sql>> = {
  low: Prisma.sql`i.reorder_point IS NOT NULL AND i.on_hand - i.reserved + ${COMING} <= i.reorder_point`,
  reserved: Prisma.sql`i.reserved > 0`,
  pull: Prisma.sql`${TO_PULL} > 0`,
};

/** By bin, then by number: the order in which one walks along a shelf. Items without a bin come last. */
export async function listShelf(
  db: Db,
  { locationId, keys, text, only, offset, limit }: ShelfFilter,
): Promise<{ total: number; items: readonly ShelfItem[] }> {
  const filters = [
    Prisma.sql`i.location_id = ${locationId}`,
    ...(only === null ? [] : [ONLY[only]]),
    ...(text === null ? [] : [matches(keys, text)]),
  ];
  const where = Prisma.join(filters, ' AND ');
  const items = await db.$queryRaw<ShelfItem[]>`
    SELECT ${ITEM} FROM ${ITEM_TABLES} WHERE ${where}
    ORDER BY i.bin = '', i.bin, p.number, i.id LIMIT ${limit}::int OFFSET ${offset}::int`;
  const counts = await db.$queryRaw<{ total: number }[]>`
    SELECT count(*)::int AS total FROM ${ITEM_TABLES} WHERE ${where}`;
  return { total: counts[0]!.total, items };
}

function matches(keys: readonly string[], text: string): Prisma.Sql {
  const name = `%${escapeLike(text)}%`;
  const squeezed = text.toUpperCase().replace(/[^A-Z0-9]/g, '');
  const number = squeezed === '' ? Prisma.sql`FALSE` : Prisma.sql`p.canonical LIKE ${`${squeezed}%`}`;
  return Prisma.sql`(p.key = ANY(${[...keys]}::text[]) OR ${number} OR p.name ILIKE ${name} OR p.number ILIKE ${name}
    OR upper(i.bin) = ${text.toUpperCase()})`;
}
