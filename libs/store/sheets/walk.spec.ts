import fc from 'fast-check';
import { wholeGroups } from './walk';

// eslint-disable-next-line @typescript-eslint/require-await -- pieces that are there already, read as those of a walk are
async function* inPieces<T>(all: readonly T[], cuts: readonly number[]): AsyncGenerator<readonly T[]> {
  for (let from = 0, at = 0; from < all.length; at++) {
    const to = from + cuts[at % cuts.length]!;
    yield all.slice(from, to);
    from = to;
  }
}

describe('groups of a walk', () => {
  it('are never cut, and nothing is lost, doubled or moved, however the pieces fall', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: 1, max: 7 })), { maxLength: 12 }),
        fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 4 }),
        async (runs, cuts) => {
          const rows = runs.flatMap(([key, times], group) =>
            Array.from({ length: times }, (_, n) => ({ key: `${group}${key}`, n })),
          );
          const groups: (readonly { key: string; n: number }[])[] = [];
          for await (const group of wholeGroups(inPieces(rows, cuts), ({ key }) => key)) groups.push(group);
          expect(groups.flat()).toEqual(rows);
          if (rows.length > 0 && cuts[0]! >= rows.length) expect(groups).toHaveLength(1);
          const seen = new Set<string>();
          for (const group of groups) {
            const keys = new Set(group.map(({ key }) => key));
            for (const key of keys) expect(seen.has(key)).toBe(false);
            for (const key of keys) seen.add(key);
          }
        },
      ),
    );
  });
});
