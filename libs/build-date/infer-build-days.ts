import { intersectionOf, type Day, type DaySet } from '../day';
import { boundsOf } from './bounds';
import type { Evidence } from './evidence';
import type { PreparedShop } from './prepare-shop';
import { read } from './read-evidence';

/**
 * The possible build days by all evidence that is not set aside and can be read; empty when it conflicts. The fast
 * way for many units: `inferBuildDates` gives the same days with the reasons.
 */
export function inferBuildDays(evidence: readonly Evidence[], shop: PreparedShop, today: Day): DaySet {
  const bounds = boundsOf(today);
  let days: DaySet = [bounds];
  for (const piece of evidence) {
    if (piece.setAside !== undefined) continue;
    const reading = read(piece, shop, bounds);
    if (reading.problem === null) days = intersectionOf(days, reading.days);
  }
  return days;
}
