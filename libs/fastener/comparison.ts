import type { Range, Threshold } from './shear-joint';
import type { ShearTorque } from './shear-torque';

/** One thing that sets fitted and required apart. */
export interface Difference {
  field: 'diameter' | 'section' | 'grade';
  sentence: string;
}

export type BreakClass = 'breaks-sooner' | 'as-required' | 'breaks-later' | 'cannot-tell';

/** Fitted torque divided by the drive line's rated torque. */
export interface AgainstRated {
  ratedTorqueNm: number;
  ratio: Range;
  exceeds: 'no' | 'maybe' | 'yes';
}

/** Fitted against required. */
export interface FastenerComparison {
  class: BreakClass;
  /** Fitted torque divided by required torque, over everything that is not known; both ends inclusive. */
  ratio: Range;
  /** True where some value of what is not known makes it break later than the threshold allows. */
  mayBreakLater: boolean;
  threshold: Threshold;
  fitted: ShearTorque;
  required: ShearTorque;
  /** Null where the drive line's rating is not known. */
  againstRated: AgainstRated | null;
  /** What sets the two apart: diameter and section are looked at before grade. */
  because: Difference[];
  sentences: string[];
  caution: string;
}
