import type { TrailEntry } from '../../../../../libs/contracts';
import { sayAct, sayChange, sayOtherwise } from './trail-words';

const entry: TrailEntry = {
  place: '7',
  at: '2026-11-20T10:00:00.000Z',
  by: null,
  act: 'update',
  noun: 'ticket',
  key: '3',
  revision: 2,
  known: 'publish of SB-12',
  ruling: null,
  where: null,
  part: null,
  now: null,
  change: {},
};

describe('an entry of the trail in words', () => {
  it('says before and after of what was changed, and leaves out what only the program reads', () => {
    const change = { complaint: ['', 'Rattles'], version: [1, 2], bench_id: [null, 4], stage: ['intake', 'repair'] };
    expect(sayAct({ ...entry, change })).toBe('Changed the ticket');
    expect(sayChange({ ...entry, change })).toEqual([
      { name: 'Complaint', value: 'nothing → Rattles' },
      { name: 'Stage', value: 'intake → repair' },
    ]);
  });

  it('says what was written down, whatever is inside it', () => {
    const change = {
      id: 3,
      kind: 'label',
      data: { dayCode: 'C17', clear: true },
      candidates: [1],
      set_aside_why: null,
    };
    const said = { ...entry, act: 'insert', noun: 'evidence', change };
    expect(sayAct(said)).toBe('Wrote down evidence of when it was built');
    expect(sayChange(said)).toEqual([
      { name: 'Kind', value: 'label' },
      { name: 'Data', value: 'day code C17, clear yes' },
    ]);
  });

  it('says days as days, and what became known otherwise', () => {
    const change = { built: ['{[17226,17257),[20879,20910)}', '{}'] };
    expect(sayChange({ ...entry, noun: 'unit', change })).toEqual([
      {
        name: 'Built',
        value: '1 Mar 2017 to 31 Mar 2017, or 2 Mar 2027 to 1 Apr 2027 → no day at all',
      },
    ]);
    const ruling = { sentence: '', sameToday: false };
    expect(sayOtherwise({ ...ruling, otherwise: [] })).toBe('');
    expect(sayOtherwise({ ...ruling, otherwise: ['model', 'options', 'build-days'] })).toBe(
      'Known otherwise since then: its model, its options and when it can have been built.',
    );
  });

  it('tells a first verdict from a changed one', () => {
    const judged = { ...entry, act: 'insert', noun: 'verdict_change' };
    expect(sayAct({ ...judged, change: { from_verdict: null, to_verdict: 'right' } })).toBe('Judged');
    expect(sayAct({ ...judged, change: { from_verdict: 'right', to_verdict: 'wrong' } })).toBe('The verdict changed');
  });
});
