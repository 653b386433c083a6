import fc from 'fast-check';
import { endsOfPieces } from './cut-chunk';

const places = (units: readonly number[]) => units.map((unitId) => ({ unitId, positionId: 1, place: 1 }));

describe('a chunk with more to judge than one transaction should write', () => {
  it('is cut between units, and not at all when everything fits', () => {
    expect(endsOfPieces(places([]), 3)).toEqual([]);
    expect(endsOfPieces(places([1, 1, 2]), 3)).toEqual([]);
    expect(endsOfPieces(places([1, 1, 2, 2, 3, 4]), 3)).toEqual([1, 3]);
    expect(endsOfPieces(places([1, 1, 1, 1, 1, 2]), 3)).toEqual([1]);
  });

  it('leaves no piece that is too large unless it is one unit, and no piece without suspects', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 60 }),
        fc.integer({ min: 1, max: 9 }),
        (ids, most) => {
          const units = [...ids].sort((a, b) => a - b);
          const ends = [...endsOfPieces(places(units), most), Infinity];
          ends.forEach((end, i) => {
            const piece = units.filter((unit) => unit <= end && unit > (ends[i - 1] ?? 0));
            expect(piece.length <= most || new Set(piece).size === 1).toBe(true);
            expect(piece.length > 0 || units.length === 0).toBe(true);
          });
        },
      ),
    );
  });
});
