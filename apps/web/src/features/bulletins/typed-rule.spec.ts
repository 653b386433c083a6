import { describe, expect, it } from '@jest/globals';
import { EMPTY_RULE, endAfter, lastDayOf, ruleNeeds, typedFromWire, wireFromTyped } from './typed-rule';

const rule = { ...EMPTY_RULE, key: 'r-1', line: 'L', positions: ['OUTER'], required: 'P-2', builtLast: '2016-02-28' };

describe('a fit rule in the form', () => {
  it('shows a closed-open end as its last day, also over a leap day and a year', () => {
    expect(lastDayOf('2016-03-01')).toBe('2016-02-29');
    expect(endAfter('2016-12-31')).toBe('2017-01-01');
    expect([lastDayOf(null), endAfter('')]).toEqual(['', null]);
  });

  it('comes back from the wire as it was typed, with what the form has no field for', () => {
    const serials = { scheme: 'S', from: 'A', to: 'B' };
    const barred = [true, false].map((voidsWarranty, at) => ({
      ...{ part: `P-${at}`, reason: 'other' as const, note: 'cast' },
      voidsWarranty,
    }));
    const wire = wireFromTyped({ ...rule, barred, rest: { serials } }, '2026-01-01', (part) => `M/${part}`);
    expect(wire['barred']).toEqual([
      { part: 'M/P-0', reason: 'other', note: 'cast', voidsWarranty: true },
      { part: 'M/P-1', reason: 'other', note: 'cast' },
    ]);
    expect(wire).toMatchObject({ built: { from: null, to: '2016-02-29' }, required: 'M/P-2', serials });
    const back = typedFromWire(wire);
    expect(back).toMatchObject({
      ...rule,
      required: 'M/P-2',
      barred: barred.map((bar) => ({ ...bar, part: `M/${bar.part}` })),
      rest: { serials, inForce: { from: '2026-01-01', to: null } },
    });
  });

  it('says the first thing it still needs', () => {
    expect(ruleNeeds(rule)).toBeNull();
    expect(ruleNeeds({ ...rule, line: '' })).toBe('Pick the product line.');
    expect(ruleNeeds({ ...rule, positions: [] })).toBe('Tick at least one position.');
    expect(ruleNeeds({ ...rule, required: ' ' })).toBe('Name a part that is required, allowed or barred.');
    expect(ruleNeeds({ ...rule, builtFirst: '2017-01-01' })).toBe('The last build day lies before the first.');
  });
});
