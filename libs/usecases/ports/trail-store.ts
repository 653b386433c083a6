import type { TrailEntry } from '../../contracts';

/** The end of the trail: whoever has written it down can prove later that nothing before it was changed. */
export interface TrailHead {
  readonly place: string;
  /** SHA-256 in hexadecimal. */
  readonly hash: string;
}

export interface TrailStore {
  /** Place and hash of the last row; null while there is none. */
  head(): Promise<TrailHead | null>;
  /**
   * What touched the unit, oldest first, after the cursor; each entry with the cursor that follows it. Holds the
   * verdicts that rechecks changed too.
   */
  ofUnit(unitId: number, after: string | null, limit: number): Promise<readonly (TrailEntry & { cursor: string })[]>;
}
