import type {
  CameFrom,
  LabourLine,
  Marks,
  PromisedFilter,
  StageName,
  StrengthView,
  TicketCard,
  VerdictWord,
} from '../../contracts';

/** How the owner said yes, as kept on the ticket. */
export interface AuthorisationRow {
  readonly by: string;
  readonly how: 'in-person' | 'phone' | 'email' | 'signature';
  readonly amountMinor: number;
  /** The revision of the estimate it was said to; words from before there were revisions have none. */
  readonly revision?: number | null;
  readonly at: string;
  readonly recordedBy?: string | null;
}

/** The ticket's own columns. Days are `YYYY-MM-DD`, instants ISO 8601. */
export interface TicketRow {
  readonly id: number;
  readonly number: string;
  readonly version: number;
  readonly unitId: number;
  readonly ownerId: number;
  readonly locationId: number;
  readonly stage: StageName;
  readonly complaint: string;
  readonly bench: {
    readonly id: number;
    readonly code: string;
    readonly name: string;
    readonly location: string;
  } | null;
  readonly promisedOn: string | null;
  readonly holdReason: string | null;
  readonly cancelReason: string | null;
  readonly openedAt: string;
  readonly closedAt: string | null;
  readonly handedOver: boolean;
  readonly labourMinutes: number;
  readonly labourMinor: number;
  readonly labourLines: readonly LabourLine[];
  readonly authorisation: AuthorisationRow | null;
  readonly safetyChecks: readonly string[];
}

/** Columns a change may set; a column left out stays as it is. */
export interface TicketPatch {
  readonly stage?: StageName;
  readonly complaint?: string;
  readonly promisedOn?: string | null;
  readonly holdReason?: string | null;
  readonly cancelReason?: string | null;
  readonly closedAt?: number | null;
  readonly handedOver?: boolean;
  /** Their sums are kept beside them. */
  readonly labourLines?: readonly LabourLine[];
  readonly authorisation?: AuthorisationRow;
  readonly safetyChecks?: readonly string[];
}

/** Something that happened; the page's sentence is made from kind and data when it is read. */
export interface NewEvent {
  readonly kind: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly personId: number | null;
}
export interface EventRow extends NewEvent {
  readonly id: number;
  readonly at: string;
  readonly personName: string | null;
}

export interface NewPlaceRecord {
  readonly positionId: number;
  readonly place: number;
  readonly side: 'found' | 'left';
  readonly partId: number | null;
  readonly partText: string | null;
  readonly pack: number | null;
  readonly marks: Marks | null;
  readonly candidates: readonly number[];
  /** How a part without a readable number was told, in a sentence. */
  readonly told: string | null;
  readonly condition: 'sound' | 'worn' | 'sheared' | 'missing' | null;
  readonly fittedOn: string | null;
  readonly leftOutWhy: string | null;
}
export interface PlaceRecordRow extends NewPlaceRecord {
  readonly id: number;
  readonly recordedAt: string;
  readonly recordedBy: string | null;
}

/** What a place held before this ticket, by its newest earlier record. */
export interface BeforeRow {
  readonly positionId: number;
  readonly place: number;
  readonly partId: number | null;
  readonly ticket: string;
  readonly on: string;
}

export interface NewPick {
  readonly positionId: number | null;
  readonly partId: number;
  readonly quantity: number;
  readonly purpose: 'fit' | 'spare';
  readonly priceMinor: number;
  readonly exceptionReason: string | null;
  readonly cameFrom: CameFrom;
  /** The positions a spare serves that was picked for none by name. */
  readonly spareFor: readonly number[];
}
export interface PickRow extends NewPick {
  readonly id: number;
  readonly state: 'picked' | 'fitted' | 'returned' | 'given';
  readonly exceptionBy: string | null;
}

/** Spares of a unit that went out with its owner, with how they are judged where they belong. */
export interface SpareRow {
  readonly pickId: number;
  readonly ticketId: number;
  readonly ticket: string;
  readonly part: { readonly key: string; readonly number: string; readonly name: string };
  readonly quantity: number;
  /** `YYYY-MM-DD` */
  readonly givenOn: string | null;
  readonly verdict: VerdictWord | null;
}

export interface EarlierTicketRow {
  readonly id: number;
  readonly number: string;
  readonly closedOn: string | null;
  readonly complaint: string;
}

export interface BoardFilter {
  readonly locationId: number;
  readonly bench?: number;
  readonly owner?: number;
  readonly flagged?: boolean;
  readonly q?: string;
  /** By the promised day, as seen from `today`. */
  readonly promised?: PromisedFilter;
  readonly today: string;
}

