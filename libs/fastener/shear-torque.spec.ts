import {
  circleAreaMm2,
  type FastenerSpecInput,
  mmFromInches,
  SHEAR_RATIOS,
  type ShearJointInput,
  type ShearTorque,
  shearTorque,
  torqueIn,
} from './index';

const quarter = mmFromInches(1 / 4);
const shaft: ShearJointInput = { shaftRadiusMm: mmFromInches(0.375), planes: 2, shearPlanesAtMm: [5, 24.05] };
const sae = (grade: string, more: Partial<FastenerSpecInput> = {}): FastenerSpecInput => ({
  diameterMm: quarter,
  lengthMm: 38.1,
  grade: { kind: 'known', system: 'SAE J429', grade },
  ...more,
});

function torque(...args: Parameters<typeof shearTorque>): ShearTorque {
  const found = shearTorque(...args);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.sentence).join(' '));
  return found.value;
}

describe('shear torque', () => {
  // Worked by hand: pin of 1/4 in through a shaft of 3/4 in, double shear, 0.60 of the SAE J429 minimum tensile.
  it.each([
    ['1', 1325.4, 149.7],
    ['2', 1634.6, 184.7],
    ['5', 2650.7, 299.5],
    ['8', 3313.4, 374.4],
  ])('grade %s lets go at %d lbf·in, which is %d N·m', (grade, poundInches, newtonMetres) => {
    const { torqueNm } = torque(sae(grade), shaft);
    expect(torqueNm.high).toBe(torqueNm.low);
    expect(torqueIn(torqueNm.low, 'lbf·in')).toBeCloseTo(poundInches, 1);
    expect(torqueNm.low).toBeCloseTo(newtonMetres, 1);
  });

  // Worked by hand with the root area 0.0269 in² of 1/4-20.
  it.each([
    ['2', 895.6],
    ['5', 1452.3],
  ])('grade %s with the thread in both planes lets go at %d lbf·in', (grade, poundInches) => {
    const threaded = sae(grade, { thread: { pitchMm: 1.27, startsAtMm: 0 } });
    const { torqueNm, sections } = torque(threaded, shaft, 'handbook-0.60-of-tensile', 'root-1.2990');
    expect(Math.abs(torqueIn(torqueNm.low, 'lbf·in') - poundInches)).toBeLessThan(0.001 * poundInches);
    expect(sections.map((section) => section.kind)).toEqual(['thread']);
    expect(sections[0]?.words).toContain('1.2990');
  });

  // Worked by hand: M6 shank, radius 10 mm, double shear, 0.60 of the ISO 898-1 minimum tensile.
  it.each([
    ['4.6', 135.7],
    ['5.8', 176.4],
    ['8.8', 271.4],
    ['10.9', 352.9],
    ['12.9', 413.9],
  ])('class %s of 6 mm at a radius of 10 mm lets go at %d N·m', (grade, newtonMetres) => {
    const spec: FastenerSpecInput = { diameterMm: 6, grade: { kind: 'known', system: 'ISO 898-1', grade } };
    expect(torque(spec, { shaftRadiusMm: 10, planes: 2 }).torqueNm.low).toBeCloseTo(newtonMetres, 1);
  });

  // Worked example of an engineering forum: 74.80 N·m at the pin, 303 MPa, shaft of 50 mm, double shear, pin 2.507 mm.
  it('agrees with a published sizing of a spindle pin', () => {
    const stress = SHEAR_RATIOS['handbook-0.60-of-tensile'].factor * 505;
    expect(stress).toBeCloseTo(303, 9);
    expect((stress * 2 * circleAreaMm2(2.507) * 25) / 1000).toBeCloseTo(74.8, 1);
  });

  // Distortion energy: Shigley section 5-5, 1/√3 of yield. Grade 5: 0.57735 × 92 ksi.
  it('derives shear strength from yield by distortion energy when asked, and names it', () => {
    const { shearStrengthMpa, ratio } = torque(sae('5'), shaft, 'distortion-energy-0.577-of-yield');
    expect(shearStrengthMpa.low).toBeCloseTo(0.57735 * 92 * 6.894757, 2);
    expect(ratio).toMatchObject({ name: 'distortion-energy-0.577-of-yield', of: 'yield' });
    expect(ratio.factor).toBeCloseTo(0.57735, 5);
  });

  // Inch Fastener Standards, 7th edition, p. B-8: 0.60 of 120 ksi is 72 (the text rounds it to 70).
  it('takes 0.60 of the tensile strength unless told otherwise', () => {
    expect(torque(sae('5'), shaft).shearStrengthMpa.low).toBeCloseTo(72 * 6.894757, 3);
    expect(torque(sae('5'), shaft).ratio).toMatchObject({
      name: 'handbook-0.60-of-tensile',
      factor: 0.6,
      of: 'tensile',
    });
  });

  it('halves in single shear and doubles with two fasteners sharing', () => {
    const double = torque(sae('2'), { ...shaft, shearPlanesAtMm: null }).torqueNm.low;
    expect(torque(sae('2'), { ...shaft, planes: 1, shearPlanesAtMm: null }).torqueNm.low).toBeCloseTo(double / 2, 9);
    const two = torque(sae('2'), { ...shaft, pinsSharing: 2 });
    expect(two.torqueNm.low).toBeCloseTo(2 * double, 9);
    expect(two.assumptions.join(' ')).toContain('2 fasteners are taken to share the load equally');
  });

  it('applies no safety factor, and says so', () => {
    const found = torque(sae('5'), shaft);
    const byHand = (found.shearStrengthMpa.low * 2 * circleAreaMm2(quarter) * mmFromInches(0.375)) / 1000;
    expect(found.torqueNm.low).toBeCloseTo(byHand, 9);
    expect(found.assumptions.join(' ')).toContain('No safety factor is applied');
  });

  it('says that a minimum is the least, so a real part can be stronger', () => {
    expect(torque(sae('5'), shaft).assumptions.join(' ')).toContain('a real part can be stronger');
  });
});

