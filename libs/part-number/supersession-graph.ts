import type { PartKey } from './number-rules';
import type { StandIn, Supersession, SupersessionFinding } from './supersession';

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

/**
 * What a person has to mend in the supersessions known at the instant: rings of one-way steps, parts that give way to
 * several, parts both dead and replaced. Both-way pairs are one part for this purpose.
 */
export function supersessionFindings(
  supersessions: readonly Supersession[],
  knownAt: number,
): readonly SupersessionFinding[] {
  const known = supersessions.filter((one) => one.known.from <= knownAt && knownAt < one.known.to);
  const steps = new Map<PartKey, Set<PartKey>>();
  for (const { from, to, direction } of known) {
    if (direction === 'one-way' && to !== null) (steps.get(from) ?? setIn(steps, from)).add(to);
  }
  return [...cyclesIn(steps), ...forksIn(steps), ...deadAndReplaced(known)];
}

function forksIn(steps: Map<PartKey, Set<PartKey>>): SupersessionFinding[] {
  return [...steps]
    .filter(([, to]) => to.size > 1)
    .map(([from, to]) => ({ code: 'fork' as const, from, to: [...to].sort() }))
    .sort((a, b) => (a.from < b.from ? -1 : 1));
}

function deadAndReplaced(known: readonly Supersession[]): SupersessionFinding[] {
  const dead = new Set(known.filter(({ direction }) => direction === 'dead').map(({ from }) => from));
  return [...dead].sort().flatMap((part) => {
    const to = known.flatMap((one) => (one.from === part && one.to !== null ? [one.to] : []));
    return to.length === 0 ? [] : [{ code: 'dead-and-replaced' as const, part, to: [...new Set(to)].sort() }];
  });
}

/** Rings are the strongly connected groups of more than one part, and parts that give way to themselves (Tarjan 1972). */
function cyclesIn(steps: Map<PartKey, Set<PartKey>>): SupersessionFinding[] {
  const rings: PartKey[][] = [];
  const order = new Map<PartKey, number>();
  const low = new Map<PartKey, number>();
  const open: PartKey[] = [];
  const isOpen = new Set<PartKey>();
  for (const root of [...steps.keys()].sort()) {
    if (order.has(root)) continue;
    const work: { part: PartKey; next: Iterator<PartKey> }[] = [];
    const enter = (part: PartKey): void => {
      order.set(part, order.size);
      low.set(part, order.get(part)!);
      open.push(part);
      isOpen.add(part);
      work.push({ part, next: (steps.get(part) ?? new Set<PartKey>()).values() });
    };
    enter(root);
    while (work.length > 0) {
      const { part, next } = work[work.length - 1]!;
      const step = next.next();
      if (!step.done) {
        if (!order.has(step.value)) enter(step.value);
        else if (isOpen.has(step.value)) low.set(part, Math.min(low.get(part)!, order.get(step.value)!));
        continue;
      }
      work.pop();
      const above = work[work.length - 1];
      if (above) low.set(above.part, Math.min(low.get(above.part)!, low.get(part)!));
      if (low.get(part) === order.get(part)) {
        const ring = open.splice(open.indexOf(part));
        for (const one of ring) isOpen.delete(one);
        if (ring.length > 1 || steps.get(part)?.has(part)) rings.push(ring.sort());
      }
    }
  }
  return rings.sort((a, b) => (a[0]! < b[0]! ? -1 : 1)).map((parts) => ({ code: 'cycle', parts }));
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

function setIn<K, V>(map: Map<K, Set<V>>, key: K): Set<V> {
  const made = new Set<V>();
  map.set(key, made);
  return made;
}
