import type { DaySet, DaySpan } from '../day';
import { minimalHittingSets } from './minimal-hitting-sets';

/**
 * Every smallest group of day sets that share no day within the bounds, as places in the list, smaller groups first.
 * None when all sets share a day. A group shares no day exactly when each day is ruled out by one of its members, so
 * the groups are the minimal sets that hit, for each day, the sets that rule it out.
 */
export function minimalConflicts(sets: readonly DaySet[], bounds: DaySpan): number[][] {
  const masks = new Set<number>();
  for (const from of cutsOf(sets, bounds)) {
    let mask = 0;
    sets.forEach((set, place) => {
      if (!set.some((span) => span.from <= from && from < span.to)) mask |= 1 << place;
    });
    if (mask === 0) return [];
    masks.add(mask);
  }
  return minimalHittingSets([...masks], sets.length);
}

/** The first days of all stretches in which no set begins or ends. */
function cutsOf(sets: readonly DaySet[], bounds: DaySpan): Set<number> {
  const cuts = new Set<number>([bounds.from]);
  for (const set of sets)
    for (const { from, to } of set)
      for (const cut of [from, to]) if (cut > bounds.from && cut < bounds.to) cuts.add(cut);
  return cuts;
}
