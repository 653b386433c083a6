import type { CutAreas, Prepared } from './shear-capacity';
import type { ShearJoint } from './shear-joint';
import { SHEAR_RATIOS, type ShearRatioName } from './shear-strength';

/** An input that makes the result a range, and why. */
export interface Widening {
  input: 'grade' | 'length' | 'thread-start' | 'plane-position' | 'planes-differ' | 'shaft-radius';
  sentence: string;
}

/** The inputs that make this result a range, in the order they are worth settling. */
export function wideningsOf(prepared: Prepared, joint: ShearJoint, cuts: readonly CutAreas[]): Widening[] {
  return [...ofPlanes(prepared, joint, cuts), ...ofRadius(joint), ...ofGrade(prepared)];
}

/** What is taken for granted, one sentence each; shown beside the figure. */
export function assumptionsOf(prepared: Prepared, joint: ShearJoint, ratio: ShearRatioName): string[] {
  const minimum = prepared.strengths.every((strength) => strength.basis === 'minimum');
  return [
    `Shear strength is taken as ${SHEAR_RATIOS[ratio].factor.toFixed(3)} of ${SHEAR_RATIOS[ratio].of} strength (${SHEAR_RATIOS[ratio].source}).`,
    minimum
      ? 'The table gives the least the grade may have; a real part can be stronger, and then lets go later.'
      : 'The table gives typical strengths; a real part can be weaker or stronger.',
    'Direct shear only: play in the holes bends the fastener and it lets go earlier. No safety factor is applied.',
    'A plain shear pin holds its torque to about 20 % either way.',
    ...(joint.pinsSharing > 1 ? [`${joint.pinsSharing} fasteners are taken to share the load equally.`] : []),
    ...prepared.leftOut.map((ref) => `${ref.system} ${ref.grade} is left out: its table has no value at this size.`),
  ];
}

function ofPlanes(prepared: Prepared, joint: ShearJoint, cuts: readonly CutAreas[]): Widening[] {
  const found: Widening[] = [];
  const thread = prepared.spec.thread;
  const totals = new Set(cuts.map((cut) => `${cut.weakest.low} ${cut.together.high}`));
  if (thread && thread.startsAtMm === null && cuts.some((cut) => cut.together.low < cut.together.high)) {
    found.push({
      input: 'thread-start',
      sentence: 'Where the thread starts is not known, so it may lie in the shear plane.',
    });
  }
  if (totals.size > 1) {
    const why = joint.shearPlanesAtMm === null ? 'is not known' : 'is only known within its tolerance';
    found.push({ input: 'plane-position', sentence: `Where the shear plane falls along the fastener ${why}.` });
  }
  if (cuts.some((cut) => cut.weakest.low < cut.together.low || cut.weakest.high < cut.together.high)) {
    const sentence =
      'The two shear planes cut different sections: it lets go between the weaker twice over and both together.';
    found.push({ input: 'planes-differ', sentence });
  }
  return found;
}

function ofRadius({ shaftRadiusMm }: ShearJoint): Widening[] {
  if (typeof shaftRadiusMm === 'number' || shaftRadiusMm.low === shaftRadiusMm.high) return [];
  return [{ input: 'shaft-radius', sentence: 'The radius of the shaft is only known as a span.' }];
}

function ofGrade({ strengths }: Prepared): Widening[] {
  const values = new Set(strengths.map((strength) => strength.shearMpa));
  if (values.size < 2) return [];
  const names = [...new Set(strengths.map((strength) => `${strength.system} ${strength.grade}`))];
  if (names.length === 1) {
    return [{ input: 'length', sentence: 'The grade loses strength in long bolts, and the length is not known.' }];
  }
  const sentence = `The grade is not known; it can be ${names.join(', ')}.`;
  return [{ input: 'grade', sentence }];
}
