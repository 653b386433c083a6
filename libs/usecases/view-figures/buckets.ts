import { civilDateOf, dayOf, type Day } from '../../day';

/** Up to so many days are shown week by week, more month by month. */
const MOST_DAYS_BY_WEEK = 100;

/**
 * Cuts closed-open days into weeks (Monday first, ISO 8601) or calendar months; the first and the last are cut off at
 * the ends. Together they hold every day once.
 */
export function bucketsOf(from: Day, to: Day): { from: Day; to: Day }[] {
  const next = to - from <= MOST_DAYS_BY_WEEK ? nextMonday : nextMonth;
  const buckets = [];
  for (let at = from; at < to; at = Math.min(next(at), to)) buckets.push({ from: at, to: Math.min(next(at), to) });
  return buckets;
}

/** 1 January 1970, day 0, was a Thursday. */
function nextMonday(day: Day): Day {
  const sinceMonday = (((day + 3) % 7) + 7) % 7;
  return day - sinceMonday + 7;
}

function nextMonth(day: Day): Day {
  const { year, month } = civilDateOf(day);
  return dayOf(year, month + 1, 1);
}
