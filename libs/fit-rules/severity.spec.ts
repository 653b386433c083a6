import { severityOf, type SeverityGrounds } from './severity';

const wrong: SeverityGrounds = { verdict: 'wrong', action: 'nothing', barReasons: [], strength: null };

describe('the severity of a flag', () => {
  it('is the worst of action, bars and strength', () => {
    expect(severityOf({ ...wrong, action: 'next-service', barReasons: ['breaks-later'] })).toBe('serious');
    expect(severityOf({ ...wrong, action: 'stop-use', barReasons: ['breaks-sooner'] })).toBe('urgent');
    expect(severityOf({ ...wrong, barReasons: ['unsafe'] })).toBe('urgent');
  });

  it('a part that lets go later than the required one is worse than one that lets go sooner', () => {
    expect(severityOf({ ...wrong, strength: { low: 1.6, high: 1.6 } })).toBe('serious');
    expect(severityOf({ ...wrong, strength: { low: 0.5, high: 0.6 } })).toBe('caution');
  });

  it('a part that may let go later is taken as one that does', () => {
    expect(severityOf({ ...wrong, strength: { low: 0.8, high: 1.3 } })).toBe('serious');
  });

  it('outdated with no action is a note, wrong is at least a caution, a dispute is a caution', () => {
    expect(severityOf({ ...wrong, verdict: 'outdated' })).toBe('note');
    expect(severityOf(wrong)).toBe('caution');
    expect(severityOf({ ...wrong, verdict: 'disputed' })).toBe('caution');
  });

  it('a right part is a note, whatever its rule asks for units with another', () => {
    expect(severityOf({ ...wrong, verdict: 'right', action: 'stop-use' })).toBe('note');
  });
});
