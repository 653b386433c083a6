import type { PartKey } from './number-rules';

/** Where the walk stands: a part, and which of its steps comes next. */
interface Frame {
  readonly part: PartKey;
  next: number;
}

/**
 * Every group of parts that can be reached from one another, each sorted, in order of their first part; a part alone
 * counts when a step leads from it to itself. Strongly connected components after Tarjan (SIAM Journal on Computing
 * 1972), with a stack of our own, so that a long chain of parts does not exhaust the machine's.
 */
export function ringsOf(steps: ReadonlyMap<PartKey, readonly PartKey[]>): readonly (readonly PartKey[])[] {
  const order = new Map<PartKey, number>();
  const low = new Map<PartKey, number>();
  const open: PartKey[] = [];
  const isOpen = new Set<PartKey>();
  const rings: PartKey[][] = [];
  const walk: Frame[] = [];
  const enter = (part: PartKey): void => {
    order.set(part, order.size);
    low.set(part, order.get(part)!);
    open.push(part);
    isOpen.add(part);
    walk.push({ part, next: 0 });
  };
  const lower = (part: PartKey, to: number): void => void low.set(part, Math.min(low.get(part)!, to));
  const close = (part: PartKey): void => {
    const group = open.splice(open.lastIndexOf(part));
    for (const one of group) isOpen.delete(one);
    if (group.length > 1 || (steps.get(part) ?? []).includes(part)) rings.push(group.sort());
  };
  for (const root of steps.keys()) {
    if (!order.has(root)) enter(root);
    while (walk.length > 0) {
      const frame = walk[walk.length - 1]!;
      const to = steps.get(frame.part)?.[frame.next++];
      if (to !== undefined) {
        if (!order.has(to)) enter(to);
        else if (isOpen.has(to)) lower(frame.part, order.get(to)!);
        continue;
      }
      walk.pop();
      const above = walk[walk.length - 1];
      if (above) lower(above.part, low.get(frame.part)!);
      if (low.get(frame.part) === order.get(frame.part)) close(frame.part);
    }
  }
  return rings.sort((a, b) => (a[0]! < b[0]! ? -1 : 1));
}
