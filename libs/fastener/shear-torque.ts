import type { FastenerSpecInput, GradeRef } from './fastener-spec';
import type { Outcome } from './problem';
import type { Range, ShearJointInput } from './shear-joint';

/** What shear strength is derived by, since no fastener standard publishes it. */
export type ShearRatioName = 'handbook-0.60-of-tensile' | 'distortion-energy-0.577-of-yield';

/** The section a shear plane cuts. */
export interface Section {
  kind: 'shank' | 'thread' | 'groove' | 'cross-hole';
  areaMm2: number;
  /** Plain words: which section, which formula, which size. */
  words: string;
}

/** An input that makes the result a range, and why. */
export interface Widening {
  input: 'grade' | 'length' | 'thread-start' | 'plane-position' | 'planes-differ' | 'shaft-radius';
  sentence: string;
}

/** The torque at which a fastener lets go, with everything it rests on. */
export interface ShearTorque {
  torqueNm: Range;
  shearStrengthMpa: Range;
  grades: GradeRef[];
  sections: Section[];
  ratio: { name: ShearRatioName; factor: number; of: 'tensile' | 'yield'; source: string };
  widenedBy: Widening[];
  assumptions: string[];
}

export declare function shearTorque(
  spec: FastenerSpecInput,
  joint: ShearJointInput,
  ratio?: ShearRatioName,
): Outcome<ShearTorque>;
