import { describe, expect, it } from '@jest/globals';
import { marksWords, readWritten } from './marks-words';

describe('marks seen through a hand lens', () => {
  // 1 in = 25.4 mm exactly: international yard and pound agreement of 1959; NIST SP 811, appendix B.8
  it('reads millimetres and inches, whole, as a fraction, and mixed', () => {
    const read = (text: string) => readWritten(text, 'diameter');
    const lengths = ['8 mm', '8,5 mm', '5/16 in', '1 1/4"', '0.25 in', '1-1/2 in'];
    expect(lengths.map((text) => read(text)).map((one) => one.ok && one.value)).toEqual([
      8, 8.5, 7.9375, 31.75, 6.35, 38.1,
    ]);
  });

  it('asks for the unit, for 6 could be either', () => {
    const read = readWritten('6', 'diameter');
    expect(read.ok ? '' : read.problems[0]!.sentence).toContain(
      'diameter is "6"; accepted is a length above 0 with its unit',
    );
    for (const text of ['', 'long', '0 mm', '-3 mm', '1/0 in', 'in'])
      expect(readWritten(text, 'length').ok).toBe(false);
  });

  it('says only what was looked at', () => {
    expect(marksWords({ headMarks: null, diameterMm: 8, lengthMm: null, grooved: false, finish: null })).toBe(
      '8 mm (0.315 in) across, no groove',
    );
    expect(marksWords({ headMarks: null, diameterMm: null, lengthMm: null, grooved: null, finish: null })).toBe(
      'no marks either',
    );
  });
});
