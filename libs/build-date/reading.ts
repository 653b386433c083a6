import { ALL_DAYS, type Day, type DaySet } from '../day';
import type { EvidenceProblemCode } from './answer';

/** What one piece of evidence says. The sentence is built only when somebody asks, because most readers want days. */
export interface Reading {
  /** May reach beyond the bounds and may have an open side. */
  readonly days: DaySet;
  readonly problem: EvidenceProblemCode | null;
  readonly say: () => string;
}

const EVERY_DAY: DaySet = [ALL_DAYS];

/** A piece that says something. */
export function says(days: DaySet, say: () => string): Reading {
  return { days, problem: null, say };
}

/** A piece that says nothing because it cannot be read; it rules no day out. */
export function saysNothing(problem: EvidenceProblemCode, say: () => string): Reading {
  return { days: EVERY_DAY, problem, say };
}

/** The day and every later one. */
export function notBefore(from: Day): DaySet {
  return [{ from, to: Infinity }];
}

/** Every day earlier than the given one. */
export function before(to: Day): DaySet {
  return [{ from: -Infinity, to }];
}
