import { dayOf, sayDay, sayPartialDate, spanOfPartialDate, type Day } from '../day';
import type { EvidenceOf } from './evidence';
import type { PreparedShop } from './prepare-shop';
import { notBefore, says, saysNothing, type Reading } from './reading';
import type { StandardEdition } from './standard-edition';

/**
 * A floor by the edition of a standard on the plate: not before it was approved (or published, when the approval is
 * not known). No ceiling: old labels overlap new ones, for years where an edition has a late effective day.
 */
export function readStandardEdition(evidence: EvidenceOf<'standard-edition'>, shop: PreparedShop): Reading {
  const found = shop.edition(evidence.standard, evidence.edition);
  const name = `${evidence.standard}-${evidence.edition}`;
  if (!found)
    return saysNothing(
      'unknown-edition',
      () => `Edition ${name} is not in the shop's list of standards; enter its approval day to make it count.`,
    );
  return says(notBefore(floorOfEdition(found)), () => sayFloor(name, found));
}

/** The first day a plate can have named the edition: see {@link readStandardEdition}. */
export function floorOfEdition({ approved, published, edition }: StandardEdition): Day {
  const known = approved ?? published;
  if (known !== null) return spanOfPartialDate(known)!.from;
  // With neither day known only the name is left, and approval can fall in the year before it.
  return dayOf(Number(edition) - 1, 1, 1);
}

function sayFloor(name: string, found: StandardEdition): string {
  const floor = `the plate is not older than ${sayDay(floorOfEdition(found))}; no latest day, since old labels are used up`;
  if (found.approved) return `Standard ${name} was approved ${sayPartialDate(found.approved)}: ${floor}.`;
  if (found.published) return `Standard ${name} was published ${sayPartialDate(found.published)}: ${floor}.`;
  return `Standard ${name}: its approval day is not known and can lie in the year before its name: ${floor}.`;
}
