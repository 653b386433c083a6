import fc from 'fast-check';
import { inchesFromMm, mmFromInches, mpaFromKsi, nmFrom, pitchMmFromTpi, readLength, torqueIn } from './index';

describe('units at the edge', () => {
  // NIST SP 811, appendix B.8 (from memory, recomputed from the exact pound, inch and standard gravity).
  it('turns inch units into SI as NIST SP 811 prints them', () => {
    expect(mmFromInches(1)).toBe(25.4);
    expect(mpaFromKsi(1)).toBeCloseTo(6.894757, 6);
    expect(nmFrom(1, 'lbf·in')).toBeCloseTo(0.1129848, 7);
    expect(nmFrom(1, 'lbf·ft')).toBeCloseTo(1.3558179, 7);
    expect(pitchMmFromTpi(20)).toBeCloseTo(1.27, 12);
  });

  it('gives back what it was given', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (value) => {
        expect(inchesFromMm(mmFromInches(value))).toBeCloseTo(value, 6);
        expect(torqueIn(nmFrom(value, 'lbf·ft'), 'lbf·ft')).toBeCloseTo(value, 9);
        expect(torqueIn(value, 'lbf·in')).toBeCloseTo(12 * torqueIn(value, 'lbf·ft'), 6);
      }),
    );
  });

  it.each([
    ['6 mm', 6],
    ['6.35mm', 6.35],
    ['1/4 in', 6.35],
    ['1/4"', 6.35],
    ['1-1/2 in', 38.1],
    ['2 3/16 in', 55.5625],
    ['0.25 in', 6.35],
    ['.25 in', 6.35],
  ])('reads %s as %d mm', (text, mm) => {
    expect(readLength(text, 'diameter')).toEqual({ ok: true, value: mm });
  });

  it.each(['6', '', 'mm', '0 mm', '1/0 in', '-3 mm', '1/4', '1/4 mm', '6 cm', '1,5 mm', 'NaN mm'])(
    'refuses %p and says what it reads',
    (text) => {
      const read = readLength(text, 'diameter');
      expect(read).toMatchObject({ ok: false, problems: [{ code: 'bad-value', field: 'diameter', value: text }] });
      expect(read.ok || read.problems[0]?.sentence).toBe(
        `diameter is ${JSON.stringify(text)}; accepted is a length above 0 with its unit, such as 6 mm, 0.25 in, 1/4 in or 1-1/2 in.`,
      );
    },
  );
});
