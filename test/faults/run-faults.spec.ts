import { Tally } from './fault';
import { FAULTS, lineSoFar } from './run-faults';

const named = (id: string) => FAULTS.find((fault) => fault.id === id)!;

describe('how far a fault is', () => {
  it('is told with what it has found already', () => {
    const tally = new Tally();
    tally.whole = 200;
    tally.struck(true);
    tally.struck(false);
    expect(lineSoFar(named('F1'), tally, 61.4)).toBe(
      'F1  worker killed in mid-work | 2 of 200 so far | in mid-work 1 | 61 s',
    );
    tally.check(false, 'a bell was never rung');
    tally.soFar = () => '7 kills';
    expect(lineSoFar(named('F1'), tally, 120)).toBe(
      'F1  worker killed in mid-work | 2 of 200 so far | in mid-work 1 | 1 did not hold: a bell was never rung | 7 kills | 120 s',
    );
  });

  it('names no end where nobody knows it', () => {
    const tally = new Tally();
    tally.struck(true);
    expect(lineSoFar(named('F2'), tally, 60)).toContain(' | 1 so far | ');
  });
});
