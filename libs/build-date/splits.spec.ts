import { daySet } from '../day';
import type { ReadPiece } from './answer';
import { splitsOf } from './splits';

const piece = (id: string, spans: [number, number][]): ReadPiece => ({
  id,
  kind: 'serial-scheme',
  days: daySet(spans.map(([from, to]) => ({ from, to }))),
  sentence: `What ${id} says.`,
  setAside: null,
  problem: null,
});

describe('a gap in the answer', () => {
  const left = piece('left', [
    [0, 10],
    [20, 30],
  ]);
  const right = piece('right', [
    [0, 5],
    [15, 30],
  ]);
  const neither = piece('neither', [[-50, 90]]);

  it('is put down to every piece that rules out a part of it when none rules out the whole', () => {
    const days = daySet([
      { from: 0, to: 5 },
      { from: 20, to: 30 },
    ]);
    expect(splitsOf(days, [left, right, neither])).toEqual([
      {
        gap: { from: 5, to: 20 },
        by: ['left', 'right'],
        sentence: 'Not 6 Jan 1970 to 20 Jan 1970, because: What left says. What right says.',
      },
    ]);
  });

  it('is put down to the piece that rules out the whole of it, and to no other', () => {
    const days = daySet([
      { from: 0, to: 10 },
      { from: 20, to: 30 },
    ]);
    const part = piece('part', [
      [0, 12],
      [18, 30],
    ]);
    expect(splitsOf(days, [part, left, neither]).map(({ by }) => by)).toEqual([['left']]);
  });
});
