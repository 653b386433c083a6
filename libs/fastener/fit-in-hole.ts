import type { FastenerSpecInput } from './fastener-spec';
import type { Outcome } from './problem';
import type { ShearJointInput } from './shear-joint';

/** Whether a fastener goes in and holds, one finding per thing looked at. */
export interface FitAnswer {
  fits: 'yes' | 'no' | 'not-told';
  findings: {
    field: 'diameter' | 'length' | 'room' | 'cross-hole';
    fits: 'yes' | 'no' | 'not-told';
    sentence: string;
  }[];
}

export declare function doesItFit(spec: FastenerSpecInput, joint: ShearJointInput): Outcome<FitAnswer>;
