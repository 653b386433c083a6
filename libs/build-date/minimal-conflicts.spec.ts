import * as fc from 'fast-check';
import { daySet, intersectionOf, type DaySet } from '../day';
import { minimalConflicts } from './minimal-conflicts';
import { minimalHittingSets } from './minimal-hitting-sets';

const bounds = { from: 0, to: 30 };
const aSet = (maxLength: number) =>
  fc
    .array(fc.tuple(fc.integer({ min: -3, max: 33 }), fc.integer({ min: 1, max: 12 })), { minLength: 1, maxLength })
    .map((spans) => daySet(spans.map(([from, length]) => ({ from, to: from + length }))));

/** The reference: look at every subset. */
function byBruteForce(sets: readonly DaySet[]): number[][] {
  const shared = (subset: number) =>
    sets.reduce<DaySet>((left, set, at) => (subset & (1 << at) ? intersectionOf(left, set) : left), [bounds]);
  const members = (subset: number) => sets.map((_, at) => at).filter((at) => subset & (1 << at));
  const found: number[][] = [];
  for (let subset = 1; subset < 1 << sets.length; subset++) {
    const minimal = members(subset).every((at) => shared(subset & ~(1 << at)).length > 0);
    if (minimal && shared(subset).length === 0) found.push(members(subset));
  }
  return found;
}

const asText = (groups: number[][]) => groups.map((group) => group.join()).sort();

describe('the minimal conflicts of day sets', () => {
  it('are exactly those found by looking at every subset', () => {
    fc.assert(
      fc.property(fc.array(aSet(3), { maxLength: 9 }), (sets) => {
        const spare = sets.every((set) => intersectionOf(set, [bounds]).length > 0);
        fc.pre(spare);
        const all = sets.reduce<DaySet>((left, set) => intersectionOf(left, set), [bounds]);
        expect(asText(minimalConflicts(sets, bounds))).toEqual(all.length > 0 ? [] : asText(byBruteForce(sets)));
      }),
      { numRuns: 500 },
    );
  });

  it('are pairs when every set is one span (Helly)', () => {
    fc.assert(
      fc.property(fc.array(aSet(1), { minLength: 2, maxLength: 20 }), (sets) => {
        fc.pre(sets.every((set) => intersectionOf(set, [bounds]).length > 0));
        expect(minimalConflicts(sets, bounds).every((group) => group.length === 2)).toBe(true);
      }),
    );
  });

  it('come smaller groups first, then by place', () => {
    const sets = [
      daySet([
        { from: 0, to: 5 },
        { from: 20, to: 30 },
      ]),
      daySet([{ from: 0, to: 10 }]),
      daySet([{ from: 5, to: 30 }]),
      daySet([{ from: 6, to: 9 }]),
    ];
    expect(minimalConflicts(sets, bounds)).toEqual([
      [0, 3],
      [0, 1, 2],
    ]);
  });
});

describe('minimal hitting sets of twenty members', () => {
  it('are all 1,024 choices of one from each of ten pairs', () => {
    const pairs = Array.from({ length: 10 }, (_, at) => 0b11 << (2 * at));
    const found = minimalHittingSets(pairs, 20);
    expect(found).toHaveLength(1_024);
    expect(new Set(found.map((set) => set.join())).size).toBe(1_024);
    expect(
      found.every(
        (set) => set.length === 10 && pairs.every((pair) => set.filter((at) => pair & (1 << at)).length === 1),
      ),
    ).toBe(true);
  });

  it('are one member each when a single edge holds them all, and all of them when each is an edge alone', () => {
    expect(minimalHittingSets([2 ** 20 - 1], 20)).toEqual(Array.from({ length: 20 }, (_, at) => [at]));
    const alone = Array.from({ length: 20 }, (_, at) => 1 << at);
    expect(minimalHittingSets(alone, 20)).toEqual([Array.from({ length: 20 }, (_, at) => at)]);
  });

  it('are refused above twenty members rather than found in part', () => {
    expect(() => minimalHittingSets([1], 21)).toThrow('at most 20 members, not 21');
  });
});
