import type { SerialScheme, StandardEdition } from '../../build-date';
import type { RulebookDocument } from '../../contracts';
import type { FastenerSpec, ShearJoint } from '../../fastener';
import type { SupersessionFile } from '../../fit-rules';
import type { NumberRules, SupersessionDirection } from '../../part-number';
import type { BuiltColumns } from './unit-store';

/** Rows as sets: what an import reads and writes, a few statements for each call however many rows there are. */
export interface BulkStore {
  /** From here on, the trail keeps what this transaction writes by the statement and not row by row. */
  keepTrailByBatch(): Promise<void>;
  saveMakers(rows: readonly { code: string; name: string; numberRules: NumberRules }[]): Promise<void>;
  /** Numbers of the maker's parts, listed or not. */
  numbersOf(makerCode: string): Promise<readonly { number: string; canonical: string }[]>;
  saveParts(rows: readonly BulkPart[]): Promise<void>;
  /** Adds numbers that were read off a part but are in no catalogue; those that are there stay as they are. */
  addUnlisted(rows: readonly { key: string; maker: string; number: string; canonical: string }[]): Promise<void>;
  /** What is known now of the parts with these keys as those that give way. */
  supersessionsFrom(keys: readonly string[]): Promise<readonly KnownSupersession[]>;
  saveSupersessions(closes: readonly number[], opens: readonly NewSupersession[], at: number): Promise<void>;
  saveLines(rows: readonly BulkLine[]): Promise<void>;
  /** Positions of every line by the line's code. */
  positions(): Promise<readonly BulkPosition[]>;
  savePositions(rows: readonly BulkPosition[]): Promise<void>;
  /** Owners of the location, or of every one where it is null. */
  owners(locationId: number | null): Promise<readonly BulkOwner[]>;
  insertOwners(rows: readonly NewBulkOwner[]): Promise<readonly number[]>;
  updateOwners(rows: readonly (Omit<NewBulkOwner, 'locationId'> & { id: number })[]): Promise<void>;
  unitsBySerials(serials: readonly string[], locationId: number | null): Promise<readonly BulkUnit[]>;
  unitsByIds(ids: readonly number[], locationId: number | null): Promise<readonly BulkUnit[]>;
  /** Units of these owners that have no serial. */
  bareUnits(ownerIds: readonly number[]): Promise<readonly BulkUnit[]>;
  /** Each with the build days that its evidence leaves. */
  insertUnits(rows: readonly (NewBulkUnit & BuiltColumns)[]): Promise<readonly number[]>;
  updateUnits(rows: readonly (NewBulkUnit & { id: number })[]): Promise<void>;
  addEvidence(rows: readonly { unitId: number; kind: string; data: object }[], personId: number): Promise<void>;
  ticketsByNumbers(numbers: readonly string[]): Promise<readonly BulkTicket[]>;
  /** Closed tickets with what was recorded on them; the units' holdings are brought in step. */
  insertTickets(rows: readonly NewBulkTicket[], personId: number): Promise<void>;
  /** Serial schemes by themselves; one whose version has moved on is left, and not counted in the answer. */
  saveSchemes(rows: readonly BulkScheme[], personId: number): Promise<number>;
  /** Serial schemes by their code and editions by standard and year, new ones and changed ones. */
  saveShopData(schemes: readonly SerialScheme[], editions: readonly StandardEdition[], personId: number): Promise<void>;
  /** Papers that are published or withdrawn, as a rulebook file has them. */
  addSources(rows: readonly RulebookDocument['sources'][number][]): Promise<void>;
  /** Marks versions of rules that are no longer known as closed by this revision, where no other is named. */
  closeEnded(revision: number): Promise<void>;
  addSupersessions(rows: readonly SupersessionFile[]): Promise<void>;
  /** Rows for an export, in pages by key; see the kinds of libs/sheets. */
  pageOfParts(afterId: number, limit: number): Promise<readonly (BulkPart & { id: number })[]>;
  supersessions(): Promise<readonly NewSupersession[]>;
  pageOfUnits(
    after: { owner: number; unit: number },
    limit: number,
    locationId: number | null,
  ): Promise<readonly OwnerWithUnit[]>;
  pageOfTickets(afterId: number, limit: number, locationId: number | null): Promise<readonly BulkTicket[]>;
}

/** A serial scheme to be kept; `before` is the one on file that it takes the place of. */
export interface BulkScheme {
  readonly scheme: SerialScheme;
  readonly makerId: number;
  readonly before: { readonly id: number; readonly version: number } | null;
}

export interface BulkPart {
  readonly key: string;
  readonly maker: string;
  readonly number: string;
  readonly canonical: string;
  readonly name: string;
  readonly fastener: FastenerSpec | null;
  readonly priceMinor: number | null;
  /** Its trade numbers, fourteen digits each, with the pieces in the bag; left out, they stay as they are. */
  readonly tradeNumbers?: readonly { readonly gtin: string; readonly pack: number }[];
}

export interface NewSupersession {
  readonly from: string;
  readonly to: string | null;
  readonly direction: SupersessionDirection;
}
export interface KnownSupersession extends NewSupersession {
  readonly id: number;
}

export interface Named {
  readonly code: string;
  readonly name: string;
}
export interface BulkLine {
  readonly code: string;
  readonly maker: string;
  readonly name: string;
  readonly kind: string;
  readonly producedFrom: string;
  readonly producedUntil: string | null;
  readonly models: readonly { readonly number: string; readonly name: string }[];
  readonly options: readonly Named[];
  /** Kept where it is not given. */
  readonly sketch?: string;
}

export interface BulkPosition {
  readonly line: string;
  readonly code: string;
  readonly name: string;
  readonly assembly: string;
  readonly placeNames: readonly string[];
  readonly sketchX: number;
  readonly sketchY: number;
  readonly sortOrder: number;
  readonly joint: ShearJoint | null;
}

export interface NewBulkOwner {
  readonly locationId: number;
  readonly name: string;
  readonly phone: string;
  readonly email: string;
  readonly address: string;
  readonly consent: boolean;
}
export interface BulkOwner extends NewBulkOwner {
  readonly id: number;
}

export interface NewBulkUnit {
  readonly ownerId: number;
  readonly line: string | null;
  readonly model: string | null;
  readonly serial: string | null;
  readonly serialAbsent: string | null;
  readonly options: Readonly<Record<string, boolean>>;
  readonly plate: string;
}
export interface BulkUnit extends NewBulkUnit {
  readonly id: number;
  readonly evidence: readonly { readonly kind: string; readonly data: Readonly<Record<string, unknown>> }[];
  readonly hasRecords: boolean;
  readonly locationId: number;
}

export interface OwnerWithUnit {
  readonly owner: BulkOwner;
  readonly unit: BulkUnit | null;
}

export interface BulkRecord {
  readonly position: string;
  readonly place: number;
  readonly side: 'found' | 'left';
  /** Part key, and the number as it was read; null where no number was. */
  readonly part: string | null;
  readonly partText: string | null;
  readonly pack: number | null;
  readonly candidates: readonly string[];
  readonly told: string | null;
  readonly condition: string | null;
  readonly fittedOn: string | null;
  readonly leftOut: string | null;
}
export interface NewBulkTicket {
  readonly number: string;
  readonly unitId: number;
  readonly opened: string;
  readonly closed: string;
  readonly complaint: string;
  readonly cancelled: string | null;
  readonly records: readonly BulkRecord[];
}
export interface BulkTicket extends NewBulkTicket {
  readonly id: number;
  readonly line: string | null;
  readonly serial: string | null;
  /** False while the unit is in the shop. */
  readonly isClosed: boolean;
}
