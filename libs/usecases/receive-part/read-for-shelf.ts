import { partKeyOf, readPartNumber } from '../../part-number';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/store';
import { partByTradeNumber } from '../read-part-text/part-by-trade-number';
import type { PartTextReading } from '../read-part-text/read-part-text';

/**
 * A number typed or scanned at the shelf, in any writing, with how many its pack mark says are in the bag; or the trade
 * number of the bag. A shelf holds
 * what has a name, so a number that no catalogue lists is refused. Where two makers print the same number, the part that
 * lies here already is meant.
 */
export async function readForShelf(tx: Tables, locationId: number, text: string): Promise<Outcome<PartTextReading>> {
  const packs = new Map<string, number>();
  for (const { numberRules } of await tx.catalogue.makers()) {
    const reading = readPartNumber(text, numberRules);
    if (reading.ok) packs.set(partKeyOf(numberRules.makerCode, reading.number.canonical), reading.number.pack);
  }
  const listed = (await tx.catalogue.partsByKeys([...packs.keys()])).filter((part) => part.listed);
  const stocked =
    listed.length > 1
      ? await tx.shelf.words(
          locationId,
          listed.map(({ key }) => key),
        )
      : [];
  const part = listed.find(({ key }) => stocked.some((word) => word.key === key)) ?? listed[0];
  if (part) return done({ part, pack: packs.get(part.key)! });
  const carried = await partByTradeNumber(tx, text);
  if (carried) return done(carried);
  const detail = `"${text}" is in no catalogue of the shop, so it has no place on the shelf.`;
  return refused('bad-input', detail, { field: 'partText' });
}
