import { isDeeperThan } from './levels';

function nested(levels: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < levels; i++) value = i % 2 === 0 ? [value] : { a: 0, b: value };
  return value;
}

describe('how deep a body lies', () => {
  it.each([
    [0, 1, false],
    [1, 1, false],
    [2, 1, true],
    [100, 100, false],
    [101, 100, true],
    [100_000, 100, true],
  ])('%i levels against %i', (levels, most, deeper) => {
    expect(isDeeperThan(most, nested(levels))).toBe(deeper);
  });

  it('takes nothing at all, and text, for no level', () => {
    for (const value of [undefined, null, 'text']) expect(isDeeperThan(0, value)).toBe(false);
  });
});
