import fc from 'fast-check';
import {
  type CataloguePartInput,
  type MarksAnswer,
  type MarksSeenInput,
  mmFromInches,
  tellByMarks,
  usualSizesNear,
} from './index';

const quarter = mmFromInches(1 / 4);
const part = (
  partNumber: string,
  grade: string,
  more: Partial<CataloguePartInput['spec']> = {},
): CataloguePartInput => ({
  partNumber,
  name: 'Shear bolt',
  spec: {
    diameterMm: quarter,
    lengthMm: 38.1,
    thread: { pitchMm: 1.27, startsAtMm: 20 },
    grade: { kind: 'known', system: 'SAE J429', grade },
    finish: 'zinc',
    ...more,
  },
});
const catalogue = [
  part('K-100', '2'),
  part('K-100A', '2', { finish: 'black oxide' }),
  part('K-110', '5', { finish: 'yellow zinc' }),
  part('K-120', '2', { diameterMm: mmFromInches(5 / 16), thread: { pitchMm: 1.411, startsAtMm: 20 } }),
  part('K-130', '2', { lengthMm: 50.8 }),
  part('K-140', '2', { groove: { rootDiameterMm: 4.76, atMm: 10, widthMm: 2 } }),
];

function tell(marks: MarksSeenInput, parts = catalogue): MarksAnswer {
  const found = tellByMarks(marks, parts);
  if (!found.ok) throw new Error(found.problems.map((problem) => problem.sentence).join(' '));
  return found.value;
}
const numbers = (answer: MarksAnswer): string[] => answer.candidates.map((candidate) => candidate.partNumber);

