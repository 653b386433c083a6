import { describe, expect, it } from '@jest/globals';
import { day } from '../../../../libs/day';
import { barOf, timeScale } from './time-scale';

describe('a time axis', () => {
  const scale = timeScale([{ from: '2010-01-01', to: '2020-01-01' }]);

  it('holds both ends of every span with room beside them', () => {
    expect(scale.at(day('2010-01-01'))).toBeGreaterThan(0);
    expect(scale.at(day('2020-01-01'))).toBeLessThan(100);
  });

  it('draws an open side up to the edge and days outside at the edge', () => {
    expect(barOf(scale, { from: null, to: null })).toEqual({ left: 0, width: 100 });
    expect(scale.at(day('1990-01-01'))).toBe(0);
  });

  it('keeps a single day wide enough to be seen', () => {
    expect(barOf(scale, { from: '2015-01-01', to: '2015-01-02' }).width).toBe(0.5);
  });

  it('names the years from left to right, never more than asked for', () => {
    const long = timeScale([{ from: '1950-01-01', to: '2026-01-01' }], 6);
    expect(long.years.length).toBeLessThanOrEqual(6);
    expect([...long.years].sort((a, b) => a.at - b.at)).toEqual(long.years);
  });

  it('still gives an axis when there is nothing to draw', () => {
    expect(timeScale([]).years.length).toBeGreaterThan(0);
  });
});
