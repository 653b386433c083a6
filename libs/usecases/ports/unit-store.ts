import type {
  NewOwner,
  Owner,
  RecomputeScope,
  SettledNoteView,
  UnitNoteView,
  UnitRow as OwnedUnit,
} from '../../contracts';
import type { DaySet } from '../../day';

export interface OwnerStore {
  insert(owner: NewOwner & { locationId: number }): Promise<number>;
  /** Null also for an owner of another location. */
  byId(id: number, locationId: number): Promise<Owner | null>;
  /** What was known of the person was erased: nobody is called about this owner any more, and nothing is written to it. */
  isErased(id: number): Promise<boolean>;
  /** Sets what is given and raises the version when it is still `version`; false when it is not, or the owner is erased. */
  change(id: number, version: number, patch: Partial<NewOwner>): Promise<boolean>;
  unitsOf(id: number): Promise<readonly OwnedUnit[]>;
  /** Owners of the location that are not erased, by a piece of the name, phone or address; at most `most`. */
  search(text: string, most: number, locationId: number): Promise<readonly Owner[]>;
}

/** One unit with the names of what it is. `built` is empty when the evidence contradicts itself. */
export interface UnitRow {
  readonly id: number;
  readonly version: number;
  readonly owner: Owner;
  readonly line: {
    readonly id: number;
    readonly code: string;
    readonly name: string;
    readonly sketch: string;
    readonly producedFrom: string;
    readonly producedUntil: string | null;
  } | null;
  readonly maker: { readonly id: number; readonly code: string; readonly name: string } | null;
  readonly model: { readonly id: number; readonly number: string; readonly name: string } | null;
  readonly serial: string | null;
  readonly serialAbsent: string | null;
  readonly serialScheme: string | null;
  readonly serialKey: string | null;
  readonly options: Readonly<Record<string, boolean>>;
  readonly plate: string;
  /** `boughtOn` as `YYYY-MM-DD`; null where nobody knows. */
  readonly warranty: { readonly boughtOn: string; readonly months: number } | null;
  readonly built: DaySet;
}

/** A place of a unit that was worked on, with the part it was left with; `on` as `YYYY-MM-DD`. */
export interface TouchedRow {
  readonly positionId: number;
  readonly place: number;
  readonly partId: number;
  readonly ticketId: number;
  readonly ticket: string;
  readonly on: string;
}

/** The columns that identify a unit. */
export interface UnitColumns {
  readonly lineId: number | null;
  readonly modelId: number | null;
  readonly serial: string | null;
  readonly serialAbsent: string | null;
  readonly options: Readonly<Record<string, boolean>>;
  readonly plate: string;
}

export interface EvidenceRow {
  readonly id: number;
  readonly kind: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly setAside: { readonly why: string; readonly by: string | null; readonly at: string | null } | null;
}

/** What the inference makes of a unit's evidence. */
export interface BuiltColumns {
  readonly built: DaySet;
  readonly serialScheme: string | null;
  readonly serialKey: string | null;
}

/** What a unit's possible build days rest on, without its shop data. */
export interface EvidencedRow extends Pick<UnitRow, 'id' | 'serial' | 'line' | 'maker'> {
  readonly evidence: readonly EvidenceRow[];
}

export interface UnitStore {
  byId(id: number): Promise<UnitRow | null>;
  /** Holds the unit's row until the transaction ends, so that two judgements of one unit do not cross. */
  lock(id: number): Promise<void>;
  insert(unit: UnitColumns & BuiltColumns & { ownerId: number }): Promise<number>;
  /** Raises the version when it is still `version`; false when it is not. */
  claim(id: number, version: number): Promise<boolean>;
  setIdentity(id: number, unit: UnitColumns): Promise<void>;
  /** Also keeps the envelope on the unit's installs in step. */
  setBuilt(id: number, built: BuiltColumns): Promise<void>;
  evidence(id: number): Promise<readonly EvidenceRow[]>;
  /** Locks the units of the scope with ids from `fromUnit` to `toUnit` (both included) in order of id. */
  lockTouched(scope: RecomputeScope, fromUnit: number, toUnit: number): Promise<readonly number[]>;
  /** With their evidence, in one statement. */
  evidenced(ids: readonly number[]): Promise<readonly EvidencedRow[]>;
  /** Writes those that differ from what is kept, and their envelopes on installs, with one statement. */
  setBuiltMany(built: readonly (BuiltColumns & { readonly id: number })[]): Promise<void>;
  insertEvidence(unitId: number, kind: string, data: Record<string, unknown>, personId: number): Promise<number>;
  /** `why` null takes the piece up again. */
  setAside(evidenceId: number, why: string | null, personId: number): Promise<void>;
  /** Brings what the unit holds in step with its newest records per place; changed rows lose their verdict. */
  refreshInstalls(id: number): Promise<void>;
  /** True when the unit's owner belongs to the location. */
  isAt(id: number, locationId: number): Promise<boolean>;
  setOwner(id: number, ownerId: number): Promise<void>;
  /** True when some ticket has recorded a part of this unit. */
  hasRecords(id: number): Promise<boolean>;
  setWarranty(id: number, warranty: UnitRow['warranty']): Promise<void>;
  /** Newest first; at most `most`. */
  touched(id: number, most: number): Promise<readonly TouchedRow[]>;
  /** Notes that greet the unit and are not closed. */
  notes(id: number): Promise<readonly UnitNoteView[]>;
  /** Notes that a person settled, newest first; at most `most`. */
  settledNotes(id: number, most: number): Promise<readonly SettledNoteView[]>;
  /** Closes an open note by a person's hand; null when the unit has no such open note. */
  settleNote(id: number, noteId: number, why: string, personId: number): Promise<{ readonly sentence: string } | null>;
  /** The ticket that is open for the unit, if one is. */
  openTicket(id: number): Promise<{ id: number; number: string } | null>;
}
