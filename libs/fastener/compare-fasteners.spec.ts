import {
  compareFasteners,
  compareSeverity,
  type FastenerComparison,
  type FastenerSpecInput,
  FASTENER_CAUTION,
  FASTENER_SEVERITIES,
  mmFromInches,
  severityOf,
  type ShearJointInput,
  signalWordOf,
} from './index';

const shaft: ShearJointInput = { shaftRadiusMm: mmFromInches(0.375), planes: 2, shearPlanesAtMm: [5, 24.05] };
const sae = (grade: string, more: Partial<FastenerSpecInput> = {}): FastenerSpecInput => ({
  diameterMm: mmFromInches(1 / 4),
  lengthMm: 38.1,
  grade: { kind: 'known', system: 'SAE J429', grade },
  ...more,
});
const unmarked = sae('1', {
  grade: {
    kind: 'one-of',
    candidates: [
      { system: 'SAE J429', grade: '1' },
      { system: 'SAE J429', grade: '2' },
    ],
  },
});
const fullThread = { pitchMm: 1.27, startsAtMm: 0 };

function compare(...args: Parameters<typeof compareFasteners>): FastenerComparison {
  const found = compareFasteners(...args);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.sentence).join(' '));
  return found.value;
}

describe('fitted against required', () => {
  // Worked by hand from SAE J429 minimum tensile: the 0.60 ratio and the area cancel.
  it.each([
    ['1', '2', 0.811, 'breaks-sooner'],
    ['2', '2', 1, 'as-required'],
    ['5', '2', 1.622, 'breaks-later'],
    ['8', '2', 2.027, 'breaks-later'],
    ['8', '5', 1.25, 'breaks-later'],
    ['2', '5', 0.617, 'breaks-sooner'],
  ])('grade %s for grade %s is %d times as strong and %s', (fitted, required, ratio, expected) => {
    const found = compare(sae(fitted), sae(required), shaft);
    expect(found.ratio.low).toBeCloseTo(ratio, 3);
    expect(found.ratio.high).toBe(found.ratio.low);
    expect(found.class).toBe(expected);
  });

  // Computed: 800 MPa against 120 ksi is 0.967, and 520 MPa against 74 ksi is 1.019; near, never the same.
  it.each([
    ['8.8', '5', 0.967],
    ['5.8', '2', 1.019],
  ])('class %s is near grade %s, at %d', (iso, grade, ratio) => {
    const fitted = sae('1', { grade: { kind: 'known', system: 'ISO 898-1', grade: iso } });
    expect(compare(fitted, sae(grade), shaft).ratio.low).toBeCloseTo(ratio, 3);
  });

  // Computed: area goes with the square of the diameter, 5/16 in over 1/4 in is 1.5625.
  it('looks at the diameter before the grade', () => {
    const found = compare(sae('1', { diameterMm: mmFromInches(5 / 16) }), sae('2'), shaft);
    expect(found.ratio.low).toBeCloseTo((1.5625 * 60) / 74, 9);
    expect(found.class).toBe('breaks-later');
    expect(found.because.map((one) => one.field)).toEqual(['diameter', 'grade']);
    expect(found.because[0]?.sentence).toContain('1.56 times the area');
  });

  // Worked by hand: grade 5 with the thread in the planes is 1452.3 lbf·in, below grade 2 on its shank at 1634.6.
  it('lets a thread in the planes turn a stronger grade into a weaker part', () => {
    const found = compare(sae('5', { thread: fullThread }), sae('2'), shaft, undefined, undefined, 'root-1.2990');
    expect(found.ratio.low).toBeCloseTo(1452.3 / 1634.6, 2);
    expect(found.ratio.low).toBeLessThan(1);
    expect(found.because.map((one) => one.field)).toEqual(['section', 'grade']);
  });

  it('names a groove turned to another depth, and a bore, though the kind of section is the same', () => {
    const groove = (rootDiameterMm: number) => ({ rootDiameterMm, atMm: 5, widthMm: 2 });
    const single: ShearJointInput = { shaftRadiusMm: 10, planes: 1, shearPlanesAtMm: [5] };
    const deeper = compare(sae('2', { groove: groove(4) }), sae('2', { groove: groove(5) }), single);
    expect(deeper.ratio.low).toBeCloseTo(16 / 25, 9);
    expect(deeper.because.map((one) => one.field)).toEqual(['section']);
    expect(compare(sae('2', { boreDiameterMm: 3 }), sae('2'), single).because.map((one) => one.field)).toEqual([
      'section',
    ]);
    expect(compare(sae('2'), sae('2'), single).because).toEqual([]);
  });

  it('cancels what both have in common, also where nobody measured it', () => {
    const groove = { rootDiameterMm: 4.7625, atMm: 12, widthMm: 2 };
    const somewhere: ShearJointInput = { shaftRadiusMm: { low: 8, high: 11 }, planes: 2, pinsSharing: 2 };
    const found = compare(sae('5', { groove }), sae('2', { groove }), somewhere);
    expect(found.fitted.torqueNm.low).toBeLessThan(found.fitted.torqueNm.high);
    expect(found.ratio.low).toBeCloseTo(120 / 74, 9);
    expect(found.ratio.high).toBeCloseTo(120 / 74, 9);
    expect(found.class).toBe('breaks-later');
  });

  it('takes the limits of the shop, bounds inclusive', () => {
    expect(compare(sae('8'), sae('5'), shaft, { soonerBelow: 0.9, laterAbove: 1.25 }).class).toBe('as-required');
    expect(compare(sae('8'), sae('5'), shaft, { soonerBelow: 0.9, laterAbove: 1.24 }).class).toBe('breaks-later');
    expect(compare(sae('1'), sae('2'), shaft, { soonerBelow: 60 / 74, laterAbove: 1.2 }).class).toBe('as-required');
    expect(compare(sae('1'), sae('2'), shaft, { soonerBelow: 0.82, laterAbove: 1.2 }).class).toBe('breaks-sooner');
  });

  it('says that it cannot tell when the range crosses a limit, and what would settle it', () => {
    const found = compare(unmarked, sae('2'), shaft);
    expect(found.class).toBe('cannot-tell');
    expect(found.mayBreakLater).toBe(false);
    expect(found.ratio.high).toBeCloseTo(1, 9);
    expect(found.sentences.join(' ')).toContain(
      'Fitted part: The grade is not known; it can be SAE J429 1, SAE J429 2.',
    );
  });

  it('can tell without the grade when every grade gives the same answer', () => {
    expect(compare(unmarked, sae('8'), shaft).class).toBe('breaks-sooner');
    expect(compare(sae('8'), unmarked, shaft).class).toBe('breaks-later');
  });

  it('opens with the answer and closes with whose limits they are', () => {
    const { sentences, caution } = compare(sae('8'), sae('2'), { ...shaft, ratedTorqueNm: 300 });
    expect(sentences[0]).toBe(
      'Breaks later: it lets go at 2.03 times the torque of the required part, so the drive line can be hurt first.',
    );
    expect(sentences[1]).toBe('Fitted lets go at 374 N·m (276 lbf·ft); required at 185 N·m (136 lbf·ft).');
    expect(sentences).toContain('Grade SAE J429 8 where SAE J429 2 is required.');
    expect(sentences).toContain(
      'The drive line is rated 300 N·m (221 lbf·ft): the fitted part lets go at 1.25 times that; it holds beyond that.',
    );
    expect(sentences).toContain(
      'Tables give the least a grade may have, so the fitted part can be stronger than shown.',
    );
    expect(sentences.at(-1)).toBe('This shop counts 0.85 to 1.15 as required; no standard sets these limits.');
    expect(caution).toBe(FASTENER_CAUTION);
    expect(caution).toContain('Never fit a stronger fastener than the one required');
  });

  it.each([
    [500, 'no'],
    [374, 'yes'],
    [160, 'yes'],
  ] as const)('holds the fitted part against a rating of %d N·m: beyond it %s', (ratedTorqueNm, exceeds) => {
    expect(compare(sae('8'), sae('2'), { ...shaft, ratedTorqueNm }).againstRated).toMatchObject({
      ratedTorqueNm,
      exceeds,
    });
  });

  it('says maybe where only some grades go beyond the rating, and nothing where none is known', () => {
    expect(compare(unmarked, sae('2'), { ...shaft, ratedTorqueNm: 160 }).againstRated?.exceeds).toBe('maybe');
    const unrated = compare(unmarked, sae('2'), shaft);
    expect(unrated.againstRated).toBeNull();
    expect(unrated.sentences).toContain("The drive line's rated torque is not known here.");
  });
});

