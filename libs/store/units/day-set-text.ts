import type { DaySet } from '../../day';

/** A day set as PostgreSQL writes an int4multirange; the set must be bounded. */
export function writeDaySet(days: DaySet): string {
  return `{${days.map(({ from, to }) => `[${from},${to})`).join(',')}}`;
}

/** Reads what PostgreSQL wrote: canonical, closed-open, bounded. */
export function readDaySet(text: string): DaySet {
  return [...text.matchAll(/\[(-?\d+),(-?\d+)\)/g)].map((found) => ({ from: Number(found[1]), to: Number(found[2]) }));
}

/** The envelope as two columns; two zeros for no day at all. */
export function envelopeColumns(days: DaySet): { from: number; to: number } {
  return { from: days[0]?.from ?? 0, to: days[days.length - 1]?.to ?? 0 };
}
