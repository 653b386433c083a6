import { describe, expect, it } from '@jest/globals';
import { axisTicks } from './torque-words';

describe('the axis of torques', () => {
  it('has a few round steps that reaches past the greatest', () => {
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
