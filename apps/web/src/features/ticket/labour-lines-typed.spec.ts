import { emptyLine, readLines, typedLines, withMinutes } from './labour-lines-typed';

describe('lines of labour as they are typed', () => {
  it('come back as they were kept', () => {
    const kept = [
      { kind: 'labour' as const, what: 'Pin', minutes: 45, minor: 3_850 },
      { kind: 'other' as const, what: 'Fetched', minutes: 0, minor: 1_000 },
    ];
    expect(readLines(typedLines(kept))).toEqual(kept);
    expect(readLines(typedLines([]))).toEqual([]);
  });

  it('take their price from the hour until somebody sets another', () => {
    const first = withMinutes(emptyLine(), '45', 6_400);
    expect(first.money).toBe('48.00');
    expect(withMinutes(first, '60', 6_400).money).toBe('64.00');
    expect(withMinutes({ ...first, money: '38,50' }, '60', 6_400).money).toBe('38,50');
    expect(withMinutes(emptyLine(), '45', 0).money).toBe('');
  });

  it.each([
    ['money that is none', { money: 'forty' }],
    ['minutes that are none', { minutes: '4h' }],
    ['no word of what is done', { what: ' ' }],
    ['more minutes than a line takes', { minutes: '10001' }],
  ])('are not kept with %s', (_what, wrong) => {
    expect(readLines([{ ...emptyLine(), minutes: '10', money: '5', ...wrong }])).toBeNull();
  });
});
