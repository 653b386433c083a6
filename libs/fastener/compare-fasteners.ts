import { type FastenerSpec, type FastenerSpecInput, fastenerSpecSchema } from './fastener-spec';
import { FASTENER_CAUTION } from './cautions';
import type { AgainstRated, BreakClass, FastenerComparison } from './comparison';
import { waysPlanesLie } from './plane-places';
import { check, type FastenerProblem, type Outcome } from './problem';
import { differencesOf, sentencesOf } from './say-comparison';
import { cutAreas, hull, type Prepared, prepare, strengthRange } from './shear-capacity';
import {
  type Range,
  type ShearJoint,
  type ShearJointInput,
  shearJointSchema,
  STARTING_THRESHOLD,
  type Threshold,
  thresholdSchema,
} from './shear-joint';
import { type ShearRatioName, USUAL_SHEAR_RATIO } from './shear-strength';
import { torqueOver } from './shear-torque';
import { type ThreadSectionName, USUAL_THREAD_SECTION } from './thread-section';

/**
 * How far off a fitted fastener is: a ratio, never a recommendation. Both are looked at in the same joint and with
 * the planes in the same place, so what they share cancels. `threshold` is shop data: ratios at its bounds count as
 * required. Refused: bad fields, named after `fitted`, `required`, `joint` or `threshold`.
 */
export function compareFasteners(
  fitted: FastenerSpecInput,
  required: FastenerSpecInput,
  joint: ShearJointInput,
  threshold: Threshold = STARTING_THRESHOLD,
  ratio: ShearRatioName = USUAL_SHEAR_RATIO,
  thread: ThreadSectionName = USUAL_THREAD_SECTION,
): Outcome<FastenerComparison> {
  const place = check<ShearJoint>(shearJointSchema, joint, 'joint');
  const limits = check<Threshold>(thresholdSchema, threshold, 'threshold');
  const fittedSpec = check<FastenerSpec>(fastenerSpecSchema, fitted, 'fitted');
  const requiredSpec = check<FastenerSpec>(fastenerSpecSchema, required, 'required');
  if (!place.ok || !limits.ok || !fittedSpec.ok || !requiredSpec.ok) {
    return { ok: false, problems: problemsOf(place, limits, fittedSpec, requiredSpec) };
  }
  const one = prepare(fittedSpec.value, place.value, ratio, thread, 'fitted');
  const other = prepare(requiredSpec.value, place.value, ratio, thread, 'required');
  if (!one.ok || !other.ok) return { ok: false, problems: problemsOf(one, other) };
  return { ok: true, value: weigh(one.value, other.value, place.value, limits.value, ratio) };
}

function problemsOf(...outcomes: Outcome<unknown>[]): FastenerProblem[] {
  return outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
}

function weigh(
  fitted: Prepared,
  required: Prepared,
  joint: ShearJoint,
  threshold: Threshold,
  shearRatio: ShearRatioName,
): FastenerComparison {
  const ways = waysPlanesLie(joint, [fitted.spec, required.spec]);
  const ratio = ratioOver(fitted, required, ways);
  const torque = {
    fitted: torqueOver(fitted, joint, ways, shearRatio),
    required: torqueOver(required, joint, ways, shearRatio),
  };
  const weighed = {
    class: classOf(ratio, threshold),
    ratio,
    mayBreakLater: ratio.high > threshold.laterAbove,
    threshold,
    ...torque,
    againstRated: againstRated(torque.fitted.torqueNm, joint.ratedTorqueNm),
    because: differencesOf(fitted, required, torque.fitted, torque.required),
  };
  return { ...weighed, sentences: sentencesOf(weighed), caution: FASTENER_CAUTION };
}

/** Radius and fasteners sharing are the same for both and cancel. */
function ratioOver(fitted: Prepared, required: Prepared, ways: readonly number[][]): Range {
  const [stress, asked] = [strengthRange(fitted), strengthRange(required)];
  const over = (one: Range, other: Range): Range => ({
    low: (stress.low * one.low) / (asked.high * other.high),
    high: (stress.high * one.high) / (asked.low * other.low),
  });
  const perWay = ways.flatMap((places) => {
    const [one, other] = [cutAreas(fitted, places), cutAreas(required, places)];
    return [over(one.weakest, other.weakest), over(one.together, other.together)];
  });
  return hull(perWay);
}

/** Ratios are computed: a value at a bound must not fall over it by rounding. */
const ROUNDING = 1e-9;

function classOf({ low, high }: Range, { soonerBelow, laterAbove }: Threshold): BreakClass {
  if (high < soonerBelow - ROUNDING) return 'breaks-sooner';
  if (low > laterAbove + ROUNDING) return 'breaks-later';
  return low >= soonerBelow - ROUNDING && high <= laterAbove + ROUNDING ? 'as-required' : 'cannot-tell';
}

function againstRated(torqueNm: Range, ratedTorqueNm: number | null): AgainstRated | null {
  if (ratedTorqueNm === null) return null;
  const ratio = { low: torqueNm.low / ratedTorqueNm, high: torqueNm.high / ratedTorqueNm };
  const exceeds = ratio.low > 1 + ROUNDING ? 'yes' : ratio.high > 1 + ROUNDING ? 'maybe' : 'no';
  return { ratedTorqueNm, ratio, exceeds };
}
