import type { TrailEntry } from '../../contracts';
import type { KnownOfUnit } from '../build-days/facts-of-unit';

/** The end of the trail: whoever has written it down can prove later that nothing before it was changed. */
export interface TrailHead {
  readonly place: string;
  /** SHA-256 in hexadecimal. */
  readonly hash: string;
}

/** An entry as it is stored: which position it speaks of, and the civil day at the shop; the ruling is worked out. */
export interface StoredTrailEntry extends Omit<TrailEntry, 'ruling'> {
  readonly cursor: string;
  readonly position: string | null;
  readonly day: string;
}

/** One change of what is known of a unit. */
export interface KnownChange {
  /** Of the entry that tells of it. */
  readonly cursor: string;
  /** What was known before, of that which changed; the rest is left out. */
  readonly before: Partial<KnownOfUnit>;
}

export interface TrailStore {
  /** Place and hash of the last row; null while there is none. */
  head(): Promise<TrailHead | null>;
  /**
   * What touched the unit, oldest first, after the cursor; each entry with the cursor that follows it. Holds the
   * verdicts that rechecks changed too.
   */
  ofUnit(unitId: number, after: string | null, limit: number): Promise<readonly StoredTrailEntry[]>;
  /** Every change of what is known of the unit, newest first. */
  knownChanges(unitId: number): Promise<readonly KnownChange[]>;
}
