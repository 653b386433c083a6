import { array, assert, boolean, integer, property, record } from 'fast-check';
import { decimal, priceOfTime, sayMinor, sumsOf, type Tax } from './sums';

const vat = (basisPoints: number, included: boolean): Tax => ({ name: 'VAT', basisPoints, included });
const taxArb = record({
  name: integer().map(String),
  basisPoints: integer({ min: 0, max: 10_000 }),
  included: boolean(),
});
const amountsArb = array(integer({ min: 0, max: 100_000_000 }), { maxLength: 60 });

describe('the sums of an estimate', () => {
  // Worked by hand; the rounding half up is common practice, no source.
  it.each([
    [[10_000], vat(2_100, false), { netMinor: 10_000, taxMinor: 2_100, totalMinor: 12_100 }],
    [[12_100], vat(2_100, true), { netMinor: 10_000, taxMinor: 2_100, totalMinor: 12_100 }],
    [[50], vat(100, false), { netMinor: 50, taxMinor: 1, totalMinor: 51 }],
    [[49], vat(100, false), { netMinor: 49, taxMinor: 0, totalMinor: 49 }],
    [[], vat(2_100, true), { netMinor: 0, taxMinor: 0, totalMinor: 0 }],
    // Three lines of 0.33: tax of each would round to 0.07 and make 0.21; of the sum it is 0.2079, rounded once.
    [[33, 33, 33], vat(2_100, false), { netMinor: 99, taxMinor: 21, totalMinor: 120 }],
    // Each of ten lines of 0.02 alone would have no tax at all.
    [Array.from({ length: 10 }, () => 2), vat(2_000, false), { netMinor: 20, taxMinor: 4, totalMinor: 24 }],
  ])('of %j with %j', (amounts, tax, sums) => {
    expect(sumsOf(amounts, tax)).toEqual(sums);
  });

  it('never round twice: the tax is within half a unit of the exact one, and the rest is whole arithmetic', () => {
    assert(
      property(amountsArb, taxArb, (amounts, tax) => {
        const { netMinor, taxMinor, totalMinor } = sumsOf(amounts, tax);
        const sum = amounts.reduce((total, amount) => total + BigInt(amount), 0n);
        expect(netMinor + taxMinor).toBe(totalMinor);
        expect(BigInt(tax.included ? totalMinor : netMinor)).toBe(sum);
        // exact tax = sum * rate / base; |2 * base * tax - 2 * sum * rate| <= base, and up at the half
        const base = 10_000n + (tax.included ? BigInt(tax.basisPoints) : 0n);
        const off = 2n * base * BigInt(taxMinor) - 2n * sum * BigInt(tax.basisPoints);
        expect(off > -base && off <= base).toBe(true);
      }),
    );
  });

  it('do not depend on how the amounts are split into lines, or on their order', () => {
    assert(
      property(amountsArb, taxArb, integer({ min: 0, max: 60 }), (amounts, tax, at) => {
        const joined = [amounts.slice(0, at).reduce((a, b) => a + b, 0), ...amounts.slice(at)];
        expect(sumsOf(joined, tax)).toEqual(sumsOf([...amounts].reverse(), tax));
      }),
    );
  });

  it('refuse what is no amount', () => {
    for (const amount of [-1, 0.5, NaN, Infinity]) expect(() => sumsOf([amount], vat(0, true))).toThrow(RangeError);
    expect(() => sumsOf([1], vat(-1, true))).toThrow(RangeError);
  });
});

describe('the price of time', () => {
  it('is rounded half up, once', () => {
    expect([priceOfTime(45, 6_400), priceOfTime(1, 30), priceOfTime(1, 29), priceOfTime(0, 6_400)]).toEqual([
      4_800, 1, 0, 0,
    ]);
  });
});

describe('money in words', () => {
  it('has two places, whatever the amount', () => {
    expect([0, 5, 99, 100, 1_250, 100_000_000].map(decimal)).toEqual([
      '0.00',
      '0.05',
      '0.99',
      '1.00',
      '12.50',
      '1000000.00',
    ]);
    expect(sayMinor(1_250, 'EUR')).toBe('12.50 EUR');
  });
});
