import fc from 'fast-check';
import {
  compareFasteners,
  type FastenerSpecInput,
  type GradeRef,
  inchesFromMm,
  mmFromInches,
  type Range,
  type ShearJointInput,
  shearTorque,
  strengthOf,
} from './index';

/** Every grade of every table that is made in 6.5 to 16 mm, weakest tensile first. */
const GRADES: GradeRef[] = [
  ...['1', '2', '5', '8'].map((grade): GradeRef => ({ system: 'SAE J429', grade })),
  ...['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'].map((grade): GradeRef => ({
    system: 'ISO 898-1',
    grade,
  })),
  { system: 'ASTM A307', grade: 'A' },
  { system: 'pin material', grade: '1018 cold drawn' },
];
const known = (ref: GradeRef): FastenerSpecInput['grade'] => ({ kind: 'known', ...ref });

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const gradeArbitrary = fc.constantFrom(...GRADES);
const shapeArbitrary = mm(6.5, 16).chain((diameterMm) =>
  fc.record({
    diameterMm: fc.constant(diameterMm),
    lengthMm: fc.constant(60),
    thread: fc.option(fc.record({ pitchMm: mm(0.5, 1.5), startsAtMm: fc.option(mm(0, 60)) })),
    groove: fc.option(
      fc.record({
        rootDiameterMm: mm(0.5, 0.95).map((part) => part * diameterMm),
        atMm: mm(0, 50),
        widthMm: mm(0.5, 4),
      }),
    ),
    crossHole: fc.option(fc.record({ diameterMm: mm(0.1, 0.5).map((part) => part * diameterMm), atMm: mm(0, 50) })),
  }),
);
const jointArbitrary = fc.record({
  shaftRadiusMm: mm(5, 40),
  planes: fc.constant(2 as const),
  shearPlanesAtMm: fc.option(fc.tuple(mm(0, 50), mm(0, 50)).map((places) => [...places])),
  planeToleranceMm: mm(0, 3),
  pinsSharing: fc.integer({ min: 1, max: 4 }),
});

function range(spec: FastenerSpecInput, joint: ShearJointInput): Range {
  const found = shearTorque(spec, joint);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.sentence).join(' '));
  return found.value.torqueNm;
}
const near = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.max(one, other);
const atMost = (one: Range, other: Range): boolean =>
  one.low <= other.low * (1 + 1e-12) && one.high <= other.high * (1 + 1e-12);

