import type { PartKey } from '../../part-number';
import type { DaySpan } from '../../day';
import type { RuleRef } from '../fit-rule';
import type { PieceWhere } from '../ruling';
import type { UnitFacts } from '../unit-facts';

/** What is wrong with the rulebook, or at least worth a look. */
export const findingCodes = [
  /** No rule says what belongs here. */
  'gap',
  /** Rules of equal standing and day say different things. */
  'disputed',
  /** The deciding rule requires a part that is barred. */
  'required-and-barred',
  /** A rule that requires or allows a part decides for no unit at all. */
  'never-decides',
  /** A part that some unit needs is dead, and nothing may replace it. */
  'dead-part',
  /** A part that some unit needs is in no catalogue. */
  'unknown-part',
  'supersession-cycle',
  'supersession-fork',
  'dead-and-replaced',
  /** A span ends before it begins or holds nothing. */
  'empty-span',
  /** A paper bars a part and names none to fit in its place. */
  'bar-names-no-other',
  /** A rule rests on a paper that has been withdrawn. */
  'withdrawn-source',
  /** A rule rests on a paper that is not there. */
  'missing-source',
  /** A rule takes the place of one that has never been. */
  'replaces-nothing',
  /** The answer changes on a day that no evidence of this maker can tell from the day before. */
  'untellable-boundary',
] as const;
export type FindingCode = (typeof findingCodes)[number];

/** Must be mended, should be looked at, good to know. */
export const findingSeverities = ['error', 'warning', 'note'] as const;
export type FindingSeverity = (typeof findingSeverities)[number];

export interface Finding {
  readonly code: FindingCode;
  readonly severity: FindingSeverity;
  readonly line: string | null;
  readonly position: string | null;
  /** The units it touches, within the line's production; null where it is about a rule or a part as such. */
  readonly where: PieceWhere | null;
  readonly rules: readonly RuleRef[];
  readonly parts: readonly PartKey[];
  /** A unit that shows it; null when no unit is touched. */
  readonly example: UnitFacts | null;
  readonly sentence: string;
  /** What would mend it. */
  readonly mend: string;
}

/** A product line as the audit must know it. */
export interface AuditLine {
  readonly line: string;
  readonly positions: readonly string[];
  /** Every model of the line; empty when the shop keeps no list. */
  readonly models: readonly string[];
  /** Every serial scheme of the line; empty when the shop keeps no list. */
  readonly schemes: readonly string[];
  /** First day of production up to, not including, the day after the last. */
  readonly production: DaySpan;
}

/** What the audit is to know besides the rulebook. */
export interface AuditContext {
  readonly inForceOn: number;
  /** Epoch milliseconds. */
  readonly knownAt: number;
  readonly lines: readonly AuditLine[];
  /** Every part in the catalogue; null when there is none to look in. */
  readonly catalogue: ReadonlySet<PartKey> | null;
  /** Keys of papers that have been withdrawn. */
  readonly withdrawnSources: ReadonlySet<string>;
  /**
   * True when some evidence of the line's maker can tell a unit built on the day from one built the day before. Left
   * out, such boundaries are not looked at.
   */
  readonly canTellApart?: (line: string, boundary: number) => boolean;
}
