import { day, formatDay } from '../../day';
import { monthsBefore } from './look-back';

describe('monthsBefore', () => {
  it.each([
    ['2026-11-20', 36, '2023-11-20'],
    ['2026-01-15', 1, '2025-12-15'],
    ['2024-03-31', 1, '2024-02-29'],
    ['2025-03-31', 1, '2025-02-28'],
    ['2024-02-29', 12, '2023-02-28'],
    ['2026-11-20', 0, '2026-11-20'],
  ])('from %s, %i months back is %s', (today, months, expected) => {
    expect(formatDay(monthsBefore(day(today), months))).toBe(expected);
  });
});
