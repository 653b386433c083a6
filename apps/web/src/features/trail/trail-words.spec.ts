import {
  ATTEMPT_OUTCOMES,
  callbackView,
  flagView,
  pickView,
  STAGE_NAMES,
  type TrailEntry,
} from '../../../../../libs/contracts';
import { sayAct, sayChange, sayKnown, sayOtherwise } from './trail-words';

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
      { name: 'Stage', value: 'Intake → Repair' },
    ]);
  });

  it('says why a ticket went back, and from where to where', () => {
    const data = { from: 'repair', to: 'parts-selection', reason: 'Bolt of the wrong grade' };
    const said = { ...entry, act: 'insert', noun: 'ticket_event', change: { id: 9, kind: 'moved-back', data } };
    expect(sayAct(said)).toBe('Sent the ticket back from repair to parts selection');
    expect(sayChange(said)).toEqual([{ name: 'Reason', value: 'Bolt of the wrong grade' }]);
    const erased = { ...said, change: { kind: 'owner-erased', data: { reason: 'Asked for it' } } };
    expect(sayAct(erased)).toBe('Erased what was known of the owner');
  });

  it.each([
    ['ticket', { stage: 'parts-selection' }, 'Stage', 'Parts selection'],
    ['flag', { state: 'sent-back' }, 'State', 'sent back to the bench'],
    ['callback', { state: 'open' }, 'State', 'to call'],
    ['callback_reason', { action: 'stop-use' }, 'Action', 'Stop use'],
    ['callback_attempt', { outcome: 'message-left' }, 'Outcome', 'message left'],
    ['callback_mail', { state: 'unclear' }, 'State', 'not known whether it was sent'],
    ['pick', { state: 'returned' }, 'State', 'back on the shelf'],
    ['pick', { price_minor: 1250 }, 'Price', '12.50'],
    ['pick', { came_from: 'bought' }, 'Came from', 'bought for this ticket'],
    ['shelf_movement', { kind: 'take-out' }, 'Kind', 'taken out of stock'],
    ['place_record', { side: 'left' }, 'Looked at', 'as left'],
    ['ticket', { promised_on: '2026-11-20' }, 'Promised on', '20 Nov 2026'],
    ['ticket', { safety_checks: ['at-rest'] }, 'Safety checks', 'All moving parts at rest.'],
    [
      'ticket',
      { labour_lines: [{ kind: 'labour', what: 'Work at the bench', minor: 12800, minutes: 120 }] },
      'Labour lines',
      'kind labour, what Work at the bench, amount 128.00, minutes 120',
    ],
    ['estimate', { tax_basis_points: 1900 }, 'Tax rate', '19 %'],
    ['flag', { reason: { rule: 'R-1', sentence: 'Wrong: 2 fitted.' } }, 'Reason', 'Wrong: 2 fitted.'],
  ])('says what a %s holds in words of the trade: %j', (noun, change, name, value) => {
    expect(sayChange({ ...entry, act: 'insert', noun, change })).toEqual([{ name, value }]);
  });

  it('leaves none of the codes of states, stages and causes as they are', () => {
    const noCode = /[a-z]-[a-z]+$/;
    const states = [...flagView.shape.state.options, ...callbackView.shape.state.options];
    for (const [noun, column, codes] of [
      ['ticket', 'stage', STAGE_NAMES],
      ['flag', 'state', states],
      ['pick', 'state', pickView.shape.state.options],
      ['callback_attempt', 'outcome', ATTEMPT_OUTCOMES],
    ] as const)
      for (const code of codes)
        for (const { value } of sayChange({ ...entry, act: 'insert', noun, change: { [column]: code } }))
          expect(value).not.toMatch(noCode);
    for (const known of ['in-force of SB-12', 'publish of SB-12', 'withdraw of SB-12', 'import', 'standing', 'seed'])
      expect(sayKnown({ ...entry, known })).not.toMatch(/in-force|publish |withdraw |standing|seed/);
    expect(sayKnown({ ...entry, known: 'publish of Set of 4' })).toBe(
      'Known then: rulebook revision 2, made by publishing Set of 4',
    );
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
      { name: 'Day code', value: 'C17' },
      { name: 'Clear', value: 'yes' },
    ]);
    const data = { family: 'NZQVS.2081DA', engine: 'small-spark-ignition' };
    expect(sayChange({ ...said, change: { kind: 'engine-family', data } })).toEqual([
      { name: 'Kind', value: 'Engine family code' },
      { name: 'Engine family code', value: 'NZQVS.2081DA' },
      { name: 'Engine', value: 'Small petrol engine' },
    ]);
    for (const [kind, name] of [
      ['printed-date', 'Date as printed'],
      ['receipt', 'Date on the receipt'],
      ['part-stamp', 'Date on it'],
    ])
      expect(sayChange({ ...said, change: { kind, data: { date: '2020-04' } } })).toContainEqual({
        name,
        value: '2020-04',
      });
  });

  it('says days as days, and what became known otherwise', () => {
    const change = { built: ['{[17226,17257),[20879,20910)}', '{}'] };
    expect(sayChange({ ...entry, noun: 'unit', change })).toEqual([
      {
        name: 'Possible build days',
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
