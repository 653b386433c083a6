import { describe, expect, it } from '@jest/globals';
import { axisTicks, sayTorque } from './torque-words';

describe('a torque on the page', () => {
  // 1 lbf·ft = 1.355818 N·m: NIST SP 811, appendix B.8
  it('is said in both units, the one of the shop first', () => {
    expect(sayTorque({ low: 135.5818, high: 135.5818 }, 'N·m')).toBe('136 N·m (100 lbf·ft)');
    expect(sayTorque({ low: 135.5818, high: 271.1636 }, 'lbf·ft')).toBe('100 to 200 lbf·ft (136 to 271 N·m)');
  });

  it('has an axis of a few round steps that reaches past the greatest', () => {
    expect(axisTicks(941)).toEqual([0, 200, 400, 600, 800, 1000]);
    for (const most of [0.7, 3, 19, 100, 250, 999, 1_000, 48_000]) {
      const ticks = axisTicks(most);
      expect(ticks.at(-1)).toBeGreaterThan(most);
      expect(ticks.at(-2)).toBeLessThanOrEqual(most);
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      expect(ticks.length).toBeLessThanOrEqual(7);
    }
  });
});