/** What a person may have typed, in the forms the columns are compared in. */
export interface SearchTerms {
  readonly text: string;
  /** Letters and digits only, upper case: serials and ticket numbers. */
  readonly squeezed: string;
  /** Digits only: phones. Empty when fewer than three. */
  readonly digits: string;
  /** The text as each maker would write a part number. */
  readonly partKeys: readonly string[];
}
export type SearchRow = TicketCard & { readonly closedOn: string | null; readonly matched: string };

export interface TicketStore {
  /** The new ticket's id, on no bench yet; its number runs within the year of `at`. Null when the unit has an open one. */
  insert(ticket: {
    locationId: number;
    unitId: number;
    ownerId: number;
    complaint: string;
    promisedOn: string | null;
    at: number;
  }): Promise<number | null>;
  byId(id: number): Promise<TicketRow | null>;
  /** Sets the columns and raises the version when it is still `version`; false when it is not. */
  change(id: number, version: number, patch: TicketPatch): Promise<boolean>;
  addEvents(ticketId: number, events: readonly NewEvent[]): Promise<void>;
  records(ticketId: number): Promise<readonly PlaceRecordRow[]>;
  /** Inserts or overwrites one record per place and side, in one statement. */
  putRecords(ticketId: number, unitId: number, records: readonly NewPlaceRecord[], personId: number): Promise<void>;
  insertPick(ticketId: number, pick: NewPick, personId: number): Promise<number>;
  /** Sets each named pick of the ticket to its state, in one statement. */
  setPickStates(ticketId: number, states: readonly { id: number; state: PickRow['state'] }[]): Promise<void>;
  /** Spares the owner has, given along with earlier tickets of the unit. */
  spares(unitId: number): Promise<readonly SpareRow[]>;
  earlier(unitId: number, ticketId: number): Promise<readonly EarlierTicketRow[]>;
  board(filter: BoardFilter): Promise<readonly TicketCard[]>;
  /** Owners with an open ticket at the location, by name. */
  ownersOnBoard(locationId: number): Promise<readonly { id: number; name: string }[]>;
  search(terms: SearchTerms, locationId: number, most: number): Promise<readonly SearchRow[]>;
}

/** What a manager reads under a flag. */
export interface FlagReason {
  readonly kind: 'verdict' | 'mismatch';
  readonly rule: string | null;
  /** Key of the source. */
  readonly source: string | null;
  /** Key of the required part. */
  readonly required: string | null;
  readonly barredWhy: string | null;
  readonly action: string | null;
  readonly sentence: string;
  /** How a shear fastener compares with the required one. */
  readonly strength: StrengthView | null;
}

export interface FlagRow {
  readonly id: number;
  readonly version: number;
  readonly ticket: {
    readonly id: number;
    readonly number: string;
    readonly stage: StageName;
    readonly bench: string | null;
  };
  readonly unitId: number;
  readonly unit: string;
  readonly owner: string;
  readonly positionId: number;
  readonly position: string;
  readonly positionName: string;
  readonly place: number;
  readonly placeName: string;
  readonly verdict: VerdictWord;
  readonly severity: number;
  readonly part: { readonly id: number; readonly key: string; readonly number: string; readonly name: string } | null;
  readonly required: { readonly key: string; readonly number: string; readonly name: string } | null;
  readonly reason: FlagReason;
  readonly state: 'open' | 'accepted' | 'sent-back' | 'callback' | 'cleared';
  readonly openedAt: string;
  readonly decidedBy: string | null;
  readonly decidedAt: string | null;
  readonly decisionWhy: string | null;
  readonly acceptedUntil: string | null;
}

export interface FlagDecision {
  readonly state: 'accepted' | 'sent-back' | 'callback';
  readonly why: string;
  readonly until: string | null;
  readonly personId: number;
  readonly revision: number;
}

export interface FlagStore {
  byId(id: number): Promise<FlagRow | null>;
  /** Open flags of the location's open tickets, worst first, then oldest; at most 500. */
  open(locationId: number): Promise<readonly FlagRow[]>;
  /** Flags of the location that a manager has decided, newest first; at most 500. */
  decided(locationId: number): Promise<readonly FlagRow[]>;
  /** False when its version has moved on. */
  decide(id: number, version: number, decision: FlagDecision): Promise<boolean>;
  /** A manager has excepted the pick: the flag on it counts as accepted, for his reason. */
  acceptPicked(
    ticketId: number,
    pickId: number,
    decision: { why: string; personId: number; revision: number },
  ): Promise<void>;
  /**
   * Makes the open mismatch flags of the ticket be exactly these: others of that kind are cleared, and a place that
   * has an open flag of another kind keeps that one.
   */
  putMismatches(
    ticketId: number,
    unitId: number,
    flags: readonly {
      positionId: number;
      place: number;
      partId: number | null;
      verdict: VerdictWord;
      severity: number;
      reason: FlagReason;
    }[],
  ): Promise<void>;
}
