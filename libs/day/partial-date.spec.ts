import * as fc from 'fast-check';
import { dayOf, formatDay } from './day';
import { isoWeekDateOf } from './iso-week';
import { sayPartialDate, spanOfPartialDate } from './partial-date';

const written = (text: string) => {
  const span = spanOfPartialDate(text);
  return span && [formatDay(span.from), formatDay(span.to)];
};

describe('a date of any precision', () => {
  it.each([
    ['2016', '2016-01-01', '2017-01-01'],
    ['2016-02', '2016-02-01', '2016-03-01'],
    ['2016-12', '2016-12-01', '2017-01-01'],
    ['2016-02-29', '2016-02-29', '2016-03-01'],
    ['2009-W53', '2009-12-28', '2010-01-04'],
    ['2009-W01', '2008-12-29', '2009-01-05'],
  ])('%s means the days from %s up to, not including, %s', (text, from, to) => {
    expect(written(text)).toEqual([from, to]);
  });

  it('means nothing when there is no such year, month, week or day, or it is written otherwise', () => {
    const wrong = [
      '0000',
      '2017-00',
      '2017-13',
      '2017-02-29',
      '2010-W53',
      '2017-W00',
      '17',
      '2017-3',
      '2017-W9',
      'soon',
      '',
    ];
    expect(wrong.map(spanOfPartialDate)).toEqual(wrong.map(() => null));
  });

  it('holds the day it was made from, at every precision', () => {
    fc.assert(
      fc.property(fc.integer({ min: dayOf(1950, 1, 1), max: dayOf(2099, 12, 25) }), (value) => {
        const text = formatDay(value);
        const { year, week } = isoWeekDateOf(value);
        for (const given of [text, text.slice(0, 7), text.slice(0, 4), `${year}-W${String(week).padStart(2, '0')}`]) {
          const span = spanOfPartialDate(given)!;
          expect(span.from <= value && value < span.to).toBe(true);
        }
      }),
    );
  });

  it('is said as precisely as it is known', () => {
    expect(['2017', '2017-03', '2017-W09', '2017-03-14', 'soon'].map(sayPartialDate)).toEqual([
      '2017',
      'Mar 2017',
      'week 9 of 2017',
      '14 Mar 2017',
      'soon',
    ]);
  });
});
