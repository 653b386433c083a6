import { fittedPicks } from './index';

const pick = (id: number, quantity: number, part = 'X', position = 'PIN') => ({ id, position, part, quantity });
const left = (count: number, part = 'X', position = 'PIN') => Array.from({ length: count }, () => ({ position, part }));
const fitted = (...args: Parameters<typeof fittedPicks>) => [...fittedPicks(...args)];

describe('a picked part', () => {
  it('is fitted once as many places of its position hold it as were picked', () => {
    expect(fitted([pick(1, 2)], left(1))).toEqual([]);
    expect(fitted([pick(1, 2)], left(2))).toEqual([1]);
  });

  it('is not fitted by the same part in another position, or another part in the same one', () => {
    expect(fitted([pick(1, 1)], [...left(1, 'Y'), ...left(1, 'X', 'BELT')])).toEqual([]);
  });

  it('is served in the order of picking when the same part was picked twice', () => {
    expect(fitted([pick(7, 1), pick(3, 1)], left(1))).toEqual([3]);
    expect(fitted([pick(7, 1), pick(3, 1)], left(2))).toEqual([3, 7]);
  });
});
