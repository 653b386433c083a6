import { type GradeSystem, GRADE_ROWS, gradesForMarks, type HeadMarks, sayMarks } from './index';

function names(marks: HeadMarks, systems?: GradeSystem[]): string[] {
  const found = gradesForMarks(marks, systems);
  if (!found.ok) throw new Error(found.problems[0]?.sentence);
  expect(found.value.kind).toBe('one-of');
  return found.value.kind === 'one-of' ? found.value.candidates.map((ref) => `${ref.system} ${ref.grade}`) : [];
}

describe('grades by head marks', () => {
  it('takes no head mark as a set and never as grade 2', () => {
    expect(names({ kind: 'none' })).toEqual([
      'SAE J429 1',
      'SAE J429 2',
      'ISO 898-1 4.8',
      'ISO 898-1 5.8',
      'ISO 898-1 6.8',
      'ASTM A307 A',
    ]);
    expect(names({ kind: 'none' }, ['SAE J429'])).toEqual(['SAE J429 1', 'SAE J429 2']);
  });

  // Common practice, no source: the number of lines is the grade less two, which holds for 5 and 8 only.
  it.each([
    ['5', 3],
    ['8', 6],
  ])('reads grade %s from %d lines, two fewer than the grade', (grade, count) => {
    expect(Number(grade) - 2).toBe(count);
    expect(names({ kind: 'radial-lines', count })).toContain(`SAE J429 ${grade}`);
  });

  it('stays a set when one mark stands for two grades', () => {
    expect(names({ kind: 'radial-lines', count: 3 })).toEqual(['SAE J429 5', 'SAE J429 5.2']);
    expect(names({ kind: 'radial-lines', count: 6 })).toEqual(['SAE J429 8', 'SAE J429 8.2']);
  });

  it('reads a stamp whatever its case and blanks', () => {
    expect(names({ kind: 'stamp', text: '8.8' })).toEqual(['ISO 898-1 8.8']);
    expect(names({ kind: 'stamp', text: ' 307 a' })).toEqual(['ASTM A307 A']);
  });

  // ISO 898-1 wants the mark on 4.6, 5.6 and from 8.8 up.
  it('never takes a blank head for a class that must be marked', () => {
    const blank = names({ kind: 'none' });
    for (const grade of ['4.6', '5.6', '8.8', '9.8', '10.9', '12.9']) expect(blank).not.toContain(`ISO 898-1 ${grade}`);
  });

  it('looks at pin materials only when asked', () => {
    expect(names({ kind: 'none' }, ['pin material'])).toHaveLength(
      GRADE_ROWS.filter((row) => row.system === 'pin material').length,
    );
  });

  it('refuses a mark no table has, and names it', () => {
    expect(gradesForMarks({ kind: 'radial-lines', count: 4 })).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-grade', field: 'headMarks', value: '4 radial lines' }],
    });
  });

  it('says marks in words', () => {
    expect(sayMarks({ kind: 'radial-lines', count: 1 })).toBe('1 radial line');
    expect(sayMarks({ kind: 'stamp', text: '10.9' })).toBe('stamp 10.9');
  });
});