describe('the section in the shear plane', () => {
  const groove = { rootDiameterMm: 4.7625, atMm: 5, widthMm: 2 };
  const single: ShearJointInput = { shaftRadiusMm: 10, planes: 1 };
  const at = (mm: number): ShearJointInput => ({ ...single, shearPlanesAtMm: [mm] });
  const area = (spec: FastenerSpecInput, joint: ShearJointInput): number | undefined =>
    torque(spec, joint).sections[0]?.areaMm2;

  // Computed: a groove of 3/16 in left of 1/4 in leaves 0.5625 of the area.
  it('is the groove when the plane falls in it, edges included, and the shank when it does not', () => {
    const grooved = sae('2', { groove });
    expect(area(grooved, at(5))! / circleAreaMm2(quarter)).toBeCloseTo(0.5625, 9);
    expect(torque(grooved, at(6)).sections[0]?.kind).toBe('groove');
    expect(torque(grooved, at(4)).sections[0]?.kind).toBe('groove');
    expect(torque(grooved, at(6.01)).sections[0]?.kind).toBe('shank');
  });

  it('is the thread from where it starts', () => {
    const threaded = sae('2', { thread: { pitchMm: 1.27, startsAtMm: 12 } });
    expect(torque(threaded, at(11.9)).sections[0]?.kind).toBe('shank');
    expect(torque(threaded, at(12)).sections[0]?.kind).toBe('thread');
  });

  it('is the weakest where a groove is cut into the thread', () => {
    const both = sae('2', { thread: { pitchMm: 1.27, startsAtMm: 0 }, groove });
    expect(torque(both, at(5)).sections[0]?.kind).toBe('groove');
    expect(
      torque(sae('2', { thread: { pitchMm: 1.27, startsAtMm: 0 }, groove: { ...groove, rootDiameterMm: 6 } }), at(5))
        .sections[0]?.kind,
    ).toBe('thread');
  });

  it('loses the strip of a cross hole and the core of a hollow pin', () => {
    const drilled = sae('2', { crossHole: { diameterMm: 2, atMm: 5 } });
    expect(torque(drilled, at(5)).sections[0]?.kind).toBe('cross-hole');
    expect(area(drilled, at(5))!).toBeLessThan(circleAreaMm2(quarter) - 2 * 6);
    expect(area(drilled, at(5))!).toBeGreaterThan(circleAreaMm2(quarter) - 2 * quarter);
    // Hollow pin: π/4 (do² − di²).
    expect(area(sae('2', { boreDiameterMm: 3 }), at(5))!).toBeCloseTo((Math.PI / 4) * (quarter ** 2 - 9), 9);
    const both = sae('2', { boreDiameterMm: 3, crossHole: { diameterMm: 2, atMm: 5 } });
    expect(area(both, at(5))!).toBeGreaterThan(area(drilled, at(5))! - circleAreaMm2(3));
    expect(area(both, at(5))!).toBeLessThan(area(drilled, at(5))!);
  });

  it('is a range when nobody knows where the plane lies or the thread starts, and says which', () => {
    const grooved = torque(sae('2', { groove }), single);
    expect(grooved.torqueNm.low / grooved.torqueNm.high).toBeCloseTo(0.5625, 9);
    expect(grooved.widenedBy.map((one) => one.input)).toEqual(['plane-position']);
    const threaded = torque(sae('2', { thread: { pitchMm: 1.27 } }), at(5));
    expect(threaded.torqueNm.low).toBeLessThan(threaded.torqueNm.high);
    expect(threaded.widenedBy.map((one) => one.input)).toEqual(['thread-start']);
    const near = torque(sae('2', { groove }), { ...at(6.2), planeToleranceMm: 0.3 });
    expect(near.widenedBy.map((one) => one.input)).toEqual(['plane-position']);
    expect(near.sections.map((section) => section.kind).sort()).toEqual(['groove', 'shank']);
  });

  it('counts a plane whose tolerance just touches the edge of the groove as perhaps in it', () => {
    const kinds = (mm: number): string[] =>
      torque(sae('2', { groove }), { ...at(mm), planeToleranceMm: 0.5 })
        .sections.map((section) => section.kind)
        .sort();
    expect(kinds(6.5)).toEqual(['groove', 'shank']);
    expect(kinds(3.5)).toEqual(['groove', 'shank']);
    expect(kinds(6.6)).toEqual(['shank']);
  });

  it('lies between twice the weaker plane and both together when two planes cut different sections', () => {
    const { torqueNm, widenedBy } = torque(sae('2', { groove }), { ...shaft, shearPlanesAtMm: [5, 24] });
    const shank = torque(sae('2'), shaft).torqueNm.low;
    expect(torqueNm.low / shank).toBeCloseTo(0.5625, 9);
    expect(torqueNm.high / shank).toBeCloseTo((1 + 0.5625) / 2, 9);
    expect(widenedBy.map((one) => one.input)).toEqual(['planes-differ']);
  });

  it('only looks for the plane within the grip and the length', () => {
    const cotter = sae('2', { crossHole: { diameterMm: 2, atMm: 34 } });
    expect(torque(cotter, { ...single, gripMm: 30 }).widenedBy).toEqual([]);
    expect(torque(cotter, { ...single, gripMm: 36 }).widenedBy.map((one) => one.input)).toEqual(['plane-position']);
  });

  it('refuses a fastener that does not reach its far plane', () => {
    expect(shearTorque(sae('2', { lengthMm: 20 }), shaft)).toMatchObject({
      ok: false,
      problems: [
        {
          code: 'does-not-reach',
          field: 'fastener.lengthMm',
          value: 20,
          accepted: 'more than 24.05 mm, where the far shear plane lies',
        },
      ],
    });
  });
});

