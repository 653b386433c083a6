import { getDate, getDayOfYear, getISOWeek, getISOWeekYear, getMonth, getYear } from 'date-fns';
import * as fc from 'fast-check';
import { dayOf, day, intersectionOf, isSubset, saySet, setHolds, type Day } from '../day';
import { boundsOf } from './bounds';
import { inferBuildDates } from './infer-build-dates';
import { inferBuildDays } from './infer-build-days';
import { prepareShop } from './prepare-shop';
import { possibleKeys, readSerial } from './read-serial';
import type { SerialScheme } from './serial-scheme';
import type { ReadField, SerialReading } from './serial-reading';
import { ShopDataSchema } from './shop-data';
import { MAKER, TODAY, schemes, shop } from './testing/invented-shop';
import { writeSerial } from './write-serial';

const read = (serial: string, line?: string) => readSerial(serial, { maker: MAKER, line }, shop, TODAY);
const scheme = (id: string): SerialScheme => schemes.find((one) => one.id === id)!;
const inUse = (one: SerialScheme) => ({
  from: one.validFrom === null ? dayOf(1950, 1, 1) : day(one.validFrom),
  to: one.validTo === null ? TODAY : day(one.validTo),
});
const schemeAndDay = fc
  .constantFrom(...schemes)
  .chain((one) => fc.tuple(fc.constant(one), fc.integer({ min: inUse(one).from, max: inUse(one).to - 1 })));

/** Whether a read field agrees with a build day, by another library's calendar. */
function agrees({ kind, text }: ReadField, built: Day, { fields }: SerialScheme): boolean {
  const date = new Date(1970, 0, 1 + built, 12);
  const year = fields.some((field) => field.kind === 'iso-week') ? getISOWeekYear(date) : getYear(date);
  const field = fields.find((one) => one.kind === kind)!;
  switch (field.kind) {
    case 'year-digit':
      return String(year).endsWith(text);
    case 'year-two-digits':
      return String(year).slice(2) === text;
    case 'year-four-digits':
      return String(year) === text;
    case 'year-letter':
      return field.letters[(year - field.firstYear) % field.letters.length] === text;
    case 'month-number':
      return getMonth(date) + 1 === Number(text);
    case 'month-letter':
      return field.letters[getMonth(date)] === text;
    case 'iso-week':
      return getISOWeek(date) === Number(text);
    case 'day-of-year':
      return getDayOfYear(date) === Number(text);
    case 'day-of-month':
      return getDate(date) === Number(text);
    default:
      return true;
  }
}

/** Two schemes that read the same ten digits. */
function prepareTwo() {
  const fields = [{ kind: 'year-four-digits' }, { kind: 'day-of-year' }, { kind: 'sequence', length: 3 }];
  const days = { id: 'days', maker: MAKER, name: 'days', validFrom: '2014-01-01', validTo: null, fields };
  const number = [{ kind: 'sequence', length: 10 }];
  const numbers = {
    id: 'numbers',
    maker: MAKER,
    name: 'numbers',
    validFrom: null,
    validTo: '1990-01-01',
    fields: number,
  };
  return prepareShop(ShopDataSchema.parse({ serialSchemes: [days, numbers], standardEditions: [] }));
}

const fits = (reading: SerialReading, built: Day) =>
  reading.fields.every((field) => agrees(field, built, scheme(reading.scheme)));

