import { dayOf, type Day, type DaySet, type DaySpan } from '../day';

/** No unit the shop sees was built before this day. */
export const EARLIEST_BUILD_DAY: Day = dayOf(1950, 1, 1);

/** The days a unit can have been built: 1 January 1950 to the day after today, both inside (a zone may be ahead). */
export function boundsOf(today: Day): DaySpan {
  return { from: EARLIEST_BUILD_DAY, to: today + 2 };
}

/** True when the set and the bounds share a day. */
export function reaches(days: DaySet, bounds: DaySpan): boolean {
  for (const span of days) if (span.from < bounds.to && span.to > bounds.from) return true;
  return false;
}
