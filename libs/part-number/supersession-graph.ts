import type { PartKey } from './number-rules';
import type { StandIn, Supersession } from './supersession';

interface Step {
  readonly to: PartKey;
  /** The step can be taken back. */
  readonly bothWays: boolean;
  readonly knownFrom: number;
  readonly knownTo: number;
}

/**
 * All supersessions, of every time. A question names the instant `knownAt` (epoch milliseconds), so one graph answers
 * for any day without being built again.
 */
export class SupersessionGraph {
  private readonly forward = new Map<PartKey, Step[]>();
  private readonly backward = new Map<PartKey, Step[]>();
  private readonly dead = new Map<PartKey, { knownFrom: number; knownTo: number }[]>();

  constructor(private readonly supersessions: readonly Supersession[]) {
    for (const { from, to, direction, known } of supersessions) {
      const span = { knownFrom: known.from, knownTo: known.to };
      if (direction === 'dead' || to === null) append(this.dead, from, span);
      else if (to !== from) this.addStep(from, to, direction === 'both-ways', span);
    }
  }

  /** True when no supersession has ever named the part; then every answer about it is trivial. */
  isAlone(part: PartKey): boolean {
    return !this.forward.has(part) && !this.backward.has(part);
  }

  /** The part itself and every part that may replace it and be replaced by it; in order of their keys. */
  interchangeClass(part: PartKey, knownAt: number): readonly PartKey[] {
    if (this.isAlone(part)) return [part];
    const found = walk(part, this.forward, knownAt, true);
    return [...found.keys()].sort();
  }

  /** Every part that may be fitted where `part` is asked for, itself left out; nearest first. */
  whatStandsInFor(part: PartKey, knownAt: number): readonly StandIn[] {
    return this.reached(part, this.forward, knownAt);
  }

  /** Every part in whose place `part` may be fitted, itself left out; nearest first. */
  whatItStandsInFor(part: PartKey, knownAt: number): readonly StandIn[] {
    return this.reached(part, this.backward, knownAt);
  }

  /** How `candidate` stands to `asked`: the same, a substitute both ways, a stand-in one way, or neither. */
  standsInFor(candidate: PartKey, asked: PartKey, knownAt: number): 'same' | 'both-ways' | 'one-way' | 'no' {
    if (candidate === asked) return 'same';
    if (!this.forward.has(asked) || !this.backward.has(candidate)) return 'no';
    if (walk(asked, this.forward, knownAt, true).has(candidate)) return 'both-ways';
    return walk(asked, this.forward, knownAt, false).has(candidate) ? 'one-way' : 'no';
  }

  /** True when the part is said to be dead and nothing may stand in for it. */
  isDead(part: PartKey, knownAt: number): boolean {
    const gone = this.dead.get(part)?.some((span) => span.knownFrom <= knownAt && knownAt < span.knownTo) ?? false;
    return gone && this.whatStandsInFor(part, knownAt).length === 0;
  }

  /** Every part that a supersession of any time names, each once. */
  parts(): readonly PartKey[] {
    const named = this.supersessions.flatMap(({ from, to }) => (to === null ? [from] : [from, to]));
    return [...new Set(named)];
  }

  /** The supersessions known at the instant, in the order they were given. */
  knownAt(instant: number): readonly Supersession[] {
    return this.supersessions.filter(({ known }) => known.from <= instant && instant < known.to);
  }

  private addStep(from: PartKey, to: PartKey, bothWays: boolean, span: { knownFrom: number; knownTo: number }): void {
    append(this.forward, from, { to, bothWays, ...span });
    append(this.backward, to, { to: from, bothWays, ...span });
    if (!bothWays) return;
    append(this.forward, to, { to: from, bothWays, ...span });
    append(this.backward, from, { to, bothWays, ...span });
  }

  private reached(part: PartKey, steps: Map<PartKey, Step[]>, knownAt: number): readonly StandIn[] {
    if (!steps.has(part)) return [];
    const swap = walk(part, steps, knownAt, true);
    const found = walk(part, steps, knownAt, false);
    found.delete(part);
    return [...found].map(([reachedPart, cameFrom]) => ({
      part: reachedPart,
      bothWays: swap.has(reachedPart),
      path: pathTo(reachedPart, cameFrom, found),
    }));
  }
}

/** Breadth first from the part; the map says from where each part was first reached. */
function walk(
  start: PartKey,
  steps: Map<PartKey, Step[]>,
  knownAt: number,
  bothWaysOnly: boolean,
): Map<PartKey, PartKey> {
  const cameFrom = new Map<PartKey, PartKey>([[start, start]]);
  for (const part of cameFrom.keys()) {
    for (const step of steps.get(part) ?? []) {
      if (bothWaysOnly && !step.bothWays) continue;
      if (step.knownFrom <= knownAt && knownAt < step.knownTo && !cameFrom.has(step.to)) cameFrom.set(step.to, part);
    }
  }
  return cameFrom;
}

function pathTo(part: PartKey, cameFrom: PartKey, found: Map<PartKey, PartKey>): PartKey[] {
  const path = [part];
  for (let at: PartKey | undefined = cameFrom; at !== undefined && at !== path[path.length - 1]; at = found.get(at)) {
    path.push(at);
  }
  return path.reverse();
}

function append<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
