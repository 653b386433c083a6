import type { Day } from '../day';
import type { PartKey, SupersessionGraph } from '../part-number';
import { NO, NOTHING_SAID, outcomeBits, partOutcome } from './part-outcome';
import { stretchAt, type Variant } from './position-table';
import type { Weighed } from './weighed';

/** From this build date on: the bits of every part that is named, and the bits of any other part. */
export interface SlotSegment {
  readonly from: Day;
  readonly others: number;
  readonly named: ReadonlyMap<PartKey, number>;
}

/**
 * Lays all the ways a unit can be over one another: per stretch of build dates, the bits of each part over every way.
 * "Every piece says so" is then one look at one number. Neighbours that say the same are joined.
 */
export function segmentsOf(variants: readonly Variant[], graph: SupersessionGraph, knownAt: number): SlotSegment[] {
  const starts = [...new Set(variants.flatMap(({ stretches }) => stretches.starts))].sort((a, b) => a - b);
  const segments: SlotSegment[] = [];
  for (const from of starts) {
    const ways = variants.map(({ stretches }) => stretches.weighed[stretchAt(stretches, from)]!);
    const segment = segmentOf(from, ways, graph, knownAt);
    const last = segments[segments.length - 1];
    if (!last || !saysTheSame(last, segment)) segments.push(segment);
  }
  return segments;
}

function segmentOf(from: Day, ways: readonly Weighed[], graph: SupersessionGraph, knownAt: number): SlotSegment {
  const named = new Map<PartKey, number>();
  let others = 0;
  for (const { outcome } of ways) others |= outcome.kind === 'nothing-said' ? NOTHING_SAID : NO;
  for (const weighed of ways) {
    for (const part of partsThatMatter(weighed, graph, knownAt)) named.set(part, 0);
  }
  for (const part of named.keys()) {
    let bits = 0;
    for (const weighed of ways) bits |= outcomeBits[partOutcome(weighed, part, graph, knownAt)];
    if (bits === others) named.delete(part);
    else named.set(part, bits);
  }
  return { from, others, named };
}

/** Parts that can be judged otherwise than any unnamed part: those named, and what may stand in for them. */
function partsThatMatter({ outcome }: Weighed, graph: SupersessionGraph, knownAt: number): PartKey[] {
  const parts = outcome.barred.map(({ part }) => part);
  if (outcome.kind === 'nothing-said') return parts;
  const sayings = outcome.kind === 'decided' ? [outcome.saying] : outcome.sayings;
  for (const { required, allowed } of sayings) {
    for (const part of required === null ? allowed : [required, ...allowed]) {
      parts.push(part);
      if (!graph.isAlone(part)) parts.push(...graph.whatStandsInFor(part, knownAt).map((one) => one.part));
    }
  }
  return parts;
}

function saysTheSame(a: SlotSegment, b: SlotSegment): boolean {
  if (a.others !== b.others || a.named.size !== b.named.size) return false;
  for (const [part, bits] of a.named) if (b.named.get(part) !== bits) return false;
  return true;
}
