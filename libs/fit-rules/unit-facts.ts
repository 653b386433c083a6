import type { DaySet } from '../day';

/** A serial number as an ordered key within one scheme of the maker. A null key: the scheme is known, the key is not. */
export interface SerialKey {
  readonly scheme: string;
  readonly key: string | null;
}

/** What is known of one unit, now. */
export interface UnitFacts {
  readonly line: string;
  /** Null: not known. */
  readonly model: string | null;
  /** True: fitted. False: not fitted. Absent: not known. */
  readonly options: Readonly<Record<string, boolean>>;
  /** Null: neither serial nor scheme is known, or the unit bears none. */
  readonly serial: SerialKey | null;
  /** The possible build dates. Empty when the evidence contradicts itself; then nothing can be decided. */
  readonly built: DaySet;
}

/** What a unit must tell besides its build date. */
export type SlotFacts = Omit<UnitFacts, 'built'>;
