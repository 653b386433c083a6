import { formatDay, type Day } from '../../day';
import type { ShelfShare } from '../../contracts';
import type { Tables } from '../ports/store';
import type { TouchedPart } from './parts-touched';

/** Keeps with a bulletin which parts it bars or ends, so that every shelf can be looked over for them. */
export async function noteParts(
  tx: Tables,
  sourceId: number,
  touched: readonly TouchedPart[],
  { day, today }: { day: Day; today: Day },
): Promise<void> {
  const rows = await tx.catalogue.partsByKeys(touched.map(({ part }) => part));
  const ids = new Map(rows.map(({ key, id }) => [key, id]));
  const since = day > today ? formatDay(day) : null;
  await tx.notices.add(
    sourceId,
    touched.flatMap(({ part, ...notice }) => (ids.has(part) ? [{ ...notice, partId: ids.get(part)!, since }] : [])),
  );
  await tx.live.tell('shelf', null);
}

/** What lies on the shelves of such parts: the shelf's share of a "what if". */
export async function shelfShareOf(tables: Tables, touched: readonly TouchedPart[]): Promise<ShelfShare> {
  const rows = await tables.catalogue.partsByKeys(touched.map(({ part }) => part));
  const byKey = new Map(touched.map((one) => [one.part, one]));
  return (await tables.notices.share(rows.map(({ id }) => id))).map(({ partId: _, part, holders, ...lies }) => {
    const { kind, stillGood, sentences } = byKey.get(part.key)!;
    return { ...lies, part, kind, stillGood, sentences: [...sentences], holders: [...holders] };
  });
}
