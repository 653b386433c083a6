import type { RecheckScope } from '../../contracts';
import type { Day } from '../../day';
import type { UnitFacts, Verdict } from '../../fit-rules';
import type { ConsequencePlan, PlaceOfUnit } from '../judge-installs/consequence-plan';
import type { JudgementRecord } from '../judge-installs/judgement-record';

export interface HeldUnit {
  readonly id: number;
  readonly ownerId: number;
  readonly facts: UnitFacts;
  /** The ticket on which the unit is in the shop now. */
  readonly openTicketId: number | null;
}

/** A part that is in no place of the unit: picked for it and not fitted yet, or a spare. */
export interface LoosePart {
  readonly pickId: number;
  readonly purpose: 'fit' | 'spare';
  /** Pieces. */
  readonly quantity: number;
  /** It went out with the owner. */
  readonly given: boolean;
}

/** One part in one place of one unit: the newest record of that place; or a loose part, whose place is below zero. */
export interface HeldInstall {
  readonly unit: HeldUnit;
  readonly positionId: number;
  readonly position: string;
  readonly place: number;
  readonly ticketId: number;
  readonly partId: number | null;
  /** Part keys: the part, or all it can be. */
  readonly parts: readonly string[];
  readonly fittedOn: Day | null;
  readonly verdict: Verdict | null;
  readonly judgement: JudgementRecord | null;
  /** The facts of the unit that the judgement was asked with; null where there is no judgement. */
  readonly judgedAs: UnitFacts | null;
  readonly judgedRevision: number | null;
  /** The day the recording ticket was closed; null while it is open. */
  readonly closedOn: Day | null;
  /** Null for what is in its place. */
  readonly loose: LoosePart | null;
}

/** Installs of a scope whose units lie in `[fromUnit, toUnit]` (both included). */
export interface ScopeChoice {
  readonly scope: RecheckScope;
  readonly fromUnit: number;
  readonly toUnit: number;
  /** Only these units, unless it is empty or left out. */
  readonly units?: readonly number[];
  /** Units whose recording ticket closed on this day or later are read; null reads all. */
  readonly lookBackFrom: Day | null;
}

/** Which installs: those of some units, those in some places, or those of a scope. */
export type InstallChoice =
  { readonly unitIds: readonly number[] } | { readonly places: readonly PlaceOfUnit[] } | ScopeChoice;

export interface StandingFlag {
  readonly id: number;
  readonly ticketId: number;
  readonly unitId: number;
  readonly positionId: number;
  readonly place: number;
  readonly partId: number | null;
  readonly verdict: string;
  readonly severity: number;
  readonly state: 'open' | 'accepted' | 'sent-back' | 'callback' | 'cleared';
  readonly acceptedUntil: Day | null;
  readonly rule: string | null;
  readonly kind: 'verdict' | 'mismatch';
}

export interface StandingReason {
  readonly id: number;
  readonly callbackId: number;
  /** The callback is still open or booked. */
  readonly live: boolean;
  readonly withdrawn: boolean;
  readonly unitId: number;
  readonly positionId: number;
  readonly place: number;
  readonly partId: number | null;
  /** Key of the source. */
  readonly source: string;
}

export interface StandingNote {
  readonly id: number;
  readonly unitId: number;
  readonly positionId: number;
  readonly place: number;
  readonly source: string;
  readonly open: boolean;
  /** The part about which a person settled it by hand; undefined where nobody did. */
  readonly settledAbout?: number | null;
}

/** What earlier judgements have led to. */
export interface StandingConsequences {
  readonly flags: readonly StandingFlag[];
  readonly reasons: readonly StandingReason[];
  readonly notes: readonly StandingNote[];
}

export interface AppliedCounts {
  readonly changed: number;
  readonly flagsRaised: number;
  readonly flagsCleared: number;
  readonly callbacksOpened: number;
  readonly callbacksClosed: number;
}

/** How a place is called before people. */
export interface PlaceNames {
  readonly unitId: number;
  readonly positionId: number;
  readonly place: number;
  readonly unit: string;
  readonly owner: string;
  readonly position: string;
  readonly placeName: string;
}

export interface InstallStore {
  /** The next units of the scope after `after`, in order of id, at most `limit`; both ends included. Null: no more. */
  nextUnits(
    scope: RecheckScope,
    lookBackFrom: Day | null,
    after: number,
    limit: number,
  ): Promise<Required<Pick<ScopeChoice, 'fromUnit' | 'toUnit' | 'units'>> | null>;
  names(places: readonly PlaceOfUnit[]): Promise<readonly PlaceNames[]>;
  /** Locks the units of the choice in order of id, so that nobody changes their facts meanwhile; answers their ids. */
  lockUnits(choice: InstallChoice): Promise<readonly number[]>;
  /** In order of unit, position, place. */
  held(choice: InstallChoice): Promise<readonly HeldInstall[]>;
  consequences(unitIds: readonly number[]): Promise<StandingConsequences>;
  /** Writes a plan, each kind of row with one statement. The unique keys make a second writing of it change nothing. */
  apply(plan: ConsequencePlan, about: { revision: number; recheckId: number | null }): Promise<AppliedCounts>;
}
