import type { Supersession } from './supersession';
import { supersessionFindings } from './supersession-findings';

const ALWAYS = { from: -Infinity, to: Infinity };

function oneWay(from: string, to: string, known = ALWAYS): Supersession {
  return { from, to, direction: 'one-way', known };
}

function bothWays(from: string, to: string, known = ALWAYS): Supersession {
  return { from, to, direction: 'both-ways', known };
}

function dead(from: string): Supersession {
  return { from, to: null, direction: 'dead', known: ALWAYS };
}

describe('what a person has to mend in the supersessions', () => {
  it('names every part of a ring once, and a part that gives way to itself', () => {
    const steps = [oneWay('M/A', 'M/B'), oneWay('M/B', 'M/C'), oneWay('M/C', 'M/A'), oneWay('M/D', 'M/D')];
    expect(supersessionFindings(steps, 0)).toEqual([
      { code: 'cycle', parts: ['M/A', 'M/B', 'M/C'] },
      { code: 'cycle', parts: ['M/D'] },
    ]);
  });

  it('finds a ring that closes over parts that go both ways', () => {
    const steps = [oneWay('M/A', 'M/B'), bothWays('M/B', 'M/C'), oneWay('M/C', 'M/A')];
    expect(supersessionFindings(steps, 0)).toEqual([{ code: 'cycle', parts: ['M/A', 'M/B', 'M/C'] }]);
  });

  it('parts that go both ways are no ring', () => {
    expect(supersessionFindings([bothWays('M/A', 'M/B'), bothWays('M/B', 'M/C')], 0)).toEqual([]);
  });

  it('names a fork with all it leads to, but not a part with two substitutes', () => {
    const steps = [oneWay('M/A', 'M/C'), oneWay('M/A', 'M/B'), bothWays('M/D', 'M/E'), bothWays('M/D', 'M/F')];
    expect(supersessionFindings(steps, 0)).toEqual([{ code: 'fork', from: 'M/A', to: ['M/B', 'M/C'] }]);
  });

  it('names a part that is said to be dead and to give way', () => {
    expect(supersessionFindings([dead('M/A'), oneWay('M/A', 'M/B')], 0)).toEqual([
      { code: 'dead-and-replaced', part: 'M/A', to: ['M/B'] },
    ]);
  });

  it('looks only at what is known at the instant', () => {
    const steps = [oneWay('M/A', 'M/B'), oneWay('M/B', 'M/A', { from: 5, to: Infinity })];
    expect(supersessionFindings(steps, 4)).toEqual([]);
    expect(supersessionFindings(steps, 5)).toHaveLength(1);
  });
});
