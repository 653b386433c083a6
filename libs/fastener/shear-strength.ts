import type { FastenerSpec, GradeRef } from './fastener-spec';
import { candidatesOf, type GradeStrength, strengthOf } from './grade-strength';
import { type FastenerProblem, type Outcome, problem } from './problem';

/**
 * No fastener standard publishes a shear strength (ISO 898-1 names it among the things it does not specify), so it
 * is derived, and the result names how. The two are never mixed: one goes with tensile, the other with yield.
 */
export const SHEAR_RATIOS = {
  'handbook-0.60-of-tensile': {
    factor: 0.6,
    of: 'tensile',
    source: 'Inch Fastener Standards, 7th edition 2003, p. B-8: 0.60 of the tensile strength, carbon steel bolts',
  },
  'distortion-energy-0.577-of-yield': {
    factor: 1 / Math.sqrt(3),
    of: 'yield',
    source: 'distortion energy (von Mises), 1/√3 of the yield strength: Shigley, section 5-5',
  },
} as const;

/** What shear strength is derived by. The first says when it breaks, the second when it starts to give. */
export type ShearRatioName = keyof typeof SHEAR_RATIOS;

export const USUAL_SHEAR_RATIO: ShearRatioName = 'handbook-0.60-of-tensile';

/** A grade the fastener can be of, with the shear strength derived for it. */
export interface ShearStrength extends GradeStrength {
  shearMpa: number;
}

/** The grades a fastener can be of, weakest first, and those its table has no value for at this size. */
export interface ShearStrengths {
  found: ShearStrength[];
  leftOut: GradeRef[];
}

/**
 * The shear strength for every grade the fastener can be of. A candidate of a set that its table does not make in
 * this size is left out, as long as one is left. Refused: a grade that is not in its table, a size that no
 * candidate has a value for, a grade without the strength the ratio needs.
 */
export function shearStrengths(spec: FastenerSpec, ratio: ShearRatioName, name: string): Outcome<ShearStrengths> {
  const result: ShearStrengths = { found: [], leftOut: [] };
  const [refused, notThisSize]: [FastenerProblem[], FastenerProblem[]] = [[], []];
  candidatesOf(spec.grade).forEach((ref, index) => {
    const field = spec.grade.kind === 'known' ? `${name}.grade` : `${name}.grade.candidates.${index}`;
    const derived = deriveFor(ref, spec, ratio, field);
    if (derived.ok) result.found.push(...derived.value);
    else if (derived.problems.some((one) => one.code !== 'no-value-at-this-size')) refused.push(...derived.problems);
    else {
      notThisSize.push(...derived.problems);
      result.leftOut.push(ref);
    }
  });
  if (refused.length > 0) return { ok: false, problems: refused };
  if (result.found.length === 0) return { ok: false, problems: notThisSize };
  result.found.sort((one, other) => one.shearMpa - other.shearMpa);
  return { ok: true, value: result };
}

function deriveFor(ref: GradeRef, spec: FastenerSpec, ratio: ShearRatioName, field: string): Outcome<ShearStrength[]> {
  const rows = strengthOf(ref, spec, field);
  if (!rows.ok) return rows;
  const { of, factor } = SHEAR_RATIOS[ratio];
  const strengths: ShearStrength[] = [];
  for (const row of rows.value) {
    const base = of === 'tensile' ? row.tensileMpa : row.yieldMpa;
    if (base === null) return { ok: false, problems: [noYield(field, ref.grade)] };
    strengths.push({ ...row, shearMpa: factor * base });
  }
  return { ok: true, value: strengths };
}

function noYield(field: string, grade: string): FastenerProblem {
  return problem(
    'no-yield-published',
    field,
    grade,
    'a grade whose table has a yield strength, or the ratio of tensile',
  );
}
