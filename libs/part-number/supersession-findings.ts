import type { PartKey } from './number-rules';
import { ringsOf } from './rings';
import type { Supersession, SupersessionFinding } from './supersession';

/**
 * What a person has to mend in the supersessions known at the instant: rings with a one-way step in them, parts that
 * give way to several, parts both dead and replaced. Parts that go both ways are no ring and no fork by themselves.
 */
export function supersessionFindings(
  supersessions: readonly Supersession[],
  knownAt: number,
): readonly SupersessionFinding[] {
  const known = supersessions.filter((one) => one.known.from <= knownAt && knownAt < one.known.to);
  return [...cyclesIn(known), ...forksIn(known), ...deadAndReplaced(known)];
}

function cyclesIn(known: readonly Supersession[]): SupersessionFinding[] {
  const steps = new Map<PartKey, PartKey[]>();
  const add = (from: PartKey, to: PartKey): void => {
    const own = steps.get(from);
    if (own) own.push(to);
    else steps.set(from, [to]);
  };
  for (const { from, to, direction } of known) {
    if (to === null || direction === 'dead') continue;
    add(from, to);
    if (direction === 'both-ways') add(to, from);
  }
  const oneWay = known.filter(({ direction }) => direction === 'one-way');
  return ringsOf(steps)
    .filter((ring) => oneWay.some(({ from, to }) => ring.includes(from) && ring.includes(to!)))
    .map((parts) => ({ code: 'cycle', parts }));
}

function forksIn(known: readonly Supersession[]): SupersessionFinding[] {
  const branches = new Map<PartKey, Set<PartKey>>();
  for (const { from, to, direction } of known) {
    if (direction !== 'one-way' || to === null) continue;
    branches.set(from, (branches.get(from) ?? new Set()).add(to));
  }
  return [...branches.keys()]
    .sort()
    .filter((from) => branches.get(from)!.size > 1)
    .map((from) => ({ code: 'fork', from, to: [...branches.get(from)!].sort() }));
}

function deadAndReplaced(known: readonly Supersession[]): SupersessionFinding[] {
  const dead = new Set(known.filter(({ direction }) => direction === 'dead').map(({ from }) => from));
  return [...dead].sort().flatMap((part) => {
    const to = new Set(known.flatMap((one) => (one.from === part && one.to !== null ? [one.to] : [])));
    return to.size === 0 ? [] : [{ code: 'dead-and-replaced' as const, part, to: [...to].sort() }];
  });
}
