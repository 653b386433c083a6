import fc from 'fast-check';
import type { Supersession } from './supersession';
import { SupersessionGraph } from './supersession-graph';

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

describe('what may stand in for what', () => {
  it('one way: the new part may replace the old one, never the other way round', () => {
    const graph = new SupersessionGraph([oneWay('M/A', 'M/B')]);
    expect(graph.standsInFor('M/B', 'M/A', 0)).toBe('one-way');
    expect(graph.standsInFor('M/A', 'M/B', 0)).toBe('no');
  });

  it('both ways: each may replace the other, over any number of steps', () => {
    const graph = new SupersessionGraph([bothWays('M/A', 'M/B'), bothWays('M/C', 'M/B')]);
    expect(graph.standsInFor('M/A', 'M/C', 0)).toBe('both-ways');
    expect(graph.interchangeClass('M/C', 0)).toEqual(['M/A', 'M/B', 'M/C']);
  });

  it('a single one-way step on the way makes the whole way one-way', () => {
    const graph = new SupersessionGraph([bothWays('M/A', 'M/B'), oneWay('M/B', 'M/C'), bothWays('M/C', 'M/D')]);
    expect(graph.standsInFor('M/D', 'M/A', 0)).toBe('one-way');
    expect(graph.standsInFor('M/A', 'M/D', 0)).toBe('no');
  });

  it('answers in both directions, with the way that was gone', () => {
    const graph = new SupersessionGraph([oneWay('M/A', 'M/B'), oneWay('M/B', 'M/C')]);
    expect(graph.whatStandsInFor('M/A', 0)).toEqual([
      { part: 'M/B', bothWays: false, path: ['M/A', 'M/B'] },
      { part: 'M/C', bothWays: false, path: ['M/A', 'M/B', 'M/C'] },
    ]);
    expect(graph.whatItStandsInFor('M/C', 0).map(({ part }) => part)).toEqual(['M/B', 'M/A']);
  });

  it('answers as known at the instant asked for, its first instant included and its last not', () => {
    const graph = new SupersessionGraph([oneWay('M/A', 'M/B', { from: 10, to: 20 })]);
    expect([9, 10, 19, 20].map((instant) => graph.standsInFor('M/B', 'M/A', instant))).toEqual([
      'no',
      'one-way',
      'one-way',
      'no',
    ]);
  });

  it('a dead part is dead only while nothing stands in for it', () => {
    expect(new SupersessionGraph([dead('M/A')]).isDead('M/A', 0)).toBe(true);
    expect(new SupersessionGraph([dead('M/A'), oneWay('M/A', 'M/B')]).isDead('M/A', 0)).toBe(false);
    expect(new SupersessionGraph([dead('M/A')]).isDead('M/B', 0)).toBe(false);
  });

  it('the two directions mirror each other, and a ring does not run for ever', () => {
    const part = fc.constantFrom('M/A', 'M/B', 'M/C', 'M/D', 'M/E');
    const step = fc.tuple(part, part, fc.boolean()).map(([a, b, both]) => (both ? bothWays(a, b) : oneWay(a, b)));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 7 }), part, part, (steps, a, b) => {
        const graph = new SupersessionGraph(steps);
        const forward = graph.whatStandsInFor(a, 0).find((one) => one.part === b);
        const back = graph.whatItStandsInFor(b, 0).find((one) => one.part === a);
        expect(forward?.bothWays).toBe(back?.bothWays);
        const expected = a === b ? 'same' : forward === undefined ? 'no' : forward.bothWays ? 'both-ways' : 'one-way';
        expect(graph.standsInFor(b, a, 0)).toBe(expected);
      }),
    );
  });
});
