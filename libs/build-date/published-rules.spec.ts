import { validate } from 'vin-validator';
import * as fc from 'fast-check';
import { day, dayOf, formatDay, isoWeekdayOf, saySet, setHolds } from '../day';
import { EvidenceSchema } from './evidence';
import { modelYearCharacter, modelYearWindow } from './model-year';
import { readEvidence } from './read-evidence';
import { TODAY, shop } from './testing/invented-shop';
import { vinOf } from './testing/evidence-of-a-build-day';
import { tyreCodeOf } from './tyre-rules';
import { vinCheckDigit } from './vin-rules';

const read = (evidence: object, today = TODAY) =>
  readEvidence(EvidenceSchema.parse({ id: 'one', ...evidence }), shop, today);
const daysOf = (evidence: object, today = TODAY) => saySet(read(evidence, today).days);
const problemOf = (evidence: object) => read(evidence).problem?.code ?? null;

describe('the model-year character', () => {
  // 49 CFR 565.15 Table VII (2005 to 2039) and the table before it; the EPA's engine family list has the same letters.
  const codes: [string, number][] = [
    ['A', 1980],
    ['B', 1981],
    ['C', 1982],
    ['D', 1983],
    ['E', 1984],
    ['F', 1985],
    ['G', 1986],
    ['H', 1987],
    ['J', 1988],
    ['K', 1989],
    ['L', 1990],
    ['M', 1991],
    ['N', 1992],
    ['P', 1993],
    ['R', 1994],
    ['S', 1995],
    ['T', 1996],
    ['V', 1997],
    ['W', 1998],
    ['X', 1999],
    ['Y', 2000],
    ['1', 2001],
    ['2', 2002],
    ['3', 2003],
    ['4', 2004],
    ['5', 2005],
    ['6', 2006],
    ['7', 2007],
    ['8', 2008],
    ['9', 2009],
  ];

  it.each(codes)('%s stands for %i and for the year thirty years later', (character, year) => {
    expect([modelYearCharacter(year), modelYearCharacter(year + 30)]).toEqual([character, character]);
  });

  it('stands for a time that holds one 1 January only, its own, and is no longer than a year and 364 days', () => {
    // 40 CFR 85.2302 to 85.2304: 2 January of the year before to 31 December.
    for (let year = 1980; year < 2040; year++) {
      const { from, to } = modelYearWindow(year);
      expect([formatDay(from), formatDay(to - 1)]).toEqual([`${year - 1}-01-02`, `${year}-12-31`]);
      expect(
        [dayOf(year - 1, 1, 1), dayOf(year, 1, 1), dayOf(year + 1, 1, 1)].map((one) => from <= one && one < to),
      ).toEqual([false, true, false]);
    }
  });
});