describe('laws of shear torque', () => {
  it('a thicker shank never lets go sooner', () => {
    fc.assert(
      fc.property(shapeArbitrary, gradeArbitrary, jointArbitrary, mm(1, 1.4), (shape, ref, joint, factor) => {
        fc.pre(shape.diameterMm * factor <= 16);
        const thin = { ...shape, grade: known(ref) };
        expect(atMost(range(thin, joint), range({ ...thin, diameterMm: shape.diameterMm * factor }, joint))).toBe(true);
      }),
    );
  });

  it('a grade of higher tensile strength never lets go sooner', () => {
    fc.assert(
      fc.property(shapeArbitrary, gradeArbitrary, gradeArbitrary, jointArbitrary, (shape, one, other, joint) => {
        const tensile = (ref: GradeRef): number => {
          const found = strengthOf(ref, shape, 'grade');
          return found.ok ? found.value[0]!.tensileMpa : NaN;
        };
        const [weak, strong] = tensile(one) <= tensile(other) ? [one, other] : [other, one];
        expect(
          atMost(range({ ...shape, grade: known(weak) }, joint), range({ ...shape, grade: known(strong) }, joint)),
        ).toBe(true);
      }),
    );
  });

  it('goes straight with the radius and with the number of fasteners sharing', () => {
    fc.assert(
      fc.property(shapeArbitrary, gradeArbitrary, jointArbitrary, mm(0.5, 3), (shape, ref, joint, factor) => {
        const spec = { ...shape, grade: known(ref) };
        const base = range(spec, joint);
        const wide = range(spec, { ...joint, shaftRadiusMm: joint.shaftRadiusMm * factor });
        const more = range(spec, { ...joint, pinsSharing: 2 * joint.pinsSharing });
        expect(near(wide.low, base.low * factor) && near(wide.high, base.high * factor)).toBe(true);
        expect(near(more.low, base.low * 2) && near(more.high, base.high * 2)).toBe(true);
      }),
    );
  });

  it('two planes hold at least as much as one of them', () => {
    fc.assert(
      fc.property(shapeArbitrary, gradeArbitrary, jointArbitrary, mm(0, 50), (shape, ref, joint, at) => {
        const spec = { ...shape, grade: known(ref) };
        const single = range(spec, { ...joint, planes: 1, shearPlanesAtMm: [at] });
        const double = range(spec, { ...joint, planes: 2, shearPlanesAtMm: [at, at] });
        expect(double.low).toBeGreaterThanOrEqual(single.low);
        expect(double.high).toBeGreaterThanOrEqual(single.high);
      }),
    );
  });

  it('goes with the cube of the scale, so the unit it is measured in does not matter', () => {
    fc.assert(
      fc.property(mm(6.5, 8), mm(5, 40), gradeArbitrary, mm(1, 2), (diameterMm, shaftRadiusMm, ref, factor) => {
        const grade = known(ref);
        const base = range({ diameterMm, lengthMm: 60, grade }, { shaftRadiusMm, planes: 2 });
        const scaled = range(
          { diameterMm: diameterMm * factor, lengthMm: 60, grade },
          { shaftRadiusMm: shaftRadiusMm * factor, planes: 2 },
        );
        expect(near(scaled.low, base.low * factor ** 3)).toBe(true);
        const viaInches = (value: number): number => mmFromInches(inchesFromMm(value));
        const again = range(
          { diameterMm: viaInches(diameterMm), lengthMm: 60, grade },
          { shaftRadiusMm: viaInches(shaftRadiusMm), planes: 2 },
        );
        expect(Math.abs(again.low - base.low)).toBeLessThan(1e-5 * base.low);
      }),
    );
  });

  it('contains the torque of every grade of a set, of every place in a tolerance, and of every thread start', () => {
    const sets = fc.uniqueArray(gradeArbitrary, {
      minLength: 1,
      maxLength: 5,
      selector: (ref) => `${ref.system} ${ref.grade}`,
    });
    fc.assert(
      fc.property(
        shapeArbitrary,
        sets,
        jointArbitrary,
        mm(-1, 1),
        mm(0, 60),
        (shape, candidates, joint, shift, start) => {
          const whole = range({ ...shape, grade: { kind: 'one-of', candidates } }, joint);
          const places = (joint.shearPlanesAtMm ?? [20, 30]).map((at) =>
            Math.min(59, Math.max(0, at + shift * joint.planeToleranceMm)),
          );
          const settled = { ...joint, shearPlanesAtMm: places, planeToleranceMm: 0 };
          const thread = shape.thread && { ...shape.thread, startsAtMm: shape.thread.startsAtMm ?? start };
          for (const ref of candidates) {
            const one = range({ ...shape, thread, grade: known(ref) }, settled);
            expect(one.low).toBeGreaterThanOrEqual(whole.low * (1 - 1e-12));
            expect(one.high).toBeLessThanOrEqual(whole.high * (1 + 1e-12));
          }
        },
      ),
    );
  });

  it('is a range exactly when it names what widens it', () => {
    fc.assert(
      fc.property(
        shapeArbitrary,
        fc.uniqueArray(gradeArbitrary, { minLength: 1, maxLength: 3 }),
        jointArbitrary,
        (shape, candidates, joint) => {
          const found = shearTorque({ ...shape, grade: { kind: 'one-of', candidates } }, joint);
          if (!found.ok) throw new Error(found.problems[0]?.sentence);
          const { torqueNm, widenedBy } = found.value;
          expect(widenedBy.length > 0).toBe(!near(torqueNm.low, torqueNm.high));
        },
      ),
    );
  });
});

describe('laws of a comparison', () => {
  it('finds a known part as required against itself, wherever the planes lie', () => {
    fc.assert(
      fc.property(shapeArbitrary, gradeArbitrary, jointArbitrary, (shape, ref, joint) => {
        const thread = shape.thread && { ...shape.thread, startsAtMm: shape.thread.startsAtMm ?? 10 };
        const spec = { ...shape, thread, grade: known(ref) };
        const found = compareFasteners(spec, spec, joint);
        expect(found.ok && near(found.value.ratio.low, 1) && near(found.value.ratio.high, 1)).toBe(true);
        expect(found.ok && found.value.class).toBe('as-required');
      }),
    );
  });

  it('turns over when fitted and required change places', () => {
    fc.assert(
      fc.property(
        shapeArbitrary,
        shapeArbitrary,
        gradeArbitrary,
        gradeArbitrary,
        jointArbitrary,
        (one, other, a, b, joint) => {
          const [left, right] = [
            { ...one, grade: known(a) },
            { ...other, grade: known(b) },
          ];
          const there = compareFasteners(left, right, joint);
          const back = compareFasteners(right, left, joint);
          if (!there.ok || !back.ok) throw new Error('both are good');
          expect(near(there.value.ratio.low, 1 / back.value.ratio.high)).toBe(true);
          expect(near(there.value.ratio.high, 1 / back.value.ratio.low)).toBe(true);
        },
      ),
    );
  });
});
