import type { FastenerSpec, GradeRef } from './fastener-spec';
import { type Outcome, problem } from './problem';
import { areaRange, type Section, sectionsAt } from './section-at';
import type { Range, ShearJoint } from './shear-joint';
import { type ShearRatioName, type ShearStrength, shearStrengths } from './shear-strength';
import type { ThreadSectionName } from './thread-section';

/** A fastener with everything looked up that does not depend on where the planes lie. */
export interface Prepared {
  spec: FastenerSpec;
  strengths: ShearStrength[];
  leftOut: GradeRef[];
  thread: ThreadSectionName;
}

/** What the planes cut when they lie one way. */
export interface CutAreas {
  sections: Section[];
  /** Every plane at the weakest section: the first to go takes the others with it. */
  weakest: Range;
  /** Every plane at its own section: they give way together. */
  together: Range;
}

/** Looks up the strengths, and refuses a fastener too short to reach its shear planes. */
export function prepare(
  spec: FastenerSpec,
  joint: ShearJoint,
  ratio: ShearRatioName,
  thread: ThreadSectionName,
  name: string,
): Outcome<Prepared> {
  const strengths = shearStrengths(spec, ratio, name);
  if (!strengths.ok) return strengths;
  const farthest = Math.max(0, ...(joint.shearPlanesAtMm ?? []));
  if (spec.lengthMm !== null && spec.lengthMm <= farthest) {
    const accepted = `more than ${farthest} mm, where the far shear plane lies`;
    return { ok: false, problems: [problem('does-not-reach', `${name}.lengthMm`, spec.lengthMm, accepted)] };
  }
  return { ok: true, value: { spec, strengths: strengths.value.found, leftOut: strengths.value.leftOut, thread } };
}

/** The total area in mm² that must shear when the planes lie at these places, on both views of two unlike planes. */
export function cutAreas(prepared: Prepared, places: readonly number[]): CutAreas {
  const perPlane = places.map((at) => sectionsAt(prepared.spec, at, prepared.thread));
  const areas = perPlane.map(areaRange);
  const planes = areas.length;
  const sum = (values: number[]): number => values.reduce((total, value) => total + value, 0);
  const lows = areas.map((area) => area.low);
  const highs = areas.map((area) => area.high);
  return {
    sections: perPlane.flat(),
    weakest: { low: planes * Math.min(...lows), high: planes * Math.min(...highs) },
    together: { low: sum(lows), high: sum(highs) },
  };
}

/** Least and greatest shear strength over the grades it can be of, in MPa. */
export function strengthRange({ strengths }: Prepared): Range {
  const values = strengths.map((strength) => strength.shearMpa);
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** The smallest range that holds all of these. */
export function hull(ranges: readonly Range[]): Range {
  return { low: Math.min(...ranges.map((range) => range.low)), high: Math.max(...ranges.map((range) => range.high)) };
}
