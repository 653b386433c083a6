import fc from 'fast-check';
import { isPartKey, numberRulesSchema, partKeyOf, splitPartKey, type NumberRules } from './number-rules';
import { readPartNumber, sayPartNumberProblem } from './read-part-number';

const holm: NumberRules = numberRulesSchema.parse({
  makerCode: 'HOLM',
  noise: '-.',
  packMarks: [
    { before: '-', after: 'PK' },
    { before: '/P', after: '' },
  ],
  trailingLetterIsRevision: true,
});

function canonical(text: string, rules = holm): string {
  const reading = readPartNumber(text, rules);
  return reading.ok ? reading.number.canonical : `(${reading.problem.code})`;
}

describe('reading a part number', () => {
  it('case, blanks and the maker’s noise do not matter', () => {
    for (const text of ['704-12B', '704 12b', ' 7.0.4.1.2 B ', '70412B']) expect(canonical(text)).toBe('70412B');
  });

  it('a trailing revision letter does matter: another revision is another part', () => {
    expect(canonical('704-12B')).not.toBe(canonical('704-12C'));
    expect(readPartNumber('704-12B', holm)).toMatchObject({ number: { revision: 'B' } });
    expect(readPartNumber('704-12', holm)).toMatchObject({ number: { revision: null } });
  });

  it('a letter that does not follow a digit is part of the number, not a revision', () => {
    expect(readPartNumber('704-AB', holm)).toMatchObject({ number: { canonical: '704AB', revision: null } });
  });

  it('where the maker has no revision letters, the letter stays and is none', () => {
    const plain = { ...holm, trailingLetterIsRevision: false };
    expect(readPartNumber('704-12B', plain)).toMatchObject({ number: { canonical: '70412B', revision: null } });
  });

  it('a pack is the same part, counted', () => {
    expect(readPartNumber('704-12B-10pk', holm)).toEqual({
      ok: true,
      number: { canonical: '70412B', pack: 10, revision: 'B' },
    });
    expect(readPartNumber('70412B/P4', holm)).toMatchObject({ number: { canonical: '70412B', pack: 4 } });
    expect(readPartNumber('70412B', holm)).toMatchObject({ number: { pack: 1 } });
  });

  it('where two marks fit, the one that takes more of the text is meant', () => {
    const twice = {
      ...holm,
      packMarks: [
        { before: 'P', after: '' },
        { before: '-BP', after: '' },
      ],
    };
    expect(readPartNumber('704-BP10', twice)).toMatchObject({ number: { canonical: '704', pack: 10 } });
  });

  it('a suffix alone is no pack, for nothing would be left of the number', () => {
    expect(canonical('-10PK')).toBe('10PK');
  });

  it('refuses what is no number, naming the text and what would be accepted', () => {
    const say = (text: string) => {
      const reading = readPartNumber(text, holm);
      return reading.ok ? 'accepted' : sayPartNumberProblem(text, reading.problem);
    };
    expect(say(' -- ')).toBe('" -- " holds no part number: give its letters and digits.');
    expect(say('704*12')).toBe(
      '"704*12" holds "*", which this maker does not print: give letters, digits and the usual dashes.',
    );
    expect(say('704-0PK')).toBe('"704-0PK" ends in "-0PK", a pack of none: a pack holds 1 or more.');
    expect(say('1'.repeat(41))).toMatch(/has 41 characters; a part number has at most 40\.$/);
  });

  it('reading a canonical form again changes nothing', () => {
    const typed = fc.string({ unit: fc.constantFrom(...'ABab019 -./PK'), maxLength: 20 });
    fc.assert(
      fc.property(typed, (text) => {
        const once = readPartNumber(text, { ...holm, packMarks: [{ before: '-', after: 'PK' }] });
        if (!once.ok) return;
        const again = readPartNumber(once.number.canonical, holm);
        expect(again).toMatchObject({ ok: true, number: { canonical: once.number.canonical, pack: 1 } });
      }),
    );
  });
});

describe('a part key', () => {
  it('comes apart into what it was made of', () => {
    expect(splitPartKey(partKeyOf('HOLM', '70412/B'))).toEqual({ makerCode: 'HOLM', canonical: '70412/B' });
  });

  it('has a maker and a number', () => {
    expect(['HOLM/70412B', '70412B', 'holm/1', 'HOLM/', 'HOLM/1 2'].map(isPartKey)).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });
});