describe('a vehicle number', () => {
  // Worked example of 49 CFR 565 in public encyclopedias (sum 351, remainder 10, so X), and the neutral test number.
  it.each([
    ['1M8GDM9AXKP042788', null],
    ['11111111111111111', null],
    ['1M8GDM9AXKP042789', 'vin-check-digit'],
    ['1M8GDM9AXPK042788', 'vin-check-digit'],
    ['1M8GDM9AXKP04278', 'not-a-vin'],
    ['1M8GDM9AXKPO42788', 'not-a-vin'],
    ['1M8GDM9AXUP042788', 'not-a-vin'],
    ['1M8GDM9AXZP042788', 'not-a-vin'],
    ['1M8GDM9AX0P042788', 'not-a-vin'],
  ])('%s is read with problem %s', (vin, problem) => {
    expect(problemOf({ kind: 'vin', vin })).toBe(problem);
  });

  it('has the check digit another library finds', () => {
    const character = fc.constantFrom(...'ABCDEFGHJKLMNPRSTUVWXYZ0123456789');
    fc.assert(
      fc.property(fc.array(character, { minLength: 17, maxLength: 17 }), (characters) => {
        const vin = characters.join('');
        expect(vinCheckDigit(vin) === vin[8]).toBe(validate(vin));
        const good = vin.slice(0, 8) + vinCheckDigit(vin) + vin.slice(9);
        expect(validate(good)).toBe(true);
      }),
      { numRuns: 2_000 },
    );
  });

  it('cannot show a swap of characters of equal value, so a good check digit is no proof', () => {
    for (const group of ['AJ1', 'BKS2', 'CLT3', 'DMU4', 'ENV5', 'FW6', 'GPX7', 'HY8', 'RZ9'])
      expect(new Set([...group].map((one) => vinCheckDigit(`${one}M8GDM9A0KP042788`))).size).toBe(1);
  });

  it('of a heavy vehicle, trailer or motorcycle keeps both years of the 30-year cycle, whatever position 7', () => {
    expect(daysOf({ kind: 'vin', vin: '1M8GDM9AXKP042788' })).toBe(
      '2 Jan 1988 to 31 Dec 1989, or 2 Jan 2018 to 31 Dec 2019',
    );
  });

  it('of a light vehicle tells the cycle by position 7: a digit to 2009, a letter since 2010', () => {
    const light = (year: number, seventh: string) =>
      daysOf({ kind: 'vin', vin: vinOf(year, seventh), vehicle: 'light' });
    expect(light(1989, '4')).toBe('2 Jan 1988 to 31 Dec 1989');
    expect(light(2019, 'L')).toBe('2 Jan 2018 to 31 Dec 2019');
    // 73 FR 23367: the letter is allowed from 27 October 2008 and required from 30 April 2009, in model year 2009 too.
    expect(light(2009, 'L')).toBe('27 Oct 2008 to 31 Dec 2009');
    expect(read({ kind: 'vin', vin: vinOf(2000, 'L'), vehicle: 'light' }).problem?.code).toBe('outside-bounds');
  });

  it('is not read as a year that has not begun', () => {
    expect(daysOf({ kind: 'vin', vin: vinOf(1998, 'L') })).toBe('2 Jan 1997 to 31 Dec 1998');
    expect(daysOf({ kind: 'vin', vin: vinOf(1998, 'L') }, day('2027-01-01'))).toBe(
      '2 Jan 1997 to 31 Dec 1998, or 2 Jan 2027',
    );
  });

  it('without a check digit is read when the market uses none', () => {
    expect(problemOf({ kind: 'vin', vin: '1M8GDM9AXKP042789', checkDigit: 'not-used' })).toBeNull();
  });

  it('that is wrong is told how', () => {
    expect(read({ kind: 'vin', vin: '1M8GDM9AXKP042789' }).sentence).toBe(
      'Vehicle number 1M8GDM9AXKP042789 has check digit X, but its other characters give 1; ' +
        'read the plate again, one character is not what it seems.',
    );
    expect(read({ kind: 'vin', vin: '1M8' }).sentence).toBe('Vehicle number 1M8 has 3 characters; it must have 17.');
  });
});

