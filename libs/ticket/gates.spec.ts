import {
  missingFor,
  missingForStage,
  SAFETY_POINTS,
  STAGES,
  type PickFacts,
  type PositionFacts,
  type TicketFacts,
} from './index';

const place = (more: Partial<PositionFacts['places'][number]> = {}): PositionFacts['places'][number] => ({
  name: 'left',
  recorded: true,
  leftOut: false,
  condition: 'sound',
  verdict: 'right',
  accepted: false,
  ...more,
});
const position = (places = [place()], rulingSettled = true): PositionFacts => ({
  code: 'PIN',
  name: 'Shear pin',
  places,
  rulingSettled,
});
const picked = (more: Partial<PickFacts> = {}): PickFacts => ({
  position: 'PIN',
  part: '70-412B',
  purpose: 'fit',
  state: 'picked',
  verdict: 'right',
  exception: false,
  ...more,
});
const facts = (more: Partial<TicketFacts> = {}): TicketFacts => ({
  stage: 'intake',
  onHold: false,
  closed: null,
  lineKnown: true,
  serialRecorded: true,
  positions: [position()],
  picks: [],
  flags: [],
  money: { totalMinor: 0, authorisedMinor: null, currency: 'EUR' },
  safetyTicked: SAFETY_POINTS.map(({ id }) => id),
  ...more,
});
const codes = (stage: (typeof STAGES)[number], more: Partial<TicketFacts>) =>
  missingForStage(stage, facts(more)).map(({ code }) => code);

describe('the gates', () => {
  it('are all open for a unit in which nothing is to be done', () => {
    expect(missingFor(facts()).flatMap(({ points }) => points)).toEqual([]);
  });

  it('ask at intake for the line and for the serial or why there is none', () => {
    expect(codes('intake', { lineKnown: false, serialRecorded: false })).toEqual([
      'line-unknown',
      'serial-not-recorded',
    ]);
  });

  it('name every place of a position that was not looked at in one point', () => {
    const open = [place({ recorded: false }), place({ name: 'right', recorded: false }), place({ name: 'middle' })];
    expect(missingForStage('inspection', facts({ positions: [position(open)] }))).toEqual([
      {
        code: 'place-not-looked-at',
        sentence: 'Shear pin: record what is in left, right, or leave it out with a reason.',
        position: 'PIN',
      },
    ]);
  });

  it('ask for the owner’s word at every gate from the repair on, and again once the work goes beyond it', () => {
    const money = (totalMinor: number, authorisedMinor: number | null) => ({
      money: { totalMinor, authorisedMinor, currency: 'EUR' },
    });
    for (const stage of ['parts-selection', 'repair', 'handover'] as const) {
      expect(codes(stage, money(1, null))).toEqual(['not-authorised']);
      expect(codes(stage, money(5_001, 5_000))).toEqual(['not-authorised']);
      expect(codes(stage, money(5_000, 5_000))).toEqual([]);
      expect(codes(stage, money(0, null))).toEqual([]);
    }
    expect(codes('inspection', money(1, null))).toEqual([]);
    expect(missingForStage('repair', facts(money(5_001, 5_000)))[0]!.sentence).toBe(
      "Ask for the owner's word again: the estimate comes to 50.01 EUR, and the owner said yes to 50.00 EUR.",
    );
  });

  it.each([
    ['a sheared part', { condition: 'sheared' as const, verdict: null }, ['no-part-picked']],
    ['a missing part', { condition: 'missing' as const, verdict: null }, ['no-part-picked']],
    ['a wrong part', { verdict: 'wrong' as const }, ['no-part-picked']],
    ['an outdated part', { verdict: 'outdated' as const }, ['no-part-picked']],
    ['a wrong part that a manager has accepted', { verdict: 'wrong' as const, accepted: true }, []],
    ['a worn part that is right', { condition: 'worn' as const }, []],
    ['a part that is not decided', { verdict: 'undecided' as const }, []],
    ['a place left out', { leftOut: true, condition: 'sheared' as const }, []],
  ])('ask in parts selection for a part where there is %s, or do not', (_, found, expected) => {
    expect(codes('parts-selection', { positions: [position([place(found)])] })).toEqual(expected);
  });

  it.each([
    ['right', picked(), true, []],
    ['allowed', picked({ verdict: 'allowed' }), true, []],
    ['wrong', picked({ verdict: 'wrong' }), true, ['part-not-right']],
    [
      'undecided, with the ruling open',
      picked({ verdict: 'undecided' }),
      false,
      ['ruling-not-settled', 'part-not-right'],
    ],
    ['right, with the ruling open', picked(), false, ['ruling-not-settled']],
    ["a manager's exception, with the ruling open", picked({ verdict: 'wrong', exception: true }), false, []],
    ['returned', picked({ state: 'returned' }), true, []],
  ])('judge a picked part that is %s', (_, pick, settled, expected) => {
    expect(codes('parts-selection', { positions: [position([place()], settled)], picks: [pick] })).toEqual(expected);
  });

  it('ask in repair for every safety point and for every picked part to be fitted or returned', () => {
    const picks = [
      picked(),
      picked({ state: 'fitted' }),
      picked({ state: 'returned' }),
      picked({ purpose: 'spare', position: null }),
    ];
    expect(codes('repair', { picks, safetyTicked: ['at-rest'] })).toEqual(['safety-not-ticked', 'part-not-fitted']);
  });

  it.each([
    ['open', ['flag-open']],
    ['lapsed', ['flag-open']],
    ['accepted', []],
    ['settled', []],
  ] as const)('take a flag that is %s at handover for what it is', (state, expected) => {
    expect(codes('handover', { flags: [{ position: 'PIN', placeName: 'Shear pin, left', state }] })).toEqual(expected);
  });

  it('do not look at what other stages ask', () => {
    const all = facts({ lineKnown: false, positions: [position([place({ recorded: false })])], safetyTicked: [] });
    for (const stage of STAGES) {
      const own = new Set(missingForStage(stage, all).map(({ code }) => code));
      for (const other of STAGES) {
        if (other === stage) continue;
        for (const { code } of missingForStage(other, all)) expect(own.has(code)).toBe(false);
      }
    }
  });
});
