import type { PersonalData, Retention } from '../../contracts';

/** An owner as erasing looks at one; held until the transaction ends. */
export interface ErasableOwner {
  readonly id: number;
  readonly version: number;
  readonly erased: boolean;
  /** Number of a ticket that is open; null when none is. */
  readonly openTicket: string | null;
  /** A call about a stop use waits. */
  readonly urgentCall: boolean;
}

export interface PersonalDataStore {
  /** Everything that is kept of the owner; null also for one outside of the sight. */
  of(ownerId: number, sight: number | null): Promise<PersonalData | null>;
  /** Locks and reads the owner; null also for one outside of the sight. */
  lock(ownerId: number, sight: number | null): Promise<ErasableOwner | null>;
  /** Takes out what names or reaches the person, closes calls that can no longer be made, and raises the version. */
  erase(ownerId: number): Promise<void>;
  /** Owners whose last ticket closed before the instant and about whom nothing is open, those longest silent first. */
  due(before: number, most: number): Promise<{ readonly owners: Retention['due']; readonly count: number }>;
}

/** After how many years without a ticket an owner is forgotten; null or none: never. */
export const RETENTION_YEARS = 'owner-retention-years';
/** The day on which that was last looked after, `YYYY-MM-DD`. */
export const RETENTION_DAY = 'owner-retention-day';
