import * as fc from 'fast-check';
import {
  NO_DAYS,
  complementOf,
  daySet,
  differenceOf,
  envelopeOf,
  intersectionOf,
  isSubset,
  measureOf,
  sameDays,
  saySet,
  setHolds,
  shiftBy,
  unionOf,
  type DaySet,
} from './day-set';
import { day } from './day';
import { ALL_DAYS, type DaySpan } from './day-span';

/** The reference: one flag for each day of a small world. */
const WORLD = 64;
type Bitmap = readonly boolean[];
const bitmapOf = (holds: (value: number) => boolean): Bitmap =>
  Array.from({ length: WORLD }, (_, value) => holds(value));
const setOf = (bits: Bitmap): DaySet =>
  daySet(bits.flatMap((bit, value) => (bit ? [{ from: value, to: value + 1 }] : [])));
const bitsOf = (set: DaySet): Bitmap => bitmapOf((value) => set.some((span) => span.from <= value && value < span.to));

const bitmaps = fc.array(fc.boolean(), { minLength: WORLD, maxLength: WORLD });
const spans = fc.array(
  fc.tuple(fc.nat(WORLD), fc.nat(WORLD)).map(([a, b]): DaySpan => ({ from: Math.min(a, b), to: Math.max(a, b) })),
  { maxLength: 12 },
);
const world: DaySpan = { from: 0, to: WORLD };

function expectCanonical(set: DaySet) {
  set.forEach((span, at) => {
    expect(span.from).toBeLessThan(span.to);
    if (at > 0) expect(set[at - 1]!.to).toBeLessThan(span.from);
  });
}

describe('a set of days, against a bitmap of days', () => {
  it('is the same canonical list whatever spans it was made of, and holds exactly their days', () => {
    fc.assert(
      fc.property(spans, fc.integer(), (given, seed) => {
        const bits = bitmapOf((value) => given.some((span) => span.from <= value && value < span.to));
        const set = daySet(given);
        const turned = [...given].sort(
          (a, b) => ((a.from * 31 + a.to * 17) ^ seed) - ((b.from * 31 + b.to * 17) ^ seed),
        );
        expectCanonical(set);
        expect(bitsOf(set)).toEqual(bits);
        expect(set).toEqual(setOf(bits));
        expect(daySet(turned)).toEqual(set);
        expect(daySet(set)).toEqual(set);
      }),
    );
  });

  it('unites, intersects and subtracts day by day, canonically', () => {
    fc.assert(
      fc.property(bitmaps, bitmaps, (a, b) => {
        const results = [unionOf, intersectionOf, differenceOf].map((operation) => operation(setOf(a), setOf(b)));
        results.forEach(expectCanonical);
        expect(results.map(bitsOf)).toEqual([
          a.map((bit, at) => bit || b[at]!),
          a.map((bit, at) => bit && b[at]!),
          a.map((bit, at) => bit && !b[at]!),
        ]);
      }),
    );
  });

  it('has as complement exactly the other days of the frame, also when it reaches out of the frame', () => {
    fc.assert(
      fc.property(bitmaps, fc.nat(WORLD), fc.nat(WORLD), (bits, a, b) => {
        const within = { from: Math.min(a, b), to: Math.max(a, b) };
        const rest = complementOf(setOf(bits), within);
        expectCanonical(rest);
        expect(bitsOf(rest)).toEqual(bits.map((bit, at) => !bit && within.from <= at && at < within.to));
      }),
    );
  });

  it('keeps the laws of sets: De Morgan, twice the complement, absorption', () => {
    fc.assert(
      fc.property(bitmaps, bitmaps, (left, right) => {
        const [a, b] = [setOf(left), setOf(right)];
        const not = (set: DaySet) => complementOf(set, world);
        expect(not(unionOf(a, b))).toEqual(intersectionOf(not(a), not(b)));
        expect(not(not(a))).toEqual(a);
        expect(unionOf(a, intersectionOf(a, b))).toEqual(a);
      }),
    );
  });

  it('holds a day, holds another set and is equal exactly when the bitmaps say so', () => {
    fc.assert(
      fc.property(bitmaps, bitmaps, (a, b) => {
        const [left, right] = [setOf(a), setOf(b)];
        expect(bitmapOf((value) => setHolds(left, value))).toEqual(a);
        expect(isSubset(left, right)).toBe(a.every((bit, at) => !bit || b[at]!));
        expect(isSubset(intersectionOf(left, right), left)).toBe(true);
        expect(sameDays(left, right)).toBe(a.every((bit, at) => bit === b[at]));
        expect(sameDays(left, setOf(a))).toBe(true);
      }),
    );
  });

  it('is measured by its days, and no less or more when moved', () => {
    fc.assert(
      fc.property(bitmaps, fc.integer({ min: -500, max: 500 }), (bits, days) => {
        const set = setOf(bits);
        const moved = shiftBy(set, days);
        expect(measureOf(set)).toBe(bits.filter(Boolean).length);
        expect(measureOf(moved)).toBe(measureOf(set));
        expect(bits.map((_, at) => setHolds(moved, at + days))).toEqual(bits);
        expect(shiftBy(moved, -days)).toEqual(set);
      }),
    );
  });

  it('has as envelope the span from its first day to its last', () => {
    fc.assert(
      fc.property(bitmaps, (bits) => {
        const first = bits.indexOf(true);
        const expected = first < 0 ? null : { from: first, to: bits.lastIndexOf(true) + 1 };
        expect(envelopeOf(setOf(bits))).toEqual(expected);
      }),
    );
  });
});

describe('a set of days with an open side', () => {
  const since = daySet([{ from: day('2017-03-14'), to: Infinity }]);

  it('is complemented, intersected and measured like any other', () => {
    expect(complementOf(since, ALL_DAYS)).toEqual([{ from: -Infinity, to: day('2017-03-14') }]);
    expect(intersectionOf(since, complementOf(since, ALL_DAYS))).toEqual(NO_DAYS);
    expect(unionOf(since, complementOf(since, ALL_DAYS))).toEqual([ALL_DAYS]);
    expect(measureOf(since)).toBe(Infinity);
    expect(differenceOf([ALL_DAYS], since)).toEqual([{ from: -Infinity, to: day('2017-03-14') }]);
  });

  it('is said in words, both days inside', () => {
    expect(saySet(since)).toBe('since 14 Mar 2017');
    expect(saySet(NO_DAYS)).toBe('no day');
    expect(saySet([ALL_DAYS])).toBe('any day');
    expect(
      saySet(
        daySet([
          { from: -Infinity, to: day('2016-01-02') },
          { from: day('2017-01-01'), to: day('2018-01-01') },
        ]),
      ),
    ).toBe('until 1 Jan 2016, or 1 Jan 2017 to 31 Dec 2017');
  });
});
