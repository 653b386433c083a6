import type { Day } from '../../day';
import type { FastenerSpecInput, ShearJointInput } from '../../fastener';
import type { Action, BarReason, SourceKind } from '../../fit-rules';

/** One paper of a line, by a short name that the rules of the line use. */
export interface Paper {
  readonly kind: SourceKind;
  readonly number: string;
  readonly title: string;
  readonly issued: Day;
  readonly effective: Day | null;
  readonly received: Day;
}

/** A part as the maker prints it; `priceMinor` in the shop's smallest coin. */
export interface PartNote {
  readonly number: string;
  readonly name: string;
  readonly priceMinor: number;
  readonly fastener: FastenerSpecInput | null;
}

/** What a paper says of a position, beyond the part it requires. Parts are written as the maker prints them. */
export interface Terms {
  /** Build days from, up to but not including; null is an open side. */
  readonly built?: readonly [Day | null, Day | null];
  /** The change came at a running number: the serial of that build day and number, in the scheme then used. */
  readonly serials?: { readonly from?: SerialMark; readonly to?: SerialMark };
  readonly models?: readonly string[];
  readonly fitted?: string;
  readonly notFitted?: string;
  readonly allows?: readonly string[];
  readonly bars?: readonly (readonly [part: string, reason: BarReason, note: string])[];
  /** Those of the barred numbers that end the maker's warranty. */
  readonly voids?: readonly string[];
  readonly action?: Action;
  /** Numbers of earlier rules of the same position, counted from 1. */
  readonly replaces?: readonly number[];
  /** A later paper that ended the rule, and so closed what was known of it. */
  readonly endedBy?: string;
}
export interface SerialMark {
  readonly day: Day;
  readonly sequence: number;
}

export interface Saying {
  readonly paper: string;
  readonly part: string | null;
  readonly terms: Terms;
}

export interface PositionRoom {
  readonly code: string;
  readonly name: string;
  readonly assembly: string;
  readonly places: readonly string[];
  readonly at: readonly [x: number, y: number];
  readonly joint: ShearJointInput | null;
  /** The part that came from the works first stands first. */
  readonly parts: readonly PartNote[];
  readonly rules: readonly Saying[];
}

/** One product line with everything the shop knows about it. */
export interface LineRoom {
  readonly code: string;
  readonly maker: string;
  readonly name: string;
  readonly kind: string;
  readonly models: readonly { readonly number: string; readonly name: string }[];
  readonly options: readonly { readonly code: string; readonly name: string }[];
  readonly producedFrom: Day;
  readonly producedUntil: Day | null;
  /** SVG path data in a 100 x 60 box. */
  readonly sketch: string;
  readonly papers: Readonly<Record<string, Paper>>;
  readonly positions: readonly PositionRoom[];
}

/** A part note. */
export function part(
  number: string,
  name: string,
  priceMinor: number,
  fastener: FastenerSpecInput | null = null,
): PartNote {
  return { number, name, priceMinor, fastener };
}

/** What a paper says: the part it requires (null when it only bars or allows) and its terms. */
export function says(paper: string, required: string | null, terms: Terms = {}): Saying {
  return { paper, part: required, terms };
}

/** A paper that the shop received some days after its issue. */
export function paper(
  kind: SourceKind,
  number: string,
  title: string,
  issued: Day,
  more: { readonly effective?: Day; readonly receivedAfter?: number } = {},
): Paper {
  return {
    kind,
    number,
    title,
    issued,
    effective: more.effective ?? null,
    received: issued + (more.receivedAfter ?? 6),
  };
}

/** A shear pin or bolt: diameter and length in mm, and the grade as the maker names it. */
export function pin(
  diameterMm: number,
  lengthMm: number,
  grade: [system: 'SAE J429' | 'ISO 898-1' | 'pin material', name: string],
  groove?: number,
): FastenerSpecInput {
  return {
    diameterMm,
    lengthMm,
    grade: { kind: 'known', system: grade[0], grade: grade[1] },
    groove: groove === undefined ? null : { rootDiameterMm: groove, atMm: lengthMm / 2, widthMm: 2 },
    headMarks: headOf(grade),
    finish: 'zinc',
  };
}

function headOf([system, name]: [string, string]): FastenerSpecInput['headMarks'] {
  if (system === 'ISO 898-1') return { kind: 'stamp', text: name };
  if (system === 'SAE J429' && name !== '2') return { kind: 'radial-lines', count: name === '5' ? 3 : 6 };
  return { kind: 'none' };
}
