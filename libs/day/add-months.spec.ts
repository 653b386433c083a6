import { addMonths as addMonthsElsewhere } from 'date-fns';
import { assert, integer, property } from 'fast-check';
import { addMonths, day, formatDay } from './index';

describe('a day so many months later', () => {
  it.each([
    ['2026-01-31', 1, '2026-02-28'],
    ['2024-01-31', 1, '2024-02-29'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2024-02-29', 48, '2028-02-29'],
    ['2026-08-31', 6, '2027-02-28'],
    ['2026-03-31', 1, '2026-04-30'],
    ['2026-12-15', 1, '2027-01-15'],
    ['2026-11-30', 3, '2027-02-28'],
    ['2026-05-05', 0, '2026-05-05'],
  ])('%s and %i months is %s', (from, months, to) => {
    expect(formatDay(addMonths(day(from), months))).toBe(to);
  });

  it('is the one that another library finds', () => {
    assert(
      property(
        integer({ min: day('1970-01-01'), max: day('2090-12-31') }),
        integer({ min: 0, max: 600 }),
        (from, months) => {
          const [year, month, dayOfMonth] = formatDay(from).split('-').map(Number) as [number, number, number];
          const other = addMonthsElsewhere(new Date(year, month - 1, dayOfMonth, 12), months);
          const two = (value: number) => String(value).padStart(2, '0');
          const text = `${other.getFullYear()}-${two(other.getMonth() + 1)}-${two(other.getDate())}`;
          expect(formatDay(addMonths(from, months))).toBe(text);
        },
      ),
    );
  });
});
