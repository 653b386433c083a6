import { SerialSchemeSchema } from './serial-scheme';

const make = (fields: object[], valid: object = {}) =>
  SerialSchemeSchema.safeParse({
    id: 'one',
    maker: 'Harrowgate',
    name: 'one',
    validFrom: null,
    validTo: null,
    fields,
    ...valid,
  });
const problems = (fields: object[], valid?: object) =>
  make(fields, valid).error?.issues.map((issue) => issue.message) ?? [];

describe('a serial scheme', () => {
  it('is taken when it can be read in one way only', () => {
    const fields = [
      { kind: 'year-digit' },
      { kind: 'month-letter', letters: 'ABCDEFGHJKLM' },
      { kind: 'sequence', length: 3, maxLength: 6 },
      { kind: 'separator' },
      { kind: 'other', length: 1 },
    ];
    expect(problems(fields)).toEqual([]);
    expect(
      problems([
        { kind: 'sequence', length: 3, maxLength: 6 },
        { kind: 'literal', text: 'X' },
      ]),
    ).toEqual([]);
  });

  it.each([
    [[{ kind: 'year-digit' }, { kind: 'year-two-digits' }], 'a scheme has at most one year field'],
    [[{ kind: 'month-number' }, { kind: 'iso-week' }], 'a scheme has at most one of month, ISO week and day of year'],
    [
      [
        { kind: 'sequence', length: 3 },
        { kind: 'sequence', length: 3 },
      ],
      'a scheme has at most one sequence field',
    ],
    [[{ kind: 'day-of-month' }], 'a day of the month needs a month field'],
    [[{ kind: 'sequence', length: 5, maxLength: 3 }], 'sequence maxLength 3 is below length 5'],
    [
      [{ kind: 'sequence', length: 3, maxLength: 6 }, { kind: 'year-digit' }],
      'a sequence of varying length must be followed by a separator, a fixed letter or the end',
    ],
    [
      [
        { kind: 'sequence', length: 3, maxLength: 6 },
        { kind: 'literal', text: '1' },
      ],
      'a sequence of varying length must be followed by a separator, a fixed letter or the end',
    ],
    [[{ kind: 'month-letter', letters: 'ABCDEFGHJKLA' }], 'letters ABCDEFGHJKLA hold one twice; each may stand once'],
    [
      [{ kind: 'plant', length: 1, codes: [{ code: 'KK', name: 'Kelso' }] }],
      'plant code "KK" must be 1 capitals or digits',
    ],
  ])('%j is refused: %s', (fields, message) => {
    expect(problems(fields)).toEqual([message]);
  });

  it('is refused when it ends before it begins, or has eleven month letters', () => {
    expect(problems([{ kind: 'year-digit' }], { validFrom: '2015-07-01', validTo: '2015-07-01' })).toEqual([
      'validTo 2015-07-01 must be later than validFrom 2015-07-01',
    ]);
    expect(problems([{ kind: 'month-letter', letters: 'ABCDEFGHJKL' }])).toHaveLength(1);
    expect(problems([{ kind: 'year-digit' }], { validFrom: '2015-02-30' })[0]).toContain(
      'is not a day; write it as YYYY-MM-DD',
    );
  });

  it('takes no characters into its pattern that would mean something else there', () => {
    for (const text of ['.*', 'A|B', '(', 'a', '']) expect(make([{ kind: 'literal', text }]).success).toBe(false);
    for (const code of ['.', '^', ']'])
      expect(make([{ kind: 'plant', length: 1, codes: [{ code, name: '' }] }]).success).toBe(false);
    expect(make([{ kind: 'year-letter', letters: 'A-Z]', firstYear: 2000 }]).success).toBe(false);
  });
});
