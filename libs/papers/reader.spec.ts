import { assert, constantFrom, integer, property } from 'fast-check';
import { MANNERS, type Reading } from '../contracts';
import { formatDay, sayDay } from '../day';
import { sayTorque } from '../fastener';
import { readerOf } from './index';

const GB: Reading = { manner: 'en-GB', torque: 'N·m', length: 'mm' };
const US: Reading = { manner: 'en-US', torque: 'lbf·ft', length: 'in' };
const DE: Reading = { manner: 'de-DE', torque: 'N·m', length: 'mm' };
const read = (reading: Reading) => readerOf(reading, 'UTC');

describe('how a person reads', () => {
  // 1 lbf·ft = 1.355818 N·m, 1 in = 25.4 mm exactly: NIST SP 811, appendix B.8
  it('says a torque and a length in both units, the reader’s first', () => {
    expect(read(GB).torque({ low: 135.5818, high: 135.5818 })).toBe('136 N·m (100 lbf·ft)');
    expect(read(US).torque({ low: 135.5818, high: 271.1636 })).toBe('100 to 200 lbf·ft (136 to 271 N·m)');
    expect(read(GB).length(6.35)).toBe('6.35 mm (0.250 in)');
    expect(read(US).length(6.35)).toBe('0.250 in (6.35 mm)');
    expect(read(DE).length(6.35)).toBe('6,35 mm (0,250 in)');
  });

  it('says days, spans, instants, numbers and sums in the reader’s manner', () => {
    const us = read(US);
    expect([us.day('2017-03-04'), us.dayOfYear('2017-03-04'), us.month('2017-03-04')]).toEqual([
      'Mar 4, 2017',
      'Mar 4',
      'Mar 2017',
    ]);
    expect(us.span({ from: '2017-03-03', to: '2018-04-05' })).toBe('Mar 3, 2017 to Apr 4, 2018');
    expect(us.span({ from: null, to: null })).toBe('any day');
    expect(us.instant('2017-03-04T14:05:00Z').replace(/\s/g, ' ')).toBe('Mar 4, 2017, 02:05 PM');
    expect(read(DE).number(1234.5)).toBe('1.234,5');
    expect(read(DE).money(123456, 'EUR').replace(/\s/g, ' ')).toBe('1.234,56 €');
  });

  it('puts the days, torques and lengths of a sentence into the reader’s manner and leaves part numbers alone', () => {
    const sentence =
      'G310-052 of 7 Jun 2022 lets go at 135.6 N·m (100 lbf·ft); 6.35 mm (0.250 in) across, 31 Feb 2020.';
    expect(read(GB).sentence(sentence)).toBe(sentence);
    expect(read(US).sentence(sentence)).toBe(
      'G310-052 of Jun 7, 2022 lets go at 100 lbf·ft (135.6 N·m); 0.250 in (6.35 mm) across, 31 Feb 2020.',
    );
    expect(read(DE).sentence(sentence)).toContain('lets go at 135,6 N·m (100 lbf·ft); 6,35 mm (0,250 in)');
  });

  it('reads every day and torque the rules write, in any manner', () => {
    assert(
      property(integer({ min: -20_000, max: 40_000 }), constantFrom(...MANNERS), (day, manner) => {
        const reader = read({ ...US, manner });
        return reader.sentence(`Built ${sayDay(day)}.`) === `Built ${reader.day(formatDay(day))}.`;
      }),
    );
    assert(
      property(integer({ min: 1, max: 900_000 }), (hundredths) => {
        const nm = { low: hundredths / 100, high: hundredths / 100 };
        return read(US).sentence(sayTorque(nm)).includes('lbf·ft (');
      }),
    );
  });
});
