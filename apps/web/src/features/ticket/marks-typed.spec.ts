import { describe, expect, it } from '@jest/globals';
import { hasMarks, lengthProblem, marksFrom, typedFrom } from './marks-typed';

const empty = typedFrom(null);

describe('the marks form', () => {
  it('gives back what was kept, with the unit it was kept in', () => {
    const kept = { headMarks: '3 lines', diameterMm: 7.9375, lengthMm: 50, grooved: false, finish: 'zinc' };
    expect(typedFrom(kept)).toMatchObject({ diameter: '7.9375 mm', length: '50 mm', groove: 'no' });
    expect(marksFrom(typedFrom(kept))).toEqual(kept);
  });

  it('keeps nothing of a length without a unit, and says what it would take', () => {
    expect(marksFrom({ ...empty, diameter: '6' })).toBeNull();
    expect(lengthProblem('6', 'diameter')).toContain('6 mm, 0.25 in, 1/4 in');
    expect(lengthProblem('', 'diameter')).toBeNull();
  });

  it('asks nothing before anything was looked at', () => {
    expect(hasMarks(marksFrom(empty))).toBe(false);
    expect(hasMarks(marksFrom({ ...empty, groove: 'no' }))).toBe(true);
  });
});
