import { daySet, type DaySet } from '../../day';

/** Reads a multirange of day numbers as PostgreSQL writes it, such as `{[100,200),[300,)}`; `{}` is no day. */
export function daySetFromText(text: string): DaySet {
  return daySet(
    [...text.matchAll(/[[(](-?\d*),(-?\d*)\)/g)].map(([, from, to]) => ({
      from: from ? Number(from) : -Infinity,
      to: to ? Number(to) : Infinity,
    })),
  );
}
