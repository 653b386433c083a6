import { addDays, getISODay, getISOWeek, getISOWeeksInYear, getISOWeekYear } from 'date-fns';
import { civilDateOf, day, dayOf, formatDay } from './day';
import { fullWeekStart } from './full-week';
import { isoWeekDateOf, isoWeekStart, isoWeeksIn } from './iso-week';

describe('an ISO week', () => {
  // ISO 8601-1:2019: week 1 holds 4 January. ISO 8601:2000 clause 5.2.3.1 prints 1985-W15-5; the others are the
  // year-end examples of public pages on ISO week dates. The last one is often printed wrong as 2023-W01-6.
  it.each([
    ['1985-04-12', 1985, 15, 5],
    ['2005-01-01', 2004, 53, 6],
    ['2006-01-01', 2005, 52, 7],
    ['2008-12-29', 2009, 1, 1],
    ['2009-12-31', 2009, 53, 4],
    ['2010-01-03', 2009, 53, 7],
    ['2022-12-31', 2022, 52, 6],
  ])('of %s is %i-W%i-%i', (text, year, week, weekday) => {
    expect(isoWeekDateOf(day(text))).toEqual({ year, week, weekday });
    expect(isoWeekStart(year, week)! + weekday - 1).toBe(day(text));
  });

  it('is the one date-fns finds on every day from 1950 to 2099, and its Monday leads back to the day', () => {
    const different: string[] = [];
    for (let value = dayOf(1950, 1, 1); value < dayOf(2100, 1, 1); value++) {
      const other = addDays(new Date(1970, 0, 1, 12), value);
      const { year, week, weekday } = isoWeekDateOf(value);
      const same = year === getISOWeekYear(other) && week === getISOWeek(other) && weekday === getISODay(other);
      if (!same || isoWeekStart(year, week)! + weekday - 1 !== value) different.push(formatDay(value));
    }
    expect(different).toEqual([]);
  });

  it('is the 53rd in these years only, and in no year the 54th or the one before the first', () => {
    // Computed with date-fns, luxon and the Temporal polyfill, which agree.
    const long = [1981, 1987, 1992, 1998, 2004, 2009, 2015, 2020, 2026, 2032, 2037];
    for (let year = 1980; year <= 2040; year++) {
      expect(isoWeeksIn(year)).toBe(long.includes(year) ? 53 : 52);
      expect(isoWeeksIn(year)).toBe(getISOWeeksInYear(new Date(year, 6, 1)));
      expect(isoWeekStart(year, 53) === null).toBe(!long.includes(year));
    }
    expect([isoWeekStart(2004, 54), isoWeekStart(2004, 0), isoWeekStart(2004, 1.5)]).toEqual([null, null, null]);
  });
});

describe('a week counted from the first full one of the year', () => {
  it('begins on a Sunday, and the first lies wholly in the year with less than a week before it', () => {
    for (let year = 1950; year < 2100; year++) {
      const first = fullWeekStart(year, 1)!;
      expect(isoWeekDateOf(first).weekday).toBe(7);
      expect(first - dayOf(year, 1, 1)).toBeGreaterThanOrEqual(0);
      expect(first - dayOf(year, 1, 1)).toBeLessThan(7);
    }
  });

  it('gives every day from 1950 to 2099 exactly one week, the days before the first one to the year before', () => {
    for (let year = 1950; year < 2099; year++) {
      const last = fullWeekStart(year, 53) ?? fullWeekStart(year, 52)!;
      expect(fullWeekStart(year + 1, 1)).toBe(last + 7);
      expect(civilDateOf(last).year).toBe(year);
    }
  });

  it('does not exist outside the year', () => {
    expect([fullWeekStart(2001, 0), fullWeekStart(2001, 54), fullWeekStart(2001, 53)]).toEqual([null, null, null]);
    expect(formatDay(fullWeekStart(2017, 53)!)).toBe('2017-12-31');
  });
});
