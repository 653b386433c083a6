import { dayOf, parseDay, sayDay, sayMonth } from './day';
import { isoWeekStart } from './iso-week';
import type { DaySpan } from './day-span';

const DASH = 45;
const WEEK_LETTER = 87;

/**
 * The days meant by a date of any precision: `2017` (a year), `2017-03` (a month), `2017-W09` (an ISO week) or
 * `2017-03-14` (a day). Closed-open. Null for every other text and for days, months and weeks that do not exist.
 */
export function spanOfPartialDate(text: string): DaySpan | null {
  const year = digits(text, 0, 4);
  if (!(year >= 1) || (text.length > 4 && text.charCodeAt(4) !== DASH)) return null;
  if (text.length === 4) return { from: dayOf(year, 1, 1), to: dayOf(year + 1, 1, 1) };
  if (text.length === 7) return monthSpan(year, digits(text, 5, 7));
  if (text.length === 8) return text.charCodeAt(5) === WEEK_LETTER ? weekSpan(year, digits(text, 6, 8)) : null;
  return singleDay(text);
}

/** The number written at these places, or NaN when one of them is no digit. */
function digits(text: string, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (!(digit >= 0 && digit <= 9)) return NaN;
    value = value * 10 + digit;
  }
  return value;
}

/** The days of a calendar month (1 to 12), or null when there is no such month. */
export function monthSpan(year: number, month: number): DaySpan | null {
  if (!(year >= 1 && month >= 1 && month <= 12)) return null;
  return { from: dayOf(year, month, 1), to: dayOf(year, month + 1, 1) };
}

/** The days of an ISO week, Monday to Sunday, or null when the year has no such week. */
export function weekSpan(year: number, week: number): DaySpan | null {
  const from = year < 1 ? null : isoWeekStart(year, week);
  return from === null ? null : { from, to: from + 7 };
}

function singleDay(text: string): DaySpan | null {
  const from = parseDay(text);
  return from === null ? null : { from, to: from + 1 };
}

/** A partial date in words: `2017`, `Mar 2017`, `week 9 of 2017`, `14 Mar 2017`; text that is none is given back. */
export function sayPartialDate(text: string): string {
  const span = spanOfPartialDate(text);
  if (!span || text.length === 4) return text;
  if (text.length === 7) return sayMonth(span.from);
  return text.includes('W') ? `week ${Number(text.slice(6))} of ${text.slice(0, 4)}` : sayDay(span.from);
}
