import { describe, expect, it } from '@jest/globals';
import { count, readMoney, sayDayText, saySpans, saySpanText } from './say';

describe('words of the page', () => {
  it('writes a day so that no locale can turn it round', () => {
    expect(sayDayText('2017-03-03')).toBe('3 Mar 2017');
  });

  it('says a closed-open span with both days inside it', () => {
    expect(saySpanText({ from: '2017-03-03', to: '2018-04-05' })).toBe('3 Mar 2017 to 4 Apr 2018');
    expect(saySpanText({ from: '2017-03-03', to: null })).toBe('since 3 Mar 2017');
    expect(
      saySpans([
        { from: null, to: '2017-03-03' },
        { from: '2019-01-01', to: '2019-01-02' },
      ]),
    ).toBe('until 2 Mar 2017 or 1 Jan 2019');
  });

  it('reads money with a point or a comma and refuses the rest', () => {
    expect(['45', '45.5', '45,50', ' 0.05 '].map(readMoney)).toEqual([4500, 4550, 4550, 5]);
    expect(['', '-1', '1.234', 'much', '1 000'].map(readMoney)).toEqual([null, null, null, null, null]);
  });

  it('counts one and many', () => {
    expect([count(1, 'place'), count(2, 'place'), count(1, 'entry', 'entries')]).toEqual([
      '1 place',
      '2 places',
      '1 entry',
    ]);
  });
});
