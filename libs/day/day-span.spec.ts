import * as fc from 'fast-check';
import { daySpan, meetOfSpans, saySpan, spanHolds } from './day-span';
import { day } from './day';

const span = fc
  .tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 40 }))
  .map(([from, length]) => daySpan(from, from + length));

describe('a span of days', () => {
  it('holds its first day and not its last', () => {
    fc.assert(
      fc.property(span, (given) => {
        expect([given.from - 1, given.from, given.to - 1, given.to].map((value) => spanHolds(given, value))).toEqual([
          false,
          true,
          true,
          false,
        ]);
      }),
    );
  });

  it('meets another in exactly the days both hold; spans that only touch meet in none', () => {
    fc.assert(
      fc.property(span, span, fc.integer({ min: -60, max: 100 }), (a, b, value) => {
        const meet = meetOfSpans(a, b);
        expect(meet !== null && spanHolds(meet, value)).toBe(spanHolds(a, value) && spanHolds(b, value));
        expect(meetOfSpans(b, a)).toEqual(meet);
      }),
    );
    expect(meetOfSpans({ from: 0, to: 5 }, { from: 5, to: 9 })).toBeNull();
  });

  it('is refused when it would hold no day', () => {
    expect(() => daySpan(5, 5)).toThrow(RangeError);
    expect(() => daySpan(6, 5)).toThrow('a span must end after it begins: [6, 5)');
    expect(() => daySpan(NaN, 5)).toThrow(RangeError);
  });

  it('is said with both its days, one day alone as that day', () => {
    expect(saySpan({ from: day('2017-03-03'), to: day('2018-04-05') })).toBe('3 Mar 2017 to 4 Apr 2018');
    expect(saySpan({ from: day('2017-03-03'), to: day('2017-03-04') })).toBe('3 Mar 2017');
  });
});
