import { sayDay, sayPartialDate } from '../day';
import type { EvidenceOf } from './evidence';
import type { KnownEdition, PreparedShop } from './prepare-shop';
import { notBefore, says, saysNothing, type Reading } from './reading';

/**
 * A floor by the edition of a standard on the plate: not before it was approved (or published, when the approval is
 * not known). No ceiling: old labels overlap new ones, for years where an edition has a late effective day.
 */
export function readStandardEdition(evidence: EvidenceOf<'standard-edition'>, shop: PreparedShop): Reading {
  const found = shop.edition(evidence.standard, evidence.edition);
  if (found) return says(notBefore(found.floor), () => sayFloor(found));
  return saysNothing(
    'unknown-edition',
    () =>
      `Edition ${evidence.standard}-${evidence.edition} is not in the shop's list of standards; ` +
      'enter its approval day to make it count.',
  );
}

function sayFloor({ edition: { standard, edition, approved, published }, floor }: KnownEdition): string {
  const name = `Standard ${standard}-${edition}`;
  const end = `the plate is not older than ${sayDay(floor)}; no latest day, since old labels are used up.`;
  if (approved) return `${name} was approved ${sayPartialDate(approved)}: ${end}`;
  if (published) return `${name} was published ${sayPartialDate(published)}: ${end}`;
  return `${name}: its approval day is not known and can lie in the year before its name: ${end}`;
}
