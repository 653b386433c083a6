import type { FitView, StrengthView } from '../../contracts';
import {
  compareFasteners,
  doesItFit,
  severityOf,
  signalWordOf,
  FASTENER_CAUTION,
  type Threshold,
} from '../../fastener';
import { jointKey, type CatalogueShapes } from '../ports/catalogue-store';

/**
 * How shear fasteners compare and whether they go in, worked out once per joint and pair of parts. It says how bad a
 * wrong part is, never which part to take.
 */
export class Strengths {
  private readonly compared = new Map<string, StrengthView | null>();
  private readonly fitted = new Map<string, FitView | null>();

  constructor(
    private readonly shapes: CatalogueShapes,
    readonly threshold: Threshold,
  ) {}

  /** Null where the position takes no shear fastener, a part's shape is not known, or it is the required part itself. */
  compare(line: string, position: string, fitted: string, required: string): StrengthView | null {
    if (fitted === required) return null;
    const name = JSON.stringify([line, position, fitted, required]);
    return once(this.compared, name, () => this.weigh(jointKey(line, position), fitted, required));
  }

  /** Null where the position takes no shear fastener or the part's shape is not known. */
  fits(line: string, position: string, part: string): FitView | null {
    return once(this.fitted, JSON.stringify([line, position, part]), () => {
      const [joint, fastener] = [this.shapes.joints.get(jointKey(line, position)), this.shapes.fasteners.get(part)];
      const answer = joint && fastener && doesItFit(fastener, joint);
      return answer?.ok ? answer.value : null;
    });
  }

  private weigh(at: string, fitted: string, required: string): StrengthView | null {
    const { joints, fasteners } = this.shapes;
    const [joint, is, asked] = [joints.get(at), fasteners.get(fitted), fasteners.get(required)];
    if (!joint || !is || !asked) return null;
    const compared = compareFasteners(is, asked, joint, this.threshold);
    const common = { rated: joint.ratedTorqueNm ?? null, threshold: this.threshold, caution: FASTENER_CAUTION };
    if (!compared.ok) {
      const sentences = ['How strong it is against the required part cannot be worked out.'];
      sentences.push(...compared.problems.map(({ sentence }) => sentence));
      const none = { fitted: null, required: null, ratio: null, class: 'cannot-tell', signal: 'WARNING' } as const;
      return { ...common, ...none, severity: 'not-told', sentences };
    }
    const { value } = compared;
    const severity = severityOf(value);
    return {
      ...common,
      fitted: value.fitted.torqueNm,
      required: value.required.torqueNm,
      class: value.class,
      ratio: value.ratio,
      severity,
      signal: signalWordOf(severity),
      sentences: value.sentences,
    };
  }
}

function once<T>(kept: Map<string, T>, name: string, make: () => T): T {
  if (!kept.has(name)) kept.set(name, make());
  return kept.get(name)!;
}
