import { civilDateOf, dayOf, parseDay, type Day } from '../../../../libs/day';

/** A span of day texts as it comes over the wire; null is an open side. */
export interface WireSpan {
  from: string | null;
  to: string | null;
}

/** Days drawn from left to right: `at` gives per cent of the width, days outside are held at the edge. */
export interface TimeScale {
  from: Day;
  to: Day;
  at: (day: Day) => number;
  /** first of January of each year shown, far enough apart to be read */
  years: { year: number; at: number }[];
}

const clamp = (value: number): number => Math.min(100, Math.max(0, value));

/** A scale that holds every closed end of the spans, with a fortieth of room on both sides. Closed-open days. */
export function timeScale(spans: readonly WireSpan[], most = 12): TimeScale {
  const ends = spans.flatMap(({ from, to }) => [from, to]).flatMap((text) => (text ? [parseDay(text)] : []));
  const days = ends.filter((value): value is Day => value !== null);
  const low = days.length > 0 ? Math.min(...days) : dayOf(2000, 1, 1);
  const high = days.length > 0 ? Math.max(...days) : dayOf(2030, 1, 1);
  const room = Math.max(60, Math.round((high - low) / 40));
  return scaleBetween(low - room, high + room, most);
}

function scaleBetween(from: Day, to: Day, most: number): TimeScale {
  const at = (value: Day) => clamp(((value - from) / (to - from)) * 100);
  const first = civilDateOf(from).year + 1;
  const last = civilDateOf(to).year;
  const step = Math.max(1, Math.ceil((last - first + 1) / most));
  const years = [];
  for (let year = first; year <= last; year += step) years.push({ year, at: at(dayOf(year, 1, 1)) });
  return { from, to, at, years };
}

/** Where a span begins and how wide it is, in per cent; at least half a per cent, so that one day can be seen. */
export function barOf(scale: TimeScale, span: WireSpan): { left: number; width: number } {
  const left = span.from === null ? 0 : scale.at(parseDay(span.from) ?? scale.from);
  const right = span.to === null ? 100 : scale.at(parseDay(span.to) ?? scale.to);
  return { left: Math.min(left, 99.5), width: Math.max(0.5, right - left) };
}
