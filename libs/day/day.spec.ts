import { addDays, format, getDaysInMonth, isLeapYear as referenceIsLeapYear } from 'date-fns';
import * as fc from 'fast-check';
import {
  civilDateOf,
  day,
  dayOf,
  dayOfInstant,
  daysInMonth,
  formatDay,
  isLeapYear,
  parseDay,
  sayDay,
  sayMonth,
} from './day';

const FIRST = dayOf(1950, 1, 1);
const END = dayOf(2100, 1, 1);

/** The same civil day by another library: local noon, so that no clock change can move it. */
const reference = (value: number) => addDays(new Date(1970, 0, 1, 12), value);

describe('a civil day', () => {
  it('is counted, split and written like in date-fns on every day from 1950 to 2099', () => {
    const different: string[] = [];
    for (let value = FIRST; value < END; value++) {
      const other = reference(value);
      const { year, month, dayOfMonth } = civilDateOf(value);
      const same =
        year === other.getFullYear() &&
        month === other.getMonth() + 1 &&
        dayOfMonth === other.getDate() &&
        dayOf(year, month, dayOfMonth) === value &&
        formatDay(value) === format(other, 'yyyy-MM-dd') &&
        parseDay(formatDay(value)) === value;
      if (!same) different.push(formatDay(value));
    }
    expect(different).toEqual([]);
  });

  it('knows leap years and month lengths like date-fns from 1950 to 2099, and the centuries by the rule', () => {
    for (let year = 1950; year < 2100; year++) {
      expect(isLeapYear(year)).toBe(referenceIsLeapYear(new Date(year, 0, 1)));
      for (let month = 1; month <= 12; month++)
        expect(daysInMonth(year, month)).toBe(getDaysInMonth(new Date(year, month - 1, 1)));
    }
    expect([1900, 2000, 2100, 2400].map(isLeapYear)).toEqual([false, true, false, true]);
  });

  it('carries months beyond the year and days beyond the month', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1950, max: 2099 }), fc.integer({ min: -40, max: 40 }), (year, month) => {
        const years = Math.floor((month - 1) / 12);
        expect(dayOf(year, month, 1)).toBe(dayOf(year + years, month - 12 * years, 1));
        expect(dayOf(year, month, 0)).toBe(dayOf(year, month, 1) - 1);
      }),
    );
    expect(formatDay(dayOf(2023, 13, 1))).toBe('2024-01-01');
  });

  it('is read back from what was written, for every year from 1 to 9999', () => {
    fc.assert(
      fc.property(fc.integer({ min: dayOf(1, 1, 1), max: dayOf(9999, 12, 31) }), (value) => {
        expect(parseDay(formatDay(value))).toBe(value);
      }),
    );
  });

  it('is refused when it does not exist or is written otherwise', () => {
    for (const text of [
      '2023-02-29',
      '2023-13-01',
      '2023-00-10',
      '2023-04-31',
      '0000-01-01',
      '2023-1-1',
      '',
      '01/02/2023',
      '2023-01-01T00:00',
    ])
      expect(parseDay(text)).toBeNull();
    expect(() => day('2023-02-29')).toThrow('not a civil day: 2023-02-29');
  });

  it('is said so that nobody can turn day and month round', () => {
    expect(sayDay(day('2017-03-04'))).toBe('4 Mar 2017');
    expect(sayMonth(day('2017-03-04'))).toBe('Mar 2017');
  });

  it('falls where the shop is, not where the clock of the machine is', () => {
    const instant = new Date('2026-01-01T03:00:00Z');
    expect(formatDay(dayOfInstant(instant, 'America/Chicago'))).toBe('2025-12-31');
    expect(formatDay(dayOfInstant(instant, 'UTC'))).toBe('2026-01-01');
    expect(formatDay(dayOfInstant(instant, 'Pacific/Kiritimati'))).toBe('2026-01-01');
  });
});
