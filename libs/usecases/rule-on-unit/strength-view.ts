import type { StrengthView } from '../../contracts';
import { compareFasteners } from '../../fastener';
import type { PartRow, PositionRow } from '../ports/index';

/**
 * How the fitted fastener compares with the required one, for a position that takes a shear fastener and parts whose
 * shape is known; null otherwise. It says how bad a wrong part is, never which part to take.
 */
export function strengthView(
  fitted: PartRow | undefined,
  required: PartRow | undefined,
  position: PositionRow | undefined,
): StrengthView | null {
  if (!position?.joint || !fitted?.fastener || !required?.fastener) return null;
  const compared = compareFasteners(fitted.fastener, required.fastener, position.joint);
  if (!compared.ok) {
    const sentences = compared.problems.map((problem) => problem.sentence);
    return { fitted: null, required: null, rated: null, class: 'cannot-tell', ratio: null, sentences };
  }
  const { value } = compared;
  return {
    fitted: value.fitted.torqueNm,
    required: value.required.torqueNm,
    rated: position.joint.ratedTorqueNm,
    class: value.class,
    ratio: value.ratio,
    sentences: [...value.sentences, value.caution],
  };
}
