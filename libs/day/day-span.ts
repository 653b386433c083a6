import { sayDay, type Day } from './day';

/** Days `from` up to, but not including, `to`. `-Infinity` and `Infinity` stand for an open side. */
export interface DaySpan {
  readonly from: Day;
  readonly to: Day;
}

/** Every day there is. */
export const ALL_DAYS: DaySpan = { from: -Infinity, to: Infinity };

/** Makes a closed-open span; throws when it would hold no day, because an empty span is a mistake, never a default. */
export function daySpan(from: Day, to: Day): DaySpan {
  if (!(from < to)) throw new RangeError(`a span must end after it begins: [${from}, ${to})`);
  return { from, to };
}

/** True when the day lies in the span: on `from` yes, on `to` no. */
export function spanHolds(span: DaySpan, value: Day): boolean {
  return span.from <= value && value < span.to;
}

/** The days that both spans hold, or null when they share none; spans that only touch share none. */
export function meetOfSpans(a: DaySpan, b: DaySpan): DaySpan | null {
  const from = Math.max(a.from, b.from);
  const to = Math.min(a.to, b.to);
  return from < to ? { from, to } : null;
}

/**
 * A span in words: `3 Mar 2017 to 4 Apr 2018`, both days inside it; open sides read `since` and `until`. `say` writes a
 * day in another manner.
 */
export function saySpan({ from, to }: DaySpan, say: (day: Day) => string = sayDay): string {
  if (from === -Infinity && to === Infinity) return 'any day';
  if (from === -Infinity) return `until ${say(to - 1)}`;
  if (to === Infinity) return `since ${say(from)}`;
  return from === to - 1 ? say(from) : `${say(from)} to ${say(to - 1)}`;
}
