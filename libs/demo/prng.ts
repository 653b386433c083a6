/** A source of chance that gives the same run for the same seed, on every machine. */
export interface Chance {
  /** A number from 0 up to, not including, 1. */
  readonly next: () => number;
  /** A whole number from `low` to `high`, both included. */
  readonly whole: (low: number, high: number) => number;
  /** True in the given share of cases, 0 to 1. */
  readonly happens: (share: number) => boolean;
  /** One of the list, each as likely as the next; the list must not be empty. */
  readonly oneOf: <T>(list: readonly T[]) => T;
  /** One of the list, each as likely as its weight says. */
  readonly weighted: <T>(list: readonly (readonly [T, number])[]) => T;
}

/**
 * Mulberry32 (Tommy Ettinger, public domain, from memory): 32 bits of state, quite enough for a demo, and short
 * enough to be read. Not for secrets.
 */
export function makeChance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    next,
    whole,
    happens: (share) => next() < share,
    oneOf: (list) => list[whole(0, list.length - 1)]!,
    weighted(list) {
      let left = next() * list.reduce((sum, [, weight]) => sum + weight, 0);
      for (const [value, weight] of list) if ((left -= weight) < 0) return value;
      return list[list.length - 1]![0];
    },
  };
}
