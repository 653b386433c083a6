import {
  compareFasteners,
  doesItFit,
  type FastenerProblem,
  type FastenerSpecInput,
  type ShearJointInput,
  shearTorque,
  tellByMarks,
} from './index';

const good: FastenerSpecInput = {
  diameterMm: 6,
  lengthMm: 40,
  grade: { kind: 'known', system: 'ISO 898-1', grade: '4.6' },
};
const joint: ShearJointInput = { shaftRadiusMm: 10, planes: 2 };

function problems(outcome: { ok: true } | { ok: false; problems: FastenerProblem[] }): FastenerProblem[] {
  return outcome.ok ? [] : outcome.problems;
}
const withSpec = (more: object): FastenerProblem[] => problems(shearTorque({ ...good, ...more }, joint));
const withJoint = (more: object): FastenerProblem[] => problems(shearTorque(good, { ...joint, ...more }));

describe('bad input', () => {
  it.each([
    [
      'a negative diameter',
      { diameterMm: -3 },
      'fastener.diameterMm is -3; accepted is a length in millimetres above 0.',
    ],
    ['a zero diameter', { diameterMm: 0 }, 'fastener.diameterMm is 0; accepted is a length in millimetres above 0.'],
    ['NaN', { diameterMm: NaN }, 'fastener.diameterMm is NaN; accepted is a length in millimetres above 0.'],
    [
      'infinity',
      { diameterMm: Infinity },
      'fastener.diameterMm is Infinity; accepted is a length in millimetres above 0.',
    ],
    ['text', { diameterMm: '6' }, 'fastener.diameterMm is "6"; accepted is a length in millimetres above 0.'],
    [
      'nothing',
      { diameterMm: undefined },
      'fastener.diameterMm is not given; accepted is a length in millimetres above 0.',
    ],
    [
      'a groove as thick as the shank',
      { groove: { rootDiameterMm: 6, atMm: 5, widthMm: 1 } },
      'fastener.groove.rootDiameterMm is 6; accepted is less than the diameter of the shank (6 mm).',
    ],
    [
      'a groove wider than the fastener is long',
      { groove: { rootDiameterMm: 5, atMm: 5, widthMm: 41 } },
      'fastener.groove.widthMm is 41; accepted is less than the length of the fastener (40 mm).',
    ],
    [
      'a groove beyond the end',
      { groove: { rootDiameterMm: 5, atMm: 41, widthMm: 1 } },
      'fastener.groove.atMm is 41; accepted is less than the length of the fastener (40 mm).',
    ],
    [
      'a cross hole as wide as the shank',
      { crossHole: { diameterMm: 6, atMm: 5 } },
      'fastener.crossHole.diameterMm is 6; accepted is less than the diameter of the shank (6 mm).',
    ],
    [
      'a bore that reaches the groove',
      { boreDiameterMm: 5, groove: { rootDiameterMm: 5, atMm: 5, widthMm: 1 } },
      'fastener.boreDiameterMm is 5; accepted is less than the thinnest outer diameter (5 mm).',
    ],
    [
      'a bore that reaches the thread',
      { boreDiameterMm: 5, thread: { pitchMm: 1 } },
      'fastener.boreDiameterMm is 5; accepted is less than the thinnest outer diameter (4.701 mm).',
    ],
    [
      'a thread too coarse to leave a core',
      { thread: { pitchMm: 3 } },
      'fastener.thread.pitchMm is 3; accepted is less than half the diameter of the shank (3 mm).',
    ],
    [
      'a thread that is no thread',
      { thread: true },
      'fastener.thread is true; accepted is a thread with pitchMm and startsAtMm.',
    ],
    [
      'no grade at all',
      { grade: null },
      'fastener.grade is null; accepted is a known grade with system and grade, or one-of with its candidates.',
    ],
    [
      'an empty set of grades',
      { grade: { kind: 'one-of', candidates: [] } },
      'fastener.grade.candidates is []; accepted is at least one grade it can be.',
    ],
    [
      'a system nobody knows',
      { grade: { kind: 'known', system: 'XYZ', grade: '5' } },
      'fastener.grade.system is "XYZ"; accepted is one of SAE J429, ISO 898-1, ASTM A307, pin material.',
    ],
    [
      'a grade the table does not have',
      { grade: { kind: 'one-of', candidates: [{ system: 'ISO 898-1', grade: '7.7' }] } },
      'fastener.grade.candidates.0 is "7.7"; accepted is 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9 of ISO 898-1.',
    ],
    [
      'half a line on the head',
      { headMarks: { kind: 'radial-lines', count: 1.5 } },
      'fastener.headMarks.count is 1.5; accepted is a whole number of lines from 1 to 12.',
    ],
  ])('refuses %s with one sentence', (_, more, sentence) => {
    expect(withSpec(more).map((problem) => problem.sentence)).toEqual([sentence]);
  });

  it.each([
    ['a negative radius', { shaftRadiusMm: -1 }, 'joint.shaftRadiusMm'],
    ['a span the wrong way round', { shaftRadiusMm: { low: 3, high: 2 } }, 'joint.shaftRadiusMm'],
    ['three planes', { planes: 3 }, 'joint.planes'],
    ['one place for two planes', { shearPlanesAtMm: [5] }, 'joint.shearPlanesAtMm'],
    ['a place before the head', { shearPlanesAtMm: [-5, 5] }, 'joint.shearPlanesAtMm.0'],
    ['half a pin', { pinsSharing: 0.5 }, 'joint.pinsSharing'],
    ['no pin', { pinsSharing: 0 }, 'joint.pinsSharing'],
    ['a negative tolerance', { planeToleranceMm: -1 }, 'joint.planeToleranceMm'],
    ['a rating of nothing', { ratedTorqueNm: 0 }, 'joint.ratedTorqueNm'],
    ['a grip of NaN', { gripMm: NaN }, 'joint.gripMm'],
  ])('refuses %s', (_, more, field) => {
    const found = withJoint(more);
    expect(found.map((problem) => problem.field)).toEqual([field]);
    expect(found[0]?.sentence).not.toMatch(/invalid|expected/i);
  });

  it('names which of two fasteners is at fault, and everything at once', () => {
    const bad = { ...good, diameterMm: 0 };
    const found = problems(
      compareFasteners(
        bad,
        { ...good, lengthMm: -1 },
        { ...joint, planes: 5 as 1 },
        { soonerBelow: 2, laterAbove: 0.5 },
      ),
    );
    expect(found.map((problem) => problem.field)).toEqual([
      'joint.planes',
      'threshold.soonerBelow',
      'threshold.laterAbove',
      'fitted.diameterMm',
      'required.lengthMm',
    ]);
    const thick = { ...good, diameterMm: 60, lengthMm: 200 };
    expect(problems(compareFasteners(good, thick, joint))[0]).toMatchObject({
      code: 'no-value-at-this-size',
      field: 'required.diameterMm',
      value: 60,
    });
  });

  it('refuses bad fields of a fit and of marks', () => {
    expect(problems(doesItFit({ ...good, diameterMm: NaN }, joint))[0]?.field).toBe('fastener.diameterMm');
    expect(problems(doesItFit(good, { ...joint, holeDiameterMm: -1 }))[0]?.field).toBe('joint.holeDiameterMm');
    expect(problems(tellByMarks({ diameterMm: 0 }, []))[0]?.field).toBe('marks.diameterMm');
    expect(problems(tellByMarks({ grooved: 'yes' as unknown as boolean }, []))[0]?.sentence).toBe(
      'marks.grooved is "yes"; accepted is true, false, or null for not looked at.',
    );
    expect(problems(tellByMarks({}, [{ partNumber: '', name: 'Pin', spec: good }]))[0]?.field).toBe(
      'catalogue.0.partNumber',
    );
  });

  it('never throws on a foreign shape', () => {
    for (const value of [null, undefined, 3, 'pin', [], { grade: 5 }]) {
      const foreign = value as unknown as FastenerSpecInput;
      expect(shearTorque(foreign, joint).ok).toBe(false);
      expect(shearTorque(good, value as unknown as ShearJointInput).ok).toBe(false);
      expect(compareFasteners(foreign, foreign, joint).ok).toBe(false);
    }
  });
});
