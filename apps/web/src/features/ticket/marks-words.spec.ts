import { describe, expect, it } from '@jest/globals';
import { marksWords, readLength } from './marks-words';

describe('marks seen through a hand lens', () => {
  // 1 in = 25.4 mm exactly: international yard and pound agreement of 1959; NIST SP 811, appendix B.8
  it('reads millimetres and inches, whole, as a fraction, and mixed', () => {
    expect(['8', '8.5 mm', '8,5', '5/16 in', '1 1/4"', '0.25in', '1-1/2 in'].map(readLength)).toEqual([
      8, 8.5, 8.5, 7.938, 31.75, 6.35, 38.1,
    ]);
  });

  it('reads nothing into what is no length', () => {
    expect(['', 'long', '0', '-3', '1/0 in', '5/16', 'in'].map(readLength)).toEqual([
      null,
      null,
      null,
      null,
      null,
      null,
      null,
    ]);
  });

  it('says only what was looked at', () => {
    expect(marksWords({ headMarks: null, diameterMm: 8, lengthMm: null, grooved: false, finish: null })).toBe(
      '8 mm across, no groove',
    );
    expect(marksWords({ headMarks: null, diameterMm: null, lengthMm: null, grooved: null, finish: null })).toBe(
      'no marks either',
    );
  });
});
