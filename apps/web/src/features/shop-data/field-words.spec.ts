import { leftOutOf, lettersWithout, newField, placesOf } from './field-words';

describe('the letters of a scheme', () => {
  it('are the alphabet without those left out, and the left out ones can be told from them again', () => {
    expect(lettersWithout('I', 12)).toBe('ABCDEFGHJKLM');
    expect(leftOutOf('ABCDEFGHJKLM')).toBe('I');
    expect(leftOutOf(lettersWithout('IOQ'))).toBe('IOQ');
  });
});

describe('the place of a field', () => {
  it('is counted from 1, without the separators, which are not counted on the plate either', () => {
    const fields = [newField('plant'), newField('year-two-digits'), newField('separator'), newField('sequence')];
    expect(placesOf(fields)).toEqual(['place 1', 'places 2 and 3', 'between 3 and 4', 'places 4 to 7']);
  });

  it('is open after a number of varying length', () => {
    const fields = [
      { kind: 'sequence', length: 3, maxLength: 5 } as const,
      newField('separator'),
      newField('year-digit'),
    ];
    expect(placesOf(fields)).toEqual(['from 1, 3 to 5 characters', 'after that', 'from there, 1 character']);
  });
});
