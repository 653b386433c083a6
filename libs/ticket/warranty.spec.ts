import { assert, integer, property } from 'fast-check';
import { day, formatDay } from '../day';
import { runsOn, sayWarranty, warrantyUntil } from './index';

const until = (boughtOn: string, months: number) => formatDay(warrantyUntil({ boughtOn: day(boughtOn), months }));

describe('a warranty', () => {
  it.each([
    ['2025-03-03', 24, '2027-03-04'],
    ['2024-01-31', 1, '2024-03-01'],
    ['2025-01-31', 1, '2025-03-01'],
    ['2024-02-29', 12, '2025-03-01'],
    ['2024-02-29', 48, '2028-03-01'],
    ['2025-12-31', 6, '2026-07-01'],
  ])('of a unit bought on %s for %i months no longer runs on %s', (boughtOn, months, first) => {
    expect(until(boughtOn, months)).toBe(first);
  });

  it('runs on the day of purchase and on its last day, and not the day after or before', () => {
    assert(
      property(
        integer({ min: day('1990-01-01'), max: day('2060-12-31') }),
        integer({ min: 1, max: 240 }),
        (boughtOn, months) => {
          const term = { boughtOn, months };
          const end = warrantyUntil(term);
          const runs = [boughtOn - 1, boughtOn, end - 1, end].map((on) => runsOn(term, on));
          expect(runs).toEqual([false, true, true, false]);
          expect(warrantyUntil({ boughtOn, months: months + 1 })).toBeGreaterThan(end);
          expect(warrantyUntil({ boughtOn: boughtOn + 1, months })).toBeGreaterThanOrEqual(end);
        },
      ),
    );
  });

  it('is told with its last day', () => {
    const term = { boughtOn: day('2025-03-03'), months: 24 };
    expect(sayWarranty(term, day('2027-03-03'))).toBe(
      'Bought 3 Mar 2025, under warranty for 24 months: up to and including 3 Mar 2027.',
    );
    expect(sayWarranty({ ...term, months: 1 }, day('2027-03-04'))).toBe(
      'Bought 3 Mar 2025; its warranty of 1 month ended with 3 Apr 2025.',
    );
  });
});