describe('what widens a shear torque', () => {
  const unmarked: FastenerSpecInput['grade'] = {
    kind: 'one-of',
    candidates: [
      { system: 'SAE J429', grade: '1' },
      { system: 'SAE J429', grade: '2' },
      { system: 'ISO 898-1', grade: '6.8' },
    ],
  };

  it('spans from the weakest to the strongest grade it can be, and names them', () => {
    const found = torque({ ...sae('1'), grade: unmarked }, shaft);
    expect(found.torqueNm.low).toBeCloseTo(torque(sae('1'), shaft).torqueNm.low, 9);
    expect(found.torqueNm.high).toBeCloseTo((600 * 0.6 * 2 * circleAreaMm2(quarter) * mmFromInches(0.375)) / 1000, 9);
    expect(found.widenedBy).toEqual([
      { input: 'grade', sentence: 'The grade is not known; it can be SAE J429 1, SAE J429 2, ISO 898-1 6.8.' },
    ]);
  });

  it('leaves out a candidate not made in this size, and says so', () => {
    const found = torque({ diameterMm: 5, lengthMm: 38, grade: unmarked }, shaft);
    expect(found.grades).toEqual([{ system: 'ISO 898-1', grade: '6.8' }]);
    expect(found.assumptions.filter((one) => one.includes('left out'))).toHaveLength(2);
  });

  it('refuses the size when no candidate is made in it', () => {
    const none = {
      ...unmarked,
      candidates: [
        { system: 'SAE J429' as const, grade: '1' },
        { system: 'SAE J429' as const, grade: '2' },
      ],
    };
    const refused = shearTorque({ diameterMm: 5, lengthMm: 38, grade: none }, shaft);
    expect(refused.ok ? [] : refused.problems.map((one) => one.code)).toEqual([
      'no-value-at-this-size',
      'no-value-at-this-size',
    ]);
  });

  it('names the length where grade 2 depends on it', () => {
    expect(torque(sae('2', { lengthMm: null }), shaft).widenedBy.map((one) => one.input)).toEqual(['length']);
    expect(torque(sae('5', { lengthMm: null }), shaft).widenedBy).toEqual([]);
  });

  it('names the shaft radius given as a span', () => {
    const found = torque(sae('2'), { ...shaft, shaftRadiusMm: { low: 9, high: 10 } });
    expect(found.torqueNm.low / found.torqueNm.high).toBeCloseTo(0.9, 9);
    expect(found.widenedBy.map((one) => one.input)).toEqual(['shaft-radius']);
  });

  it('refuses distortion energy for a grade with no published yield', () => {
    const a307: FastenerSpecInput = { ...sae('1'), grade: { kind: 'known', system: 'ASTM A307', grade: 'A' } };
    expect(torque(a307, shaft).torqueNm.low).toBeCloseTo(torque(sae('1'), shaft).torqueNm.low, 9);
    expect(shearTorque(a307, shaft, 'distortion-energy-0.577-of-yield')).toMatchObject({
      ok: false,
      problems: [{ code: 'no-yield-published', field: 'fastener.grade', value: 'A' }],
    });
  });

  it('says typical where the table is typical', () => {
    const soft: FastenerSpecInput = { ...sae('1'), grade: { kind: 'known', system: 'pin material', grade: '6061-T6' } };
    expect(torque(soft, shaft).assumptions.join(' ')).toContain('typical strengths');
  });
});
