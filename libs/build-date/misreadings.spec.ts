import * as fc from 'fast-check';
import { saySet, setHolds } from '../day';
import { readingsWithOneChange, readingsWithTwoChanges } from './confused-characters';
import type { Evidence } from './evidence';
import { inferBuildDates } from './infer-build-dates';
import { buildDay } from './testing/evidence-of-a-build-day';
import { MAKER, TODAY, schemes, shop } from './testing/invented-shop';
import { writeSerial } from './write-serial';

const serial = (text: string): Evidence => ({ id: 'serial', kind: 'serial-scheme', maker: MAKER, serial: text });
const receipt = (date: string): Evidence => ({ id: 'receipt', kind: 'receipt', date });
const stamp = (date: string): Evidence => ({ id: 'stamp', kind: 'part-stamp', part: 'gear case', date });
const offers = (...evidence: Evidence[]) =>
  inferBuildDates(evidence, shop, TODAY).misreadings.map(({ possible, days }) => [possible, saySet(days)]);

describe('another reading of confused characters', () => {
  it('is offered when the serial fits no scheme', () => {
    expect(offers(serial('W4CO0123'), stamp('2006'))).toEqual([['W4C00123', '1 Mar 2014 to 31 Mar 2014']]);
  });

  it('is offered when the serial contradicts other evidence, and only if it then agrees', () => {
    // U stands for 2005 in that scheme, V for 2006.
    expect(offers(serial('U0801XX0017'), stamp('2006-02'), receipt('2006-12'))).toEqual([
      ['V0801XX0017', '1 Aug 2006'],
    ]);
    expect(offers(serial('U0801XX0017'), stamp('2007-02'), receipt('2007-12'))).toEqual([]);
    expect(offers(serial('U0801XX0017'), stamp('2005-02'), receipt('2005-12'))).toEqual([]);
  });

  it('is offered, while the other evidence conflicts by itself, only for a serial that cannot be read', () => {
    expect(offers(serial('U0801XX0017'), stamp('2006-02'), receipt('2006-01'))).toEqual([]);
    expect(offers(serial('W4CO0123'), stamp('2006-02'), receipt('2006-01'))).toEqual([['W4C00123', 'no day']]);
  });

  it('is not offered while the serial fits and agrees, although it holds confused characters', () => {
    expect(offers(serial('U0801XX0017'), stamp('2005-02'), receipt('2006-12'))).toEqual([]);
    expect(offers(serial('W0B00156'), stamp('1999'))).toEqual([]);
  });

  it('changes two characters only when one is not enough', () => {
    expect(offers(serial('W4COO123')).map(([possible]) => possible)).toEqual(['W4C00123']);
    expect(offers(serial('W4CO0I23')).map(([possible]) => possible)).toEqual(['W4C00123']);
    expect(offers(serial('W4COOI23'))).toEqual([]);
  });

  it('is offered for a vehicle number with a wrong check digit or a letter that is never used', () => {
    const vin = (text: string): Evidence => ({
      id: 'vin',
      kind: 'vin',
      vin: text,
      vehicle: 'other',
      checkDigit: 'required',
    });
    expect(offers(vin('1M8GDM9AXKPO42788')).map(([possible]) => possible)).toContain('1M8GDM9AXKP042788');
    expect(offers(vin('1M8GDM9AXKP042788'))).toEqual([]);
  });

  it('is never offered for a maker whose schemes the shop does not know', () => {
    const unknown: Evidence = { id: 'serial', kind: 'serial-scheme', maker: 'Thornbury', serial: 'W4CO0123' };
    expect(offers(unknown)).toEqual([]);
  });

  it('never takes the place of what was given: the answer is the one without a readable serial', () => {
    const answer = inferBuildDates([serial('W4CO0123'), receipt('2010')], shop, TODAY);
    expect(saySet(answer.days)).toBe('1 Jan 1950 to 31 Dec 2010');
    expect(answer.pieces[0]!.problem?.code).toBe('fits-no-scheme');
    expect(answer.misreadings[0]!.sentence).toBe(
      'Could W4CO0123 be W4C00123? Look at the plate again; ' +
        'then it was built 1 Mar 1994 to 31 Mar 1994, or 1 Mar 2004 to 31 Mar 2004.',
    );
  });

  it('leads back to a true serial of which one digit was taken for a letter', () => {
    const swaps: [string, string][] = [
      ['0', 'O'],
      ['1', 'I'],
      ['2', 'Z'],
      ['5', 'S'],
      ['6', 'G'],
      ['8', 'B'],
    ];
    const digitsOnly = schemes.find((one) => one.id === 'day-of-year')!;
    fc.assert(
      fc.property(buildDay, fc.constantFrom(...swaps), fc.nat(999), (day, [digit, letter], sequence) => {
        const built = Math.max(day, 16_100);
        const good = writeSerial(digitsOnly, built, { sequence });
        fc.pre(good.includes(digit));
        const { misreadings } = inferBuildDates([serial(good.replace(digit, letter))], shop, TODAY);
        const found = misreadings.find(({ possible }) => possible === good)!;
        expect(setHolds(found.days, built)).toBe(true);
      }),
    );
  });

  it('differs in exactly one or exactly two places, and never repeats', () => {
    const apart = (a: string, b: string) => [...a].filter((character, at) => character !== b[at]).length;
    const text = fc
      .array(fc.constantFrom(...'ABDGHIKLOQSUVZ0123456789'), { maxLength: 9 })
      .map((characters) => characters.join(''));
    fc.assert(
      fc.property(text, (given) => {
        const [one, two] = [readingsWithOneChange(given), readingsWithTwoChanges(given)];
        expect(one.every((other) => apart(given, other) === 1)).toBe(true);
        expect(two.every((other) => apart(given, other) === 2)).toBe(true);
        expect(new Set([...one, ...two]).size).toBe(one.length + two.length);
      }),
    );
  });
});