describe('telling a part by its marks', () => {
  it('tells a part when one is left and says so', () => {
    const answer = tell({ headMarks: { kind: 'radial-lines', count: 3 }, diameterMm: 6.3 });
    expect(answer.told).toBe('K-110');
    expect(answer.sentences).toEqual(['It is K-110, told by its marks.']);
    expect(answer.tellApart).toBeNull();
    expect(answer.ruledOut).toHaveLength(catalogue.length - 1);
  });

  it('rules out by a mark that the grade never shows, also where that grade need not be marked', () => {
    // ISO 898-1 as the library's table has it: 5.8 need not be marked, 4.6 and 10.9 must be
    const iso = (number: string, grade: string) =>
      part(number, grade, { diameterMm: 8, grade: { kind: 'known', system: 'ISO 898-1', grade } });
    const bolts = [iso('M-46', '4.6'), iso('M-58', '5.8'), iso('M-109', '10.9')];
    const seen = (text: string) => tell({ headMarks: { kind: 'stamp', text }, diameterMm: 8 }, bolts);
    expect(seen('5.8')).toMatchObject({ told: 'M-58', candidates: [{ agrees: ['head-marks', 'diameter'] }] });
    expect(seen('10.9').told).toBe('M-109');
    expect(numbers(tell({ headMarks: { kind: 'none' } }, bolts))[0]).toBe('M-58');
  });

  it('names why a part is ruled out', () => {
    const ruledOut = tell({ grooved: false, lengthMm: 38 }).ruledOut;
    expect(ruledOut).toEqual([
      {
        partNumber: 'K-130',
        field: 'length',
        sentence: 'K-130 is ruled out by its length: measured 38 mm (1.496 in), it has 50.8 mm (2.000 in).',
      },
      {
        partNumber: 'K-140',
        field: 'groove',
        sentence: 'K-140 is ruled out by its groove: seen no groove, it has one.',
      },
    ]);
  });

  it('never decides by the finish alone, also when only one part has it', () => {
    const answer = tell({ finish: 'Black Oxide' });
    expect(answer.told).toBeNull();
    expect(answer.finishAlone).toBe(true);
    expect(numbers(answer)[0]).toBe('K-100A');
    expect(numbers(answer)).toHaveLength(catalogue.length);
    expect(answer.sentences[0]).toBe(
      'Only the finish was looked at. Makers change finishes, so the finish alone never decides.',
    );
    expect(tell({ finish: 'zinc' }, [part('K-100', '2')]).told).toBeNull();
  });

  it('says that the finish does not decide when it is all that sets the best two apart', () => {
    const answer = tell({
      headMarks: { kind: 'none' },
      diameterMm: 6.35,
      lengthMm: 38,
      grooved: false,
      finish: 'zinc',
    });
    expect(numbers(answer).slice(0, 2)).toEqual(['K-100', 'K-100A']);
    expect(answer.told).toBeNull();
    expect(answer.sentences).toContain('Makers change finishes, so the finish alone never decides.');
    expect(answer.tellApart).toEqual({
      between: ['K-100', 'K-100A'],
      look: [
        {
          field: 'finish',
          sentence:
            'K-100 and K-100A differ in finish only, and makers change finishes. Ask for the bag or the papers.',
        },
      ],
    });
  });

  it('keeps a part whose head mark may have worn off, below the ones that agree, and does not call it told', () => {
    const answer = tell({ headMarks: { kind: 'none' }, diameterMm: 6.35, lengthMm: 38, grooved: false });
    expect(numbers(answer)).toEqual(['K-100', 'K-100A', 'K-110']);
    expect(answer.candidates[2]?.differs).toEqual(['head-marks']);
    expect(answer.candidates[2]?.sentence).toContain('which may have worn off');
    const only = tell({ headMarks: { kind: 'none' }, diameterMm: 6.35 }, [part('K-110', '5')]);
    expect(only.told).toBeNull();
    expect(only.sentences).toEqual(['Only K-110 is left, and the marks do not settle it.']);
  });

  it('rules out a part by a head mark that is there', () => {
    expect(numbers(tell({ headMarks: { kind: 'radial-lines', count: 6 } }))).toEqual([]);
    expect(tell({ headMarks: { kind: 'radial-lines', count: 6 } }).sentences).toEqual([
      'No part in the catalogue looks like this.',
    ]);
  });

  it('says what would tell the last two apart, cheapest first', () => {
    const pair = [part('K-110', '5'), part('K-130', '2', { lengthMm: 50.8, crossHole: { diameterMm: 2, atMm: 45 } })];
    const answer = tell({ diameterMm: 6.3 }, pair);
    expect(answer.tellApart?.look.map((look) => look.field)).toEqual(['head-marks', 'cross-hole', 'length']);
    expect(answer.tellApart?.look[0]?.sentence).toBe(
      'Look at the head: K-110 has 3 radial lines, K-130 has no head mark.',
    );
  });

  it('says that no mark tells grade 1 from grade 2', () => {
    const answer = tell({ headMarks: { kind: 'none' }, diameterMm: 6.3 }, [part('K-1', '1'), part('K-2', '2')]);
    expect(answer.tellApart?.look).toEqual([
      {
        field: 'grade',
        sentence: 'No mark tells K-1 and K-2 apart: they differ in grade only. Ask for the bag or the papers.',
      },
    ]);
    const twins = tell({ diameterMm: 6.3 }, [part('K-1', '1'), part('K-2', '1')]);
    expect(twins.tellApart?.look[0]?.sentence).toContain('alike in every mark');
  });

  it('puts the nearest reading first', () => {
    const near = [part('K-6', '2', { diameterMm: 6 }), part('K-7', '2')];
    expect(numbers(tell({ diameterMm: 6.3 }, near))).toEqual(['K-7', 'K-6']);
    expect(numbers(tell({ diameterMm: 6.05 }, near))).toEqual(['K-6', 'K-7']);
  });

  it('takes a pitch as a thread and a groove root as a groove', () => {
    const plain = part('K-9', '2', { thread: null });
    expect(tell({ pitchMm: 1.27 }, [plain]).ruledOut[0]?.field).toBe('thread');
    expect(tell({ pitchMm: 1 }, [part('K-1', '2')]).ruledOut[0]?.field).toBe('pitch');
    expect(numbers(tell({ grooveRootDiameterMm: 4.7 }))).toEqual(['K-140']);
    expect(tell({ grooveRootDiameterMm: 4 }).told).toBeNull();
    expect(tell({ threaded: false }, [plain, part('K-1', '2')]).told).toBe('K-9');
    expect(tell({ crossDrilled: true }).candidates).toEqual([]);
  });

  it('does not hold a mark the catalogue does not know against a part', () => {
    const bare = part('K-1', '2', {
      lengthMm: null,
      finish: null,
      grade: { kind: 'one-of', candidates: [{ system: 'SAE J429', grade: '2' }] },
    });
    const answer = tell(
      { headMarks: { kind: 'radial-lines', count: 3 }, lengthMm: 99, finish: 'zinc', diameterMm: 6.35 },
      [bare],
    );
    expect(answer.candidates[0]).toMatchObject({ agrees: ['diameter'], differs: [] });
  });

  it('takes the catalogue for the head mark before the table of the grade', () => {
    const stamped = part('K-1', '5', { headMarks: { kind: 'stamp', text: 'RX' } });
    expect(tell({ headMarks: { kind: 'stamp', text: 'rx' } }, [stamped]).told).toBe('K-1');
  });

  it('always keeps the part that the marks were read from', () => {
    const anyPart = fc.constantFrom(...catalogue);
    const off = fc.double({ min: -0.3, max: 0.3, noNaN: true });
    const look = fc.record({
      head: fc.boolean(),
      diameter: fc.boolean(),
      length: fc.boolean(),
      groove: fc.boolean(),
      finish: fc.boolean(),
    });
    fc.assert(
      fc.property(anyPart, off, look, (one, error, looked) => {
        const grade = one.spec.grade.kind === 'known' ? one.spec.grade.grade : '';
        const marks: MarksSeenInput = {
          headMarks: looked.head ? (grade === '5' ? { kind: 'radial-lines', count: 3 } : { kind: 'none' }) : null,
          diameterMm: looked.diameter ? one.spec.diameterMm + error : null,
          lengthMm: looked.length ? one.spec.lengthMm! + error : null,
          grooved: looked.groove ? Boolean(one.spec.groove) : null,
          finish: looked.finish ? 'painted over' : null,
        };
        const answer = tell(marks);
        expect(numbers(answer)).toContain(one.partNumber);
        if (answer.told !== null) expect(answer.told).toBe(one.partNumber);
      }),
    );
  });

  it('does not depend on the order of the catalogue', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(catalogue, { minLength: catalogue.length }), (shuffled) => {
        expect(numbers(tell({ diameterMm: 6.3, finish: 'zinc' }, shuffled))).toEqual(
          numbers(tell({ diameterMm: 6.3, finish: 'zinc' })),
        );
      }),
    );
  });
});

describe('the usual pin sizes', () => {
  // Common practice, no source: shear pins and bolts come in 3/16 to 3/8 in and 5 to 10 mm.
  it('gives every usual size a reading can be, nearest first', () => {
    expect(usualSizesNear(6.3).map((size) => size.words)).toEqual(['1/4 in', '6 mm']);
    expect(usualSizesNear(7.9).map((size) => size.words)).toEqual(['5/16 in', '8 mm']);
    expect(usualSizesNear(4.8).map((size) => size.words)).toEqual(['3/16 in', '5 mm']);
    expect(usualSizesNear(20)).toEqual([]);
  });
});
