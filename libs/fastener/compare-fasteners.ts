import type { FastenerSpecInput } from './fastener-spec';
import type { Outcome } from './problem';
import type { Range, ShearJointInput, Threshold } from './shear-joint';
import type { ShearRatioName, ShearTorque } from './shear-torque';

export type BreakClass = 'breaks-sooner' | 'as-required' | 'breaks-later' | 'cannot-tell';

/** Fitted against required. */
export interface FastenerComparison {
  class: BreakClass;
  /** Fitted torque divided by required torque, over everything that is not known. */
  ratio: Range;
  /** True where some value of what is not known makes it break later than the threshold allows. */
  mayBreakLater: boolean;
  fitted: ShearTorque;
  required: ShearTorque;
  /** Fitted torque divided by the drive line's rated torque; null where the rating is not known. */
  againstRated: { ratedTorqueNm: number; ratio: Range; exceeds: 'no' | 'maybe' | 'yes' } | null;
  /** What sets the two apart, diameter and section before grade. */
  because: { field: 'diameter' | 'section' | 'grade'; sentence: string }[];
  sentences: string[];
  caution: string;
}

export declare function compareFasteners(
  fitted: FastenerSpecInput,
  required: FastenerSpecInput,
  joint: ShearJointInput,
  threshold?: Threshold,
  ratio?: ShearRatioName,
): Outcome<FastenerComparison>;

/** From least to worst. A higher index is worse. */
export const FASTENER_SEVERITIES = ['none', 'nuisance', 'not-told', 'drive-line-at-risk', 'above-rating'] as const;
export type FastenerSeverity = (typeof FASTENER_SEVERITIES)[number];

export declare function severityOf(comparison: FastenerComparison): FastenerSeverity;
