import { saySpan, type DaySpan } from './day-span';
import type { Day } from './day';

/**
 * A set of days as closed-open spans. Canonical form: sorted, none empty, none touching the next; so two sets
 * hold the same days exactly when their spans are equal.
 */
export type DaySet = readonly DaySpan[];

/** No day at all. */
export const NO_DAYS: DaySet = [];

/** Brings spans in any order, overlapping or touching, to the canonical form; empty ones vanish. */
export function daySet(spans: readonly DaySpan[]): DaySet {
  if (isCanonical(spans)) return spans;
  const sorted = [...spans].filter((span) => span.from < span.to).sort((a, b) => a.from - b.from);
  const joined: DaySpan[] = [];
  for (const span of sorted) {
    const last = joined[joined.length - 1];
    if (last && span.from <= last.to) joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else joined.push({ from: span.from, to: span.to });
  }
  return joined;
}

/** Most spans come sorted and apart already; to look is much cheaper than to sort. */
function isCanonical(spans: readonly DaySpan[]): boolean {
  for (let i = 0; i < spans.length; i++) {
    if (!(spans[i]!.from < spans[i]!.to)) return false;
    if (i > 0 && !(spans[i - 1]!.to < spans[i]!.from)) return false;
  }
  return true;
}

/** Days in either set. */
export function unionOf(a: DaySet, b: DaySet): DaySet {
  return daySet([...a, ...b]);
}

/** Days in both sets; one walk along the two sorted lists. */
export function intersectionOf(a: DaySet, b: DaySet): DaySet {
  const shared: DaySpan[] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    const from = Math.max(a[i]!.from, b[j]!.from);
    const to = Math.min(a[i]!.to, b[j]!.to);
    if (from < to) shared.push({ from, to });
    if (a[i]!.to < b[j]!.to) i++;
    else j++;
  }
  return shared;
}

/** Days of `within` that the set does not hold. */
export function complementOf(set: DaySet, within: DaySpan): DaySet {
  const rest: DaySpan[] = [];
  let from = within.from;
  for (const span of set) {
    if (span.from > from) rest.push({ from, to: Math.min(span.from, within.to) });
    from = Math.max(from, span.to);
    if (from >= within.to) break;
  }
  if (from < within.to) rest.push({ from, to: within.to });
  return rest.filter((span) => span.from < span.to);
}

/** Days of the first set that the second does not hold. */
export function differenceOf(a: DaySet, b: DaySet): DaySet {
  if (a.length === 0) return NO_DAYS;
  return intersectionOf(a, complementOf(b, { from: a[0]!.from, to: a[a.length - 1]!.to }));
}

/** The set moved by a whole number of days. */
export function shiftBy(set: DaySet, days: number): DaySet {
  return set.map((span) => ({ from: span.from + days, to: span.to + days }));
}

/** True when the set holds the day. */
export function setHolds(set: DaySet, value: Day): boolean {
  let [low, high] = [0, set.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const span = set[middle]!;
    if (value < span.from) high = middle - 1;
    else if (value >= span.to) low = middle + 1;
    else return true;
  }
  return false;
}

/** True when every day of `inner` is in `outer`. */
export function isSubset(inner: DaySet, outer: DaySet): boolean {
  return sameDays(intersectionOf(inner, outer), inner);
}

/** True when both sets hold the same days. */
export function sameDays(a: DaySet, b: DaySet): boolean {
  return a.length === b.length && a.every((span, i) => span.from === b[i]!.from && span.to === b[i]!.to);
}

/** How many days the set holds; Infinity when a side is open. */
export function measureOf(set: DaySet): number {
  return set.reduce((sum, span) => sum + (span.to - span.from), 0);
}

/** The smallest single span that holds the whole set, or null for the empty set. */
export function envelopeOf(set: DaySet): DaySpan | null {
  return set.length === 0 ? null : { from: set[0]!.from, to: set[set.length - 1]!.to };
}

/** The set in words, spans joined by `or`; `no day` when empty. */
export function saySet(set: DaySet): string {
  return set.length === 0 ? 'no day' : set.map((span) => saySpan(span)).join(', or ');
}
