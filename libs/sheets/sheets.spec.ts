import fc from 'fast-check';
import { SerialSchemeSchema, type SerialField } from '../build-date';
import {
  kindOf,
  nameOf,
  numberIn,
  proposeMapping,
  readRow,
  reportedCell,
  SHEET_KINDS,
  withGuard,
  withNameGuard,
  withoutGuard,
  workedLines,
  type Cell,
} from './index';
import { readField, writeField } from './kinds/scheme-notation';
import { dayIn, partialDate } from './read-day';

const how = { dayOrder: null };
const codeOf = (read: { ok: boolean; code?: string }) => (read.ok ? 'good' : read.code);
const name = (cell: Cell) => codeOf(nameOf(60)(cell, how));

describe('a name that a spreadsheet has been at', () => {
  it.each<[Cell, string]>([
    ['70-412A', 'good'],
    ['0012345', 'good'],
    ['7E01234', 'good'],
    ['1.23E+11', 'scientific-notation'],
    ['1,2e+05', 'scientific-notation'],
    ["'1.23E+11", 'good'],
    ['12345678901234500000', 'digits-lost'],
    [1234567890123456, 'digits-lost'],
    [12.5, 'not-accepted'],
    [4711, 'good'],
    ['12-Mar', 'became-a-day'],
    ['Mar-12', 'became-a-day'],
    ['2012-03-01 00:00:00', 'became-a-day'],
    [{ date: '2012-03-01' }, 'became-a-day'],
    ['3-März', 'became-a-day'],
    ['Sept-09', 'became-a-day'],
    ['October-2024', 'became-a-day'],
    ['1.Dez.', 'became-a-day'],
    ['DECK-1', 'good'],
    ['MARK-2', 'good'],
    ['NOVA-2', 'good'],
    ['1-MARINE', 'good'],
    ['=A2', 'formula'],
    ["'=A2", 'good'],
  ])('%j is %s', (cell, code) => expect(name(cell)).toBe(code));

  it('is told from lost zeros by its column', () => {
    const parts = kindOf('parts');
    const mapping = { maker: 0, number: 1 };
    const looks = [{ zeroLed: new Map() }, { zeroLed: new Map([[6, 20]]) }];
    const read = (number: string) => readRow(parts, ['HOLM', number], { ...how, mapping, looks });
    expect(read('012345').ok).toBe(true);
    expect(read('12345')).toMatchObject({ ok: false, problems: [{ field: 'number', code: 'leading-zeros' }] });
    expect(read('1234567').ok).toBe(true);
  });
});

describe('days', () => {
  it.each([
    ['2017-03-04', null, '2017-03-04'],
    ['4 Mar 2017', null, '2017-03-04'],
    ['2017/3/4', null, '2017-03-04'],
    ['13/04/2017', null, '2017-04-13'],
    ['04/13/2017', null, '2017-04-13'],
    ['03/04/2017', null, 'day-order'],
    ['03/04/2017', 'day-month-year', '2017-04-03'],
    ['03/04/2017', 'month-day-year', '2017-03-04'],
    ['43831', null, 'day-number'],
    ['31/02/2017', null, 'not-accepted'],
    ['soon', null, 'not-accepted'],
  ] as const)('%s with %s is %s', (text, dayOrder, expected) => {
    const read = dayIn(text, { dayOrder });
    expect(read.ok ? read.value : read.code).toBe(expected);
  });

  it('of any precision are read as precise as they are', () =>
    expect(['2017', '2017-03', '2017-W09'].map((text) => codeOf(partialDate(text, how)))).toEqual([
      'good',
      'good',
      'good',
    ]));
});

describe('numbers', () => {
  it.each([
    ['12.50', 12.5],
    ['12,50', 12.5],
    ['1.234,50', 1234.5],
    ['1,234.50', 1234.5],
    ['1 234,50', 1234.5],
    ['0,125', 0.125],
    ['€ 3', 3],
    ['1,234', 'ambiguous-number'],
    ['1.234', 'ambiguous-number'],
    ['1.2.3', 'not-accepted'],
    ['-1', 'not-accepted'],
    ['two', 'not-accepted'],
  ])('%s is %s', (text, expected) => {
    const read = numberIn({ most: 1_000_000 })(text, how);
    expect(read.ok ? read.value : read.code).toBe(expected);
  });
});

