import type { RulingView } from '../../../../../libs/contracts';
import { barredBy, barredByText } from './barred-by';

const bar = (number: string, rule: string) => ({
  part: { key: `HOLM/${number.replace(/-/g, '')}`, number, name: 'Bolt' },
  reason: 'too hard',
  rule,
  source: 'service bulletin SB-1 of 2 Mar 2024',
  voidsWarranty: false,
});
const ruling = (...pieces: ReturnType<typeof bar>[][]) =>
  ({ pieces: pieces.map((barred) => ({ barred })) }) as unknown as RulingView;

describe('what is barred', () => {
  it('is named once for each paper, however many stretches of build dates it holds for', () => {
    const found = barredBy([ruling([bar('70-499', 'A')], [bar('70-499', 'A'), bar('70-499', 'B')]), ruling([])]);
    expect(found.map(({ part, rule }) => [part.number, rule])).toEqual([
      ['70-499', 'A'],
      ['70-499', 'B'],
    ]);
  });

  it('is barred for good only where it is so for everything that the unit can be', () => {
    const found = barredBy([ruling([bar('70-499', 'A'), bar('70-501', 'A')], [bar('70-499', 'A')])]);
    expect(found.map(({ part, always }) => [part.number, always])).toEqual([
      ['70-499', true],
      ['70-501', false],
    ]);
  });

  it('is known by its number in any writing, and by nothing less', () => {
    const barred = [{ ...bar('70-499', 'A'), always: true }];
    for (const text of ['70-499', '70 499', ' 70499 ']) expect(barredByText(barred, text, null)).toEqual(barred);
    for (const text of ['', '70-49', '70-4990', '-']) expect(barredByText(barred, text, null)).toEqual([]);
  });

  it('is known by whatever else was read as that part: a pack, or the code of its bag', () => {
    const barred = [{ ...bar('70-499', 'A'), always: true }];
    for (const text of ['70-499-10PK', '4006381333931']) {
      expect(barredByText(barred, text, 'HOLM/70499')).toEqual(barred);
      expect(barredByText(barred, text, 'HOLM/70412')).toEqual([]);
    }
  });
});