describe('an engine family code', () => {
  const family = (first: string) => ({ kind: 'engine-family', family: `${first}HGXS.2080AA` });

  it('sets a floor for the machine and no ceiling', () => {
    // EPA "Information about Family Naming Conventions": G is 2016; 40 CFR 1068.105(a): engines may be used up later.
    expect(daysOf(family('G'))).toBe('2 Jan 2015 to 26 Nov 2026');
    expect(read(family('G')).sentence).toBe(
      'Engine family GHGXS.2080AA: engine of model year 2016 (built 2 Jan 2015 to 31 Dec 2016); ' +
        'the machine is not older than its engine.',
    );
  });

  it('says both model years where the character fits two, and lets the earlier one set the floor', () => {
    // The scheme serves model years from 1994 on, so T is 1996 or 2026.
    expect(daysOf(family('T'))).toBe('2 Jan 1995 to 26 Nov 2026');
    expect(read(family('T')).sentence).toContain(
      'model year 1996 (built 2 Jan 1995 to 31 Dec 1996) or 2026 (built 2 Jan 2025 to 31 Dec 2026)',
    );
  });

  it('of a small spark-ignition engine is of model year 1997 or later', () => {
    // 40 CFR part 90, from memory.
    expect(daysOf({ ...family('T'), engine: 'small-spark-ignition' })).toBe('2 Jan 2025 to 26 Nov 2026');
    expect(daysOf({ ...family('V'), engine: 'small-spark-ignition' })).toBe('2 Jan 1996 to 26 Nov 2026');
  });

  it('is refused when it has another form or names a model year that has not begun', () => {
    expect(problemOf({ kind: 'engine-family', family: 'GHGXS208AA' })).toBe('not-a-family-code');
    expect(problemOf(family('0'))).toBe('not-a-family-code');
    expect(problemOf(family('Q'))).toBe('not-a-family-code');
    expect(read(family('P'), day('2021-06-01')).problem?.code).toBe('no-such-date');
  });
});

describe("a tyre's date code", () => {
  const tyre = (code: string, today = TODAY) => read({ kind: 'tyre-code', code }, today);

  it('of four digits is week and year since 2000', () => {
    // 49 CFR 574.5; 0301 as week 3 of 2001 is printed in a vehicle manual. Week 1 is the first full week.
    expect(tyre('0301').sentence).toContain('Tyre code 0301: week 3 of 2001; if this tyre is the one');
    expect(daysOf({ kind: 'tyre-code', code: '0301' })).toBe('21 Jan 2001 to 26 Nov 2026');
  });

  it('of three digits keeps every decade, and the earliest sets the floor', () => {
    // The same manual gives 031 as 1981 or 1991; 317 is printed as 1997, and fits 1987 and 1977 as well.
    expect(tyre('031').sentence).toContain('week 3 of 1971 or week 3 of 1981 or week 3 of 1991');
    expect(tyre('317').sentence).toContain('week 31 of 1977 or week 31 of 1987 or week 31 of 1997');
    expect(formatDay(tyre('317').days[0]!.from)).toBe('1977-07-31');
    // 64 FR 36807: three digits until July 2000.
    expect(tyre('200').sentence).toContain('week 20 of 1980 or week 20 of 1990 or week 20 of 2000;');
    expect(tyre('400').sentence).toContain('week 40 of 1980 or week 40 of 1990;');
  });

  it('is refused when it is no date code, or names a week that has not been', () => {
    expect(['12', '12345', 'X317', '31.7'].map((code) => tyre(code).problem?.code)).toEqual(
      Array(4).fill('not-a-tyre-code'),
    );
    expect(['0017', '5417', '0199', '4826'].map((code) => tyre(code).problem?.code)).toEqual(
      Array(4).fill('no-such-date'),
    );
    expect(tyre('4826', day('2026-11-29')).problem).toBeNull();
  });

  it('written for any day from 1971 on is read back to the Sunday of its week', () => {
    fc.assert(
      fc.property(fc.integer({ min: dayOf(1971, 1, 3), max: TODAY }), (made) => {
        const { days, sentence } = tyre(tyreCodeOf(made));
        expect(setHolds(days, made)).toBe(true);
        const sunday = made - (isoWeekdayOf(made) % 7);
        if (made >= day('2000-07-02')) expect(days[0]!.from).toBe(sunday);
        else expect(sentence).toContain(` of ${formatDay(sunday).slice(0, 4)}`);
      }),
    );
  });
});

