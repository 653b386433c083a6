import type { Verdict } from '../fit-rules';
import type { Stage } from './stages';

/** What stands in one place, as far as the gates ask. */
export interface PlaceFacts {
  readonly name: string;
  /** Looked at: a part, marks or a condition is recorded, or it is left out with a reason. */
  readonly recorded: boolean;
  readonly leftOut: boolean;
  readonly condition: 'sound' | 'worn' | 'sheared' | 'missing' | null;
  /** The verdict on what was found there; null where nothing is to be judged. */
  readonly verdict: Verdict | null;
  /** A manager has accepted what was found here, and the acceptance has not run out. */
  readonly accepted: boolean;
}

export interface PositionFacts {
  readonly code: string;
  readonly name: string;
  readonly places: readonly PlaceFacts[];
  /** One answer over everything that is not known, and something decides it. */
  readonly rulingSettled: boolean;
}

export interface PickFacts {
  /** Null for a spare that belongs to no position. */
  readonly position: string | null;
  readonly part: string;
  readonly purpose: 'fit' | 'spare';
  readonly state: 'picked' | 'fitted' | 'returned' | 'given';
  readonly verdict: Verdict | null;
  /** A manager allowed this part though it is neither right nor allowed. */
  readonly exception: boolean;
}

export interface FlagFacts {
  readonly position: string;
  readonly placeName: string;
  /** `lapsed`: accepted until a day that has passed. */
  readonly state: 'open' | 'accepted' | 'lapsed' | 'settled';
}

/** What the owner is asked to pay as things stand, and what they said yes to, in minor units. */
export interface MoneyFacts {
  readonly totalMinor: number;
  /** Null while the owner has not said yes to anything. */
  readonly authorisedMinor: number | null;
  readonly currency: string;
}

/** Everything the gates and moves of one ticket rest on. */
export interface TicketFacts {
  readonly stage: Stage;
  readonly onHold: boolean;
  /** How the ticket ended; null while the unit is in the shop. */
  readonly closed: 'handed-over' | 'cancelled' | null;
  readonly lineKnown: boolean;
  /** The serial number is recorded, or why there is none to read. */
  readonly serialRecorded: boolean;
  readonly positions: readonly PositionFacts[];
  readonly picks: readonly PickFacts[];
  readonly flags: readonly FlagFacts[];
  readonly money: MoneyFacts;
  /** Ids of the safety points ticked so far. */
  readonly safetyTicked: readonly string[];
}
