import type { PrintSettings } from '../contracts';
import type { Tax } from '../ticket';
import type { Day } from '../day';
import type { Evidence, SerialScheme, StandardEdition } from '../build-date';
import type { FastenerSpecInput, ShearJointInput } from '../fastener';
import type { FitRuleFile, SourceFile, Standing, SupersessionFile } from '../fit-rules';
import type { PartKey } from '../part-number';
import type { DemoMaker } from './makers/makers';
import type { DemoBench, DemoPerson, LocationCode } from './shop/people';

/*
 * A whole shop as plain data, without row ids: things name each other by code, key, login or number. Days are day
 * numbers of libs/day, instants epoch milliseconds. The seeder of the store gives everything its id.
 */

export interface DemoShop {
  readonly seed: number;
  readonly today: Day;
  readonly locations: readonly { readonly code: LocationCode; readonly name: string }[];
  readonly benches: readonly DemoBench[];
  readonly people: readonly DemoPerson[];
  readonly settings: {
    readonly currency: string;
    readonly prints: PrintSettings;
    readonly money: { readonly tax: Tax; readonly hourMinor: number };
    readonly lookBackMonths: number;
    readonly standing: Standing;
  };
  readonly makers: readonly DemoMaker[];
  readonly schemes: readonly SerialScheme[];
  readonly editions: readonly StandardEdition[];
  readonly lines: readonly DemoLine[];
  readonly parts: readonly DemoPart[];
  readonly supersessions: readonly SupersessionFile[];
  readonly sources: readonly DemoSource[];
  /** Every version of every published rule. */
  readonly rules: readonly FitRuleFile[];
  readonly owners: readonly DemoOwner[];
  readonly units: readonly DemoUnit[];
  readonly tickets: readonly DemoTicket[];
  readonly shelf: readonly DemoShelfItem[];
}

/** One part on the shelf of one location; figures in pieces. */
export interface DemoShelfItem {
  readonly location: LocationCode;
  readonly part: PartKey;
  readonly bin: string;
  /** Before open tickets took from it; `received` of it came in later. */
  readonly opening: number;
  readonly received: number;
  readonly packSize: number;
  readonly reorderPoint: number | null;
  readonly orderQuantity: number | null;
  readonly supplier: string;
}

export interface DemoLine {
  readonly code: string;
  readonly maker: string;
  readonly name: string;
  readonly kind: string;
  readonly models: readonly { readonly number: string; readonly name: string }[];
  readonly options: readonly { readonly code: string; readonly name: string }[];
  readonly producedFrom: Day;
  readonly producedUntil: Day | null;
  readonly sketch: string;
  readonly positions: readonly DemoPosition[];
}

export interface DemoPosition {
  readonly code: string;
  readonly name: string;
  readonly assembly: string;
  readonly placeNames: readonly string[];
  readonly sketchX: number;
  readonly sketchY: number;
  readonly joint: ShearJointInput | null;
  /** Parts that are sold for it, the oldest first. */
  readonly parts: readonly PartKey[];
}

export interface DemoPart {
  readonly key: PartKey;
  readonly maker: string;
  readonly number: string;
  readonly name: string;
  readonly priceMinor: number;
  readonly fastener: FastenerSpecInput | null;
}

export interface DemoSource extends SourceFile {
  readonly summary: string;
  readonly state: 'draft' | 'published';
  /** Null for a draft. */
  readonly publishedAt: number | null;
  /** What publishing a draft would do. */
  readonly draft: { readonly opens: FitRuleFile[]; readonly ends: { rule: string; on: string }[] } | null;
}

export interface DemoOwner {
  /** Position in the list, from 0; units and tickets name owners by it. */
  readonly index: number;
  readonly location: LocationCode;
  readonly name: string;
  readonly phone: string;
  readonly email: string;
  readonly address: string;
  readonly consent: boolean;
}

/** What the bench knows of a unit, and under `truth` what only its maker knows. */
export interface DemoUnit {
  readonly index: number;
  readonly owner: number;
  readonly line: string;
  readonly model: string;
  readonly serial: string | null;
  readonly serialAbsent: string | null;
  readonly options: Readonly<Record<string, boolean>>;
  readonly plate: string;
  readonly evidence: readonly Evidence[];
  readonly firstSeen: Day;
  readonly truth: UnitTruth;
}

export interface UnitTruth {
  readonly built: Day;
  readonly options: Readonly<Record<string, boolean>>;
  readonly serial: { readonly scheme: string; readonly key: string };
}

export const stages = ['intake', 'inspection', 'parts-selection', 'repair', 'handover'] as const;
export type Stage = (typeof stages)[number];

export interface DemoTicket {
  readonly number: string;
  readonly location: LocationCode;
  readonly unit: number;
  readonly owner: number;
  readonly bench: string | null;
  readonly stage: Stage;
  readonly complaint: string;
  readonly promisedOn: Day | null;
  readonly holdReason: string | null;
  readonly cancelReason: string | null;
  readonly openedAt: number;
  readonly closedAt: number | null;
  readonly handedOver: boolean;
  readonly labourMinutes: number;
  readonly labourMinor: number;
  readonly authorisation: { by: string; how: string; at: string; amountMinor: number } | null;
  readonly technician: string;
  readonly safe: boolean;
  readonly records: readonly DemoRecord[];
  readonly picks: readonly DemoPick[];
  readonly events: readonly DemoEvent[];
}

export type Condition = 'sound' | 'worn' | 'sheared' | 'missing';

export interface DemoMarks {
  readonly headMarks: string | null;
  readonly diameterMm: number | null;
  readonly lengthMm: number | null;
  readonly grooved: boolean | null;
  readonly finish: string | null;
}

/** One place, found or left. A part by number, or its marks, or missing, or left out with a reason. */
export interface DemoRecord {
  readonly position: string;
  /** From 1. */
  readonly place: number;
  readonly side: 'found' | 'left';
  readonly part: PartKey | null;
  readonly partText: string | null;
  readonly pack: number | null;
  readonly marks: DemoMarks | null;
  readonly candidates: readonly PartKey[];
  readonly condition: Condition | null;
  readonly fittedOn: Day | null;
  readonly leftOutWhy: string | null;
  readonly at: number;
}

export interface DemoPick {
  readonly position: string | null;
  readonly part: PartKey;
  readonly quantity: number;
  readonly purpose: 'fit' | 'spare';
  readonly state: 'picked' | 'fitted' | 'returned' | 'given';
  readonly priceMinor: number;
  readonly at: number;
}

export interface DemoEvent {
  readonly at: number;
  readonly person: string;
  readonly kind: string;
  readonly data: Readonly<Record<string, unknown>>;
}