describe('severity', () => {
  const of = (fitted: FastenerSpecInput, required: FastenerSpecInput, joint = shaft) =>
    severityOf(compare(fitted, required, joint));

  it('puts a part that breaks later above one that breaks sooner', () => {
    expect(of(sae('2'), sae('2'))).toBe('none');
    expect(of(sae('1'), sae('2'))).toBe('nuisance');
    expect(of(sae('5'), sae('2'))).toBe('drive-line-at-risk');
    expect(compareSeverity('drive-line-at-risk', 'nuisance')).toBeGreaterThan(0);
    expect([...FASTENER_SEVERITIES].sort(compareSeverity)).toEqual([...FASTENER_SEVERITIES]);
  });

  it('is worst when a part that breaks later holds, or may hold, beyond the rating', () => {
    expect(of(sae('5'), sae('2'), { ...shaft, ratedTorqueNm: 400 })).toBe('drive-line-at-risk');
    expect(of(sae('5'), sae('2'), { ...shaft, ratedTorqueNm: 250 })).toBe('above-rating');
    const wide = { ...shaft, shaftRadiusMm: { low: 8, high: 10 }, ratedTorqueNm: 270 };
    expect(compare(sae('5'), sae('2'), wide).againstRated?.exceeds).toBe('maybe');
    expect(of(sae('5'), sae('2'), wide)).toBe('above-rating');
  });

  it('ranks what cannot be told by the worst it can be', () => {
    expect(of(unmarked, sae('2'))).toBe('nuisance');
    expect(of(unmarked, sae('1'))).toBe('not-told');
    expect(of(unmarked, sae('1'), { ...shaft, ratedTorqueNm: 100 })).toBe('above-rating');
  });

  // ANSI Z535.4-2007 clause 4.14: WARNING could cause serious injury; NOTICE concerns no injury.
  it('prints WARNING for a part that may break later and NOTICE for one that breaks sooner', () => {
    expect(FASTENER_SEVERITIES.map(signalWordOf)).toEqual([null, 'NOTICE', 'WARNING', 'WARNING', 'WARNING']);
  });
});
