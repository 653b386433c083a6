import { type FastenerSpec, type FastenerSpecInput, fastenerSpecSchema, type GradeRef } from './fastener-spec';
import { waysPlanesLie } from './plane-places';
import { check, type Outcome } from './problem';
import type { Section } from './section-at';
import { type CutAreas, cutAreas, hull, type Prepared, prepare, strengthRange } from './shear-capacity';
import { type Range, type ShearJoint, type ShearJointInput, shearJointSchema } from './shear-joint';
import { SHEAR_RATIOS, type ShearRatioName, USUAL_SHEAR_RATIO } from './shear-strength';
import { type ThreadSectionName, USUAL_THREAD_SECTION } from './thread-section';
import { assumptionsOf, type Widening, wideningsOf } from './what-it-rests-on';

/** The torque at which a fastener lets go, with everything it rests on. */
export interface ShearTorque {
  /** Both ends inclusive; every value of what is not known lies inside. No safety factor is in it. */
  torqueNm: Range;
  shearStrengthMpa: Range;
  grades: GradeRef[];
  sections: Section[];
  ratio: { name: ShearRatioName; factor: number; of: 'tensile' | 'yield'; source: string };
  /** Empty exactly when the torque is one value. */
  widenedBy: Widening[];
  assumptions: string[];
}

/**
 * The torque in N·m at which the fasteners of a joint shear: shear strength × area that must shear × radius ×
 * fasteners sharing. The area is taken at the weakest section in each plane. A range where an input is one.
 * Refused: bad fields of `spec` or `joint`, a grade not in its table, a fastener that does not reach its planes.
 */
export function shearTorque(
  spec: FastenerSpecInput,
  joint: ShearJointInput,
  ratio: ShearRatioName = USUAL_SHEAR_RATIO,
  thread: ThreadSectionName = USUAL_THREAD_SECTION,
): Outcome<ShearTorque> {
  const checkedSpec = check<FastenerSpec>(fastenerSpecSchema, spec, 'fastener');
  const checkedJoint = check<ShearJoint>(shearJointSchema, joint, 'joint');
  if (!checkedSpec.ok) return checkedSpec;
  if (!checkedJoint.ok) return checkedJoint;
  const prepared = prepare(checkedSpec.value, checkedJoint.value, ratio, thread, 'fastener');
  if (!prepared.ok) return prepared;
  const ways = waysPlanesLie(checkedJoint.value, [checkedSpec.value]);
  return { ok: true, value: torqueOver(prepared.value, checkedJoint.value, ways, ratio) };
}

/** The torque over every way the planes can lie, for a fastener that is already checked. */
export function torqueOver(
  prepared: Prepared,
  joint: ShearJoint,
  ways: readonly number[][],
  ratio: ShearRatioName,
): ShearTorque {
  const cuts = ways.map((places) => cutAreas(prepared, places));
  const stress = strengthRange(prepared);
  const area = hull(cuts.flatMap((cut) => [cut.weakest, cut.together]));
  const radius = radiusRange(joint);
  // 1 MPa × 1 mm² × 1 mm is a thousandth of a newton metre.
  const scale = joint.pinsSharing / 1000;
  const torqueNm = {
    low: stress.low * area.low * radius.low * scale,
    high: stress.high * area.high * radius.high * scale,
  };
  return {
    torqueNm,
    shearStrengthMpa: stress,
    grades: uniqueGrades(prepared),
    sections: uniqueSections(cuts),
    ratio: { name: ratio, ...SHEAR_RATIOS[ratio] },
    widenedBy: wideningsOf(prepared, joint, cuts),
    assumptions: assumptionsOf(prepared, joint, ratio),
  };
}

function radiusRange({ shaftRadiusMm }: ShearJoint): Range {
  return typeof shaftRadiusMm === 'number' ? { low: shaftRadiusMm, high: shaftRadiusMm } : shaftRadiusMm;
}

function uniqueGrades({ strengths }: Prepared): GradeRef[] {
  const refs = strengths.map(({ system, grade }) => ({ system, grade }));
  return [...new Map(refs.map((ref) => [`${ref.system} ${ref.grade}`, ref])).values()];
}

function uniqueSections(cuts: readonly CutAreas[]): Section[] {
  return [...new Map(cuts.flatMap((cut) => cut.sections).map((section) => [section.words, section])).values()];
}
