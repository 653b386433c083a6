import { circleAreaMm2, mmFromInches, mpaFromKsi, pitchMmFromTpi, threadAreaMm2, threadDiameterMm } from './index';
import { stripAreaMm2 } from './thread-section';

const IN2 = 25.4 * 25.4;

describe('thread areas', () => {
  // Stress areas as ASME B1.1 prints them; shank and root areas computed from the same sizes.
  it.each([
    ['1/4-20', 1 / 4, 20, 0.0318, 0.0491, 0.0269, 0.028],
    ['5/16-18', 5 / 16, 18, 0.0524, 0.0767, 0.0454, 0.0469],
    ['3/8-16', 3 / 8, 16, 0.0775, 0.1104, 0.0678, 0.0699],
    ['7/16-14', 7 / 16, 14, 0.1063, 0.1503, 0.0933, 0.0961],
  ])('%s UNC has the areas of the inch tables to their last digit', (_, inches, tpi, stress, shank, sharp, round) => {
    const [d, p] = [mmFromInches(inches), pitchMmFromTpi(tpi)];
    expect((threadAreaMm2(d, p, 'stress-area-inch') / IN2).toFixed(4)).toBe(stress.toFixed(4));
    expect((circleAreaMm2(d) / IN2).toFixed(4)).toBe(shank.toFixed(4));
    expect((threadAreaMm2(d, p, 'root-1.2990') / IN2).toFixed(4)).toBe(sharp.toFixed(4));
    expect((threadAreaMm2(d, p, 'root-1.2269') / IN2).toFixed(4)).toBe(round.toFixed(4));
  });

  // Nominal stress areas as ISO 898-1 prints them (three figures); roots by d3 = d − 1.226869 P.
  it.each([
    ['M6×1', 6, 1, '20.1', 28.27, 17.89],
    ['M8×1.25', 8, 1.25, '36.6', 50.27, 32.84],
    ['M10×1.5', 10, 1.5, '58.0', 78.54, 52.29],
  ])('%s has the areas of the metric tables to their last digit', (_, d, p, stress, shank, root) => {
    expect(threadAreaMm2(d, p, 'stress-area-metric').toFixed(1)).toBe(stress);
    expect(circleAreaMm2(d)).toBeCloseTo(shank, 2);
    expect(threadAreaMm2(d, p, 'root-1.2269')).toBeCloseTo(root, 2);
  });

  // Minimum ultimate tensile loads of ISO 898-1: nominal stress area × minimum tensile, in N, printed to three figures.
  it.each([
    ['M6 4.6', 6, 1, 400, 8040],
    ['M6 5.8', 6, 1, 520, 10400],
    ['M6 8.8', 6, 1, 800, 16100],
    ['M6 10.9', 6, 1, 1040, 20900],
    ['M6 12.9', 6, 1, 1220, 24500],
    ['M8 8.8', 8, 1.25, 800, 29200],
    ['M10 8.8', 10, 1.5, 800, 46400],
    ['M12 8.8', 12, 1.75, 800, 67400],
  ])('%s breaks in tension where the standard says', (_, d, p, tensile, newtons) => {
    const load = threadAreaMm2(d, p, 'stress-area-metric') * tensile;
    const lastFigure = 10 ** (String(newtons).length - 3);
    expect(Math.abs(load - newtons)).toBeLessThan(lastFigure);
  });

  // EN 1993-1-8 table 3.4, thread in the plane: αv · fub · As / 1.25, in kN. A design value, not a breaking one.
  it.each([
    ['4.6', 0.6, 400, 16.2],
    ['5.6', 0.6, 500, 20.2],
    ['8.8', 0.6, 800, 32.4],
    ['10.9', 0.5, 1000, 33.7],
  ])('M12 class %s gives the design shear of EN 1993-1-8 tables', (_, alpha, tensile, kilonewtons) => {
    const area = threadAreaMm2(12, 1.75, 'stress-area-metric');
    expect((alpha * tensile * area) / 1.25 / 1000).toBeCloseTo(kilonewtons, 1);
  });

  // Exam item: pin of 15 mm in double shear at 385 MPa, 136 kN. Textbook item: two 20 mm bolts, 150 kN, 238.73 MPa.
  it('gives plain shear loads and stresses of worked examples', () => {
    expect((2 * 385 * circleAreaMm2(15)) / 1000).toBeCloseTo(136.07, 2);
    expect(150_000 / (2 * circleAreaMm2(20))).toBeCloseTo(238.73, 2);
  });

  // CSA S157-05 clause 11.2.3.1, worked for two 3/4 in grade 8: 0.6 · 2 · 285 mm² · 150 ksi · 0.67 = 237.0 kN.
  it('gives the worked example of CSA S157-05', () => {
    expect((0.6 * 2 * circleAreaMm2(mmFromInches(0.75)) * mpaFromKsi(150) * 0.67) / 1000).toBeCloseTo(237.0, 0);
    expect((0.6 * 2 * 285 * mpaFromKsi(150) * 0.67) / 1000).toBeCloseTo(236.98, 2);
  });

  it('keeps the three minor diameters of one thread apart', () => {
    const [d, p] = [6.35, 1.27];
    expect(threadDiameterMm(d, p, 'root-1.2990') / 25.4).toBeCloseTo(0.185, 4);
    expect(threadDiameterMm(d, p, 'root-1.2269') / 25.4).toBeCloseTo(0.1887, 4);
    expect(circleAreaMm2(d) / threadAreaMm2(d, p, 'stress-area-inch')).toBeCloseTo(1.54, 2);
  });

  it('takes the whole circle when the strip is as wide as it, and a plain rectangle when it is thin', () => {
    expect(stripAreaMm2(6, 6)).toBeCloseTo(circleAreaMm2(6), 9);
    expect(stripAreaMm2(6, 0.01)).toBeCloseTo(0.06, 6);
    expect(stripAreaMm2(6, 3)).toBeLessThan(3 * 6);
  });
});
