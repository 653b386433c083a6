import type { PartKey, SupersessionGraph } from '../part-number';
import type { Saying } from './ruling';
import type { PartOutcome, ThenVerdict } from './verdict';
import type { Weighed } from './weighed';

/** Each outcome of a piece as one bit, so that "every piece" is one comparison. */
export const REQUIRED = 1;
export const ALLOWED = 2;
export const NO = 4;
export const NOTHING_SAID = 8;
export const DISPUTED = 16;

export const outcomeBits: Readonly<Record<PartOutcome, number>> = {
  required: REQUIRED,
  allowed: ALLOWED,
  no: NO,
  'nothing-said': NOTHING_SAID,
  disputed: DISPUTED,
};

/**
 * What one stretch says of one part.
 *
 * A bar speaks of the part it names and of no other number; a barred part is `no`, unless a deciding rule requires that
 * very part: then it is disputed, and so is whatever counts as the same part.
 */
export function partOutcome(weighed: Weighed, part: PartKey, graph: SupersessionGraph, knownAt: number): PartOutcome {
  const { outcome } = weighed;
  const barred = outcome.barred.some((bar) => bar.part === part);
  if (outcome.kind === 'nothing-said') return barred ? 'no' : 'nothing-said';
  const sayings = outcome.kind === 'decided' ? [outcome.saying] : outcome.sayings;
  if (barred) return sayings.some(({ required }) => required === part) ? 'disputed' : 'no';
  let agreed: PartOutcome | null = null;
  for (const saying of sayings) {
    const said = sayingOutcome(saying, part, graph, knownAt);
    const doubted = said === 'required' && outcome.barred.some((bar) => bar.part === saying.required);
    if (doubted || (agreed !== null && agreed !== said)) return 'disputed';
    agreed = said;
  }
  return agreed!;
}

/**
 * How one saying takes a part. Required: the part itself or a substitute that goes both ways. Allowed: named as allowed,
 * or recorded as what may replace the required part or an allowed one.
 */
function sayingOutcome(saying: Saying, part: PartKey, graph: SupersessionGraph, knownAt: number): PartOutcome {
  const { required, allowed } = saying;
  if (part === required) return 'required';
  const alone = graph.isAlone(part);
  const way = required === null || alone ? 'no' : graph.standsInFor(part, required, knownAt);
  if (way === 'both-ways') return 'required';
  if (way === 'one-way' || allowed.includes(part)) return 'allowed';
  return !alone && allowed.some((one) => graph.standsInFor(part, one, knownAt) !== 'no') ? 'allowed' : 'no';
}

/** The verdict by the papers of some day, from the bits of every piece. No piece at all decides nothing. */
export function thenVerdictOf(bits: number): ThenVerdict {
  if (bits === REQUIRED) return 'right';
  if (bits === ALLOWED || bits === (REQUIRED | ALLOWED)) return 'allowed';
  if (bits === NO) return 'no';
  return (bits & DISPUTED) !== 0 ? 'disputed' : 'undecided';
}
