import { FASTENER_SEVERITIES } from '../fastener';
import { severities, severityOf, type SeverityGrounds } from './severity';

const wrong: SeverityGrounds = { verdict: 'wrong', action: 'nothing', barReasons: [], strength: null };

describe('the severity of a flag', () => {
  it('is the worst of action, bars and strength', () => {
    expect(severityOf({ ...wrong, action: 'next-service', barReasons: ['breaks-later'] })).toBe('serious');
    expect(severityOf({ ...wrong, action: 'stop-use', barReasons: ['breaks-sooner'] })).toBe('urgent');
    expect(severityOf({ ...wrong, barReasons: ['unsafe'] })).toBe('urgent');
  });

  it('a part that lets go later than the required one is worse than one that lets go sooner', () => {
    expect(severityOf({ ...wrong, strength: 'drive-line-at-risk' })).toBe('serious');
    expect(severityOf({ ...wrong, strength: 'nuisance' })).toBe('caution');
  });

  it('a part that may let go later is taken as one that does', () => {
    expect(severityOf({ ...wrong, strength: 'not-told' })).toBe(
      severityOf({ ...wrong, strength: 'drive-line-at-risk' }),
    );
  });

  it('a part that holds beyond what the drive line is rated for asks for action at once', () => {
    expect(severityOf({ ...wrong, strength: 'above-rating' })).toBe('urgent');
  });

  it('never falls as the strength computation says worse, whatever the rule asks for', () => {
    const scale = FASTENER_SEVERITIES.map((strength) => severities.indexOf(severityOf({ ...wrong, strength })));
    expect(scale).toEqual([...scale].sort((a, b) => a - b));
    expect(severityOf({ ...wrong, action: 'call-back', strength: 'nuisance' })).toBe('serious');
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
