import { assert, integer, property } from 'fast-check';
import { day, formatDay } from '../../day';
import { bucketsOf } from './buckets';

const said = (from: string, to: string): string[] =>
  bucketsOf(day(from), day(to)).map((one) => `${formatDay(one.from)} ${formatDay(one.to)}`);

describe('the parts of a span', () => {
  it('are weeks from Monday where it is short', () => {
    // 25 November 2026 is a Wednesday: date +%A
    expect(said('2026-11-25', '2026-12-09')).toEqual([
      '2026-11-25 2026-11-30',
      '2026-11-30 2026-12-07',
      '2026-12-07 2026-12-09',
    ]);
  });

  it('are calendar months where it is long', () => {
    expect(said('2025-12-15', '2026-04-01')).toEqual([
      '2025-12-15 2026-01-01',
      '2026-01-01 2026-02-01',
      '2026-02-01 2026-03-01',
      '2026-03-01 2026-04-01',
    ]);
  });

  it('hold every day once, whatever the span', () => {
    assert(
      property(integer({ min: -30_000, max: 30_000 }), integer({ min: 1, max: 4_000 }), (from, length) => {
        const parts = bucketsOf(from, from + length);
        expect(parts[0]!.from).toBe(from);
        expect(parts.at(-1)!.to).toBe(from + length);
        parts.forEach((part, at) => {
          expect(part.to).toBeGreaterThan(part.from);
          expect(part.to).toBe(parts[at + 1]?.from ?? from + length);
        });
      }),
    );
  });
});