describe('the mark that keeps a cell from being run', () => {
  it('is taken off again, whatever the text', () =>
    fc.assert(fc.property(fc.string(), (text) => expect(withoutGuard(withGuard(text))).toBe(text))));

  it('leaves nothing that a spreadsheet would run', () =>
    fc.assert(fc.property(fc.string(), (text) => expect(withGuard(text)).not.toMatch(/^[=+\-@\t\r\0]/))));

  it('keeps a name whole that looks damaged', () =>
    fc.assert(
      fc.property(
        fc.oneof(fc.constantFrom('1.5E+10', '12-Mar', '=A1', "'7", '0012'), fc.stringMatching(/^[0-9A-Z'=+.-]{1,12}$/)),
        (text) => {
          const read = nameOf(60)(withNameGuard(text), how);
          expect(read).toEqual({ ok: true, value: text });
        },
      ),
    ));
});

describe('a cell in the list of rejected rows', () => {
  const { number, price } = kindOf('parts').columns;
  it.each<[Cell, string]>([
    ['1.23E+11', '1.23E+11'],
    ['12-Mar', '12-Mar'],
    ['=A2', '#N/A'],
    [{ formula: '=A2' }, '#N/A'],
    [{ date: '2012-03-01' }, '#N/A'],
    [{ merged: 'A1:A3' }, '#N/A'],
    [12.5, '#N/A'],
    ['70-412A', '70-412A'],
    ["'=A2", "'=A2"],
    ['-7', "'-7"],
  ])('%j of a part number stands as %s', (cell, expected) => expect(reportedCell(cell, number, how)).toBe(expected));

  it('that nobody refused keeps its text, guarded once', () => {
    expect(["'=A2", '=A2', 'plain'].map((cell) => reportedCell(cell, undefined, how))).toEqual([
      "'=A2",
      "'=A2",
      'plain',
    ]);
  });

  it('is refused again whatever it was, when the column refused it', () =>
    fc.assert(
      fc.property(
        fc.oneof<fc.Arbitrary<Cell>[]>(
          fc.string(),
          fc.double(),
          fc.boolean(),
          fc.record({ formula: fc.string({ minLength: 1 }) }),
          fc.record({ date: fc.constant('2020-01-01') }),
          fc.record({ fault: fc.constant('#REF!') }),
          fc.record({ merged: fc.constant('A1:B2') }),
        ),
        fc.constantFrom(number!, price!),
        (cell, column) => {
          const taken = (one: Cell) =>
            readRow(kindOf('parts'), ['HOLM', column === number ? one : '1', one], {
              ...how,
              mapping: column === number ? { maker: 0, number: 1 } : { maker: 0, number: 1, price: 2 },
              looks: [],
            }).ok;
          if (!taken(cell)) expect(taken(reportedCell(cell, column, how))).toBe(false);
        },
      ),
    ));
});

describe('a field of a serial', () => {
  const length = fc.integer({ min: 1, max: 12 });
  const plain = ['year-digit', 'year-two-digits', 'month-number', 'iso-week', 'day-of-year', 'separator'] as const;
  const field: fc.Arbitrary<SerialField> = fc.oneof(
    fc.constantFrom(...plain).map((kind) => ({ kind })),
    fc.record({
      kind: fc.constant('year-letter' as const),
      letters: fc.constant('ABCDEFGH'),
      firstYear: fc.integer({ min: 1950, max: 2099 }),
    }),
    fc.record({ kind: fc.constant('other' as const), length }),
    fc.record({ kind: fc.constant('literal' as const), text: fc.stringMatching(/^[A-Z0-9]{1,12}$/) }),
    fc
      .tuple(length, length)
      .map(([a, b]) => ({ kind: 'sequence' as const, length: a, ...(b > a ? { maxLength: b } : {}) })),
    fc
      .array(fc.record({ code: fc.stringMatching(/^[A-Z]$/), name: fc.string().map((one) => one.trim()) }), {
        maxLength: 3,
      })
      .map((codes) => ({ kind: 'plant' as const, length: 1, codes })),
  );

  it('is read as it was written', () =>
    fc.assert(fc.property(field, (one) => expect(readField(writeField(one))).toEqual({ ok: true, value: one }))));

  it('is refused when it is none', () =>
    expect(readField('year-letter').ok || SerialSchemeSchema.safeParse({}).success).toBe(false));
});

describe.each(SHEET_KINDS)('the kind %s', (id) => {
  const kind = kindOf(id);
  const headings = Object.values(kind.columns).map(({ heading }) => heading);

  it('finds all its own headings, and its worked lines can be read', () => {
    const mapping = proposeMapping(kind, headings);
    expect(Object.values(mapping)).toEqual(headings.map((_, at) => at));
    for (const line of workedLines(kind)) {
      const read = readRow(kind, line, { ...how, mapping, looks: [] });
      expect(read.ok ? [] : read.problems).toEqual([]);
    }
  });

  it('explains whatever it refuses, by field', () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.string(),
            fc.double({ noNaN: true }),
            fc.boolean(),
            fc.constantFrom<Cell>(
              null,
              { formula: '=1' },
              { merged: 'A1:A2' },
              { fault: '#REF!' },
              { date: '2017-03-04' },
              '1.2E+09',
              '\uFFFD',
              '43831',
            ),
          ),
          { minLength: headings.length, maxLength: headings.length },
        ),
        (cells) => {
          const read = readRow(kind, cells, { ...how, mapping: proposeMapping(kind, headings), looks: [] });
          if (read.ok) return;
          for (const { field, says } of read.problems) {
            expect(field === null || field in kind.columns).toBe(true);
            expect(says).toMatch(/.{10,}/);
          }
        },
      ),
    ));
});