describe('the edition of a standard on a plate', () => {
  const edition = (standard: string, year: string) => daysOf({ kind: 'standard-edition', standard, edition: year });

  it('sets a floor on the day it was approved, which can lie in the year before its name', () => {
    // Title pages of the editions: B71.3-2005 approved 15 December 2004, B71.3-2014 on 14 August 2014, published
    // 15 September; B71.1-2003 approved 23 September 2003.
    expect(edition('ANSI B71.3', '2005')).toBe('15 Dec 2004 to 26 Nov 2026');
    expect(edition('ANSI B71.3', '2014')).toBe('14 Aug 2014 to 26 Nov 2026');
    expect(edition('ANSI B71.1', '2003')).toBe('23 Sep 2003 to 26 Nov 2026');
  });

  it('whose approval day is not known sets the floor at the year before its name, and says so', () => {
    const answer = read({ kind: 'standard-edition', standard: 'ANSI B71.8', edition: '2016' });
    expect(saySet(answer.days)).toBe('1 Jan 2015 to 26 Nov 2026');
    expect(answer.sentence).toContain('its approval day is not known and can lie in the year before its name');
  });

  it('is found whatever the blanks, dashes and co-publisher on the plate', () => {
    for (const name of ['ansi b71.3', 'ANSI/OPEI B71.3', 'ANSI-B71-3', ' ANSI  B 71.3 '])
      expect(edition(name, '2014')).toContain('14 Aug 2014');
  });

  it('that the shop does not know says nothing and asks for its approval day', () => {
    const answer = read({ kind: 'standard-edition', standard: 'ANSI B71.3', edition: '1995' });
    expect([answer.problem?.code, saySet(answer.days)]).toEqual(['unknown-edition', '1 Jan 1950 to 26 Nov 2026']);
    expect(answer.sentence).toBe(
      "Edition ANSI B71.3-1995 is not in the shop's list of standards; enter its approval day to make it count.",
    );
  });
});

describe('dates on papers and parts', () => {
  it.each([
    [{ kind: 'printed-date', date: '2016' }, '1 Jan 2016 to 31 Dec 2016'],
    [{ kind: 'printed-date', date: '2016-02' }, '1 Feb 2016 to 29 Feb 2016'],
    [{ kind: 'printed-date', date: '2016-02-29' }, '29 Feb 2016'],
    [{ kind: 'printed-date', date: '2015-W53' }, '28 Dec 2015 to 3 Jan 2016'],
    [{ kind: 'part-stamp', part: 'hose', date: '2016-02' }, '1 Feb 2016 to 26 Nov 2026'],
    [{ kind: 'receipt', date: '2016-02' }, '1 Jan 1950 to 29 Feb 2016'],
    [{ kind: 'first-seen', on: '2016-02-03' }, '1 Jan 1950 to 3 Feb 2016'],
    [{ kind: 'production-span', first: '2010-03', last: '2016' }, '1 Mar 2010 to 31 Dec 2016'],
    [{ kind: 'production-span', first: '2010-03' }, '1 Mar 2010 to 26 Nov 2026'],
    [{ kind: 'production-span', last: '2016-W01' }, '1 Jan 1950 to 10 Jan 2016'],
  ])('%j allows %s', (evidence, days) => {
    expect(daysOf(evidence)).toBe(days);
  });

  it('are refused where they cannot be', () => {
    expect(problemOf({ kind: 'production-span', first: '2016', last: '2010' })).toBe('no-such-date');
    for (const evidence of [
      { kind: 'printed-date', date: '2017-02-29' },
      { kind: 'receipt', date: '2017-W53' },
      { kind: 'first-seen', on: '2017' },
    ])
      expect(EvidenceSchema.safeParse({ id: 'one', ...evidence }).success).toBe(false);
  });

  it('are said in words that cannot be turned round', () => {
    expect(read({ kind: 'receipt', date: '2016-03-04' }).sentence).toBe(
      'Receipt of 4 Mar 2016: built on or before 4 Mar 2016.',
    );
    expect(read({ kind: 'part-stamp', part: 'hose', date: '2016-W09' }).sentence).toBe(
      'Date stamp on the hose: week 9 of 2016; if it is the part the machine was built with, it was built on or after 29 Feb 2016.',
    );
  });
});