describe('a serial written by a scheme', () => {
  it('is read back by that scheme to days that hold the build day', () => {
    fc.assert(
      fc.property(schemeAndDay, fc.nat(9_999), ([one, built], sequence) => {
        const report = read(writeSerial(one, built, { sequence }));
        const own = report.readings.find((reading) => reading.scheme === one.id)!;
        expect(setHolds(own.days, built)).toBe(true);
        expect(
          possibleKeys(report, [{ from: built, to: built + 1 }]).filter((key) => key.scheme === one.id),
        ).toHaveLength(1);
      }),
      { numRuns: 500 },
    );
  });

  it('means exactly the days of the scheme whose calendar fields are the ones on the plate', () => {
    fc.assert(
      fc.property(schemeAndDay, ([one, built]) => {
        const own = read(writeSerial(one, built)).readings.find((reading) => reading.scheme === one.id)!;
        const { from, to } = inUse(one);
        for (let value = from; value < to; value += 1)
          if (setHolds(own.days, value) !== fits(own, value)) throw new Error(`${one.id} differs on day ${value}`);
      }),
      { numRuns: 12 },
    );
  });

  it('has keys in the order of build days, and of running numbers on one day', () => {
    fc.assert(
      fc.property(schemeAndDay, schemeAndDay, fc.nat(99), fc.nat(99), ([one, a], [, other], first, second) => {
        const { from, to } = inUse(one);
        const b = from + ((((other - from) % (to - from)) + (to - from)) % (to - from));
        const keyOf = (built: Day, sequence: number) =>
          possibleKeys(read(writeSerial(one, built, { sequence })), [{ from: built, to: built + 1 }]).find(
            (key) => key.scheme === one.id,
          )!;
        const [left, right, again] = [keyOf(a, first), keyOf(b, second), keyOf(a, second)];
        const apart = intersectionOf(left.days, right.days).length === 0;
        if (one.id !== 'plain' && apart) expect(left.key < right.key).toBe(a < b);
        expect(left.key < again.key).toBe(first < second);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a serial as it is read', () => {
  it('tells which characters were read as what', () => {
    const [reading] = read('w 4c 00123').readings;
    expect(reading!.characters).toBe('W4C00123');
    expect(reading!.fields).toEqual([
      { kind: 'plant', at: 0, text: 'W', meaning: 'the plant Wick' },
      { kind: 'year-digit', at: 1, text: '4', meaning: 'a year ending in 4' },
      { kind: 'month-letter', at: 2, text: 'C', meaning: 'March' },
      { kind: 'sequence', at: 3, text: '00123', meaning: 'the running number' },
    ]);
    expect(read('W4C00123').sentence).toBe(
      'Serial W4C00123 by year digit, month letter: W is the plant Wick, 4 is a year ending in 4, C is March, ' +
        '00123 is the running number; built 1 Mar 1994 to 31 Mar 1994, or 1 Mar 2004 to 31 Mar 2004, or 1 Mar 2014 to 31 Mar 2014.',
    );
  });

  it('keeps one key for each year its year digit fits, until other evidence leaves one', () => {
    const report = read('W4C00123');
    expect(possibleKeys(report, report.readings[0]!.days).map(({ key }) => key)).toEqual([
      '1994.003.000000000123.W',
      '2004.003.000000000123.W',
      '2014.003.000000000123.W',
    ]);
    expect(possibleKeys(report, [{ from: day('2000-01-01'), to: day('2010-01-01') }])).toEqual([
      {
        scheme: 'digit-letter',
        key: '2004.003.000000000123.W',
        days: [{ from: day('2004-03-01'), to: day('2004-04-01') }],
      },
    ]);
  });

  it('counts case, blanks and dashes for nothing, save that a number of varying length ends where its separator stands', () => {
    expect(saySet(read(' w-4c/00123 ').readings[0]!.days)).toBe(saySet(read('W4C00123').readings[0]!.days));
    expect(read('H1709-1234').fit).toBe('one');
    expect(read('h1709 123456').fit).toBe('one');
    expect(read('H17091234').fit).toBe('none');
  });

  it('fits no scheme, and is said to, when it is too long, holds a skipped letter or belongs to another maker', () => {
    expect(read('W4C001234').sentence).toBe(
      'Serial W4C001234 fits no scheme of Harrowgate; read the plate again, or enter the scheme it follows.',
    );
    expect(read('W4I00123').fit).toBe('none');
    const other = readSerial('W4C00123', { maker: 'Thornbury' }, shop, TODAY);
    expect(other.sentence).toBe(
      'Serial W4C00123: the shop has no serial scheme of Thornbury; enter one to make it count.',
    );
  });

  it('fits two ways, and is said to, when two schemes read it; both readings stay possible', () => {
    // Written as the 244th day of 2018, it can also be a plain number of before 1990 when that has ten digits.
    const two = prepareTwo();
    const report = readSerial('2018244001', { maker: MAKER }, two, TODAY);
    expect(report.fit).toBe('several');
    expect(report.sentence).toBe(
      'Serial 2018244001 fits in 2 ways, days (1 Sep 2018) and numbers (1 Jan 1950 to 31 Dec 1989); all stay possible.',
    );
  });

  it('is refused by a scheme that reads a day that never was, with the reason', () => {
    const report = read('2019366001');
    expect(report.fit).toBe('none');
    expect(report.rejected.map((one) => one.scheme)).toEqual(['day-of-year']);
    expect(report.sentence).toContain('it names no day on which that scheme was in use');
    expect(read('2020366001').fit).toBe('one');
    expect([read('H1953-0001').fit, read('H2053-0001').fit]).toEqual(['none', 'one']);
  });

  it('is read by the schemes of its line, and by all of the maker when the line is not known', () => {
    expect(read('H1709-1234', 'Moor chippers').fit).toBe('none');
    expect(read('H1709-1234', 'fell tillers').fit).toBe('one');
    expect(read('W4C00123', 'Moor chippers').fit).toBe('one');
  });

  it('is read across New Year by the year of its ISO week', () => {
    // 31 December 2018 is 2019-W01-1 and 3 January 2016 is 2015-W53-7 (ISO 8601).
    expect(saySet(read('H1901-0001').readings[0]!.days)).toBe('31 Dec 2018 to 6 Jan 2019');
    expect(saySet(read('H1553-0001').readings[0]!.days)).toBe('28 Dec 2015 to 3 Jan 2016');
  });

  it('can follow a scheme that was in use from the middle of a week on', () => {
    expect(saySet(read('H1527-0001').readings[0]!.days)).toBe('1 Jul 2015 to 5 Jul 2015');
  });
});

describe('a hundred thousand random strings read as serials', () => {
  /** A small generator with a fixed seed, so that a failure can be looked at again. */
  function* numbers(seed: number) {
    for (let state = seed; ;) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      yield state / 2 ** 32;
    }
  }

  it('throw nothing, and no answer holds a day that the characters read contradict', () => {
    const random = numbers(20_260_101);
    const below = (limit: number) => Math.floor(random.next().value! * limit);
    const alphabets = [
      '0123456789',
      'ABCDEFGHJKLMNPRSTUVWXY0123456789',
      'KW0123456789ABC',
      '\u0000 -/.é漢😀OIl$^()[]{}*+?\\',
    ];
    const makeRandom = () => {
      const alphabet = [...alphabets[below(alphabets.length)]!];
      return Array.from({ length: below(14) }, () => alphabet[below(alphabet.length)]).join('');
    };
    const makeNear = () => {
      const one = schemes[below(schemes.length)]!;
      const written = writeSerial(one, dayOf(1985, 1, 1) + below(16_000), { sequence: below(9_999) });
      const at = below(written.length);
      return below(2) ? written : written.slice(0, at) + alphabets[1]![below(32)]! + written.slice(at + 1);
    };
    let readable = 0;
    for (let run = 0; run < 100_000; run++) {
      const serial = below(2) ? makeRandom() : makeNear();
      const { days, readings } = withDays(serial);
      if (readings.length > 0) readable++;
      if (run % 10 === 0) expectOffersToBeReadable(serial);
      if (!isSubset(days, [boundsOf(TODAY)])) throw new Error(`${serial}: out of bounds`);
      for (const { from, to } of readings.length > 0 ? days : [])
        for (const value of [from, to - 1, (from + to) >> 1])
          if (!readings.some((reading) => fits(reading, value)))
            throw new Error(`${serial}: day ${value} is contradicted`);
    }
    expect(readable).toBeGreaterThan(10_000);
  }, 180_000);

  /** With the reasons in words too, and the other readings, each of which must be one. */
  function expectOffersToBeReadable(serial: string) {
    const answer = inferBuildDates([{ id: 'serial', kind: 'serial-scheme', maker: MAKER, serial }], shop, TODAY);
    for (const offer of answer.misreadings) expect(read(offer.possible).fit).not.toBe('none');
  }

  function withDays(serial: string) {
    const evidence = [{ id: 'serial', kind: 'serial-scheme', maker: MAKER, serial } as const];
    return { days: inferBuildDays(evidence, shop, TODAY), readings: read(serial).readings };
  }
});
