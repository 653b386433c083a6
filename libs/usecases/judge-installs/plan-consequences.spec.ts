import { day } from '../../day';
import type { Action, Verdict } from '../../fit-rules';
import type { HeldInstall, StandingConsequences, StandingFlag, StandingReason } from '../ports/install-store';
import type { JudgedInstall } from './judge-install';
import type { JudgementRecord } from './judgement-record';
import { planConsequences } from './plan-consequences';
import { REVIEW_SOURCE } from './plan-callbacks';

const TODAY = day('2026-11-20');
const WINDOW = day('2023-11-20');
const NOTHING: StandingConsequences = { flags: [], reasons: [], notes: [] };
const recheck = { today: TODAY, lookBackFrom: WINDOW, wholeUnits: false, because: 'Bulletin SB-1 was published.' };
const wholeUnit = { ...recheck, wholeUnits: true };

function held(more: Partial<HeldInstall> & { openTicketId?: number | null } = {}): HeldInstall {
  const { openTicketId = null, ...install } = more;
  return {
    unit: {
      id: 7,
      ownerId: 3,
      openTicketId,
      facts: { line: 'TL-40', model: '40A', options: {}, serial: null, built: [] },
    },
    positionId: 1,
    position: 'pin',
    place: 1,
    ticketId: 20,
    partId: 5,
    parts: ['HOLM/A'],
    fittedOn: null,
    verdict: 'right',
    judgement: null,
    judgedAs: null,
    judgedRevision: 1,
    loose: null,
    closedOn: day('2025-06-01'),
    ...install,
  };
}

function record(action: Action, source = 'SB-1'): JudgementRecord {
  return {
    action,
    rules: [{ key: `FR-${source}`, version: 1, source, action }],
    source,
    required: 'HOLM/B',
    barredWhy: null,
    then: 'right',
    couldHaveKnown: false,
    technician: 'Fit B.',
    owner: 'Another pin is right now.',
    severity: 'serious',
    strength: null,
  };
}

const judged = (install: HeldInstall, verdict: Verdict, action: Action = 'nothing'): JudgedInstall => ({
  install,
  verdict,
  strength: null,
  record: verdict === install.verdict && (verdict === 'right' || verdict === 'allowed') ? null : record(action),
});

const reason = (more: Partial<StandingReason> = {}): StandingReason => ({
  ...{ id: 90, callbackId: 40, live: true, withdrawn: false, unitId: 7, positionId: 1, place: 1, partId: 5 },
  source: 'SB-1',
  ...more,
});
const flag = (more: Partial<StandingFlag> = {}): StandingFlag => ({
  ...{ id: 80, ticketId: 30, unitId: 7, positionId: 1, place: 1, partId: 5, verdict: 'outdated', severity: 4 },
  acceptedUntil: null,
  ...{ state: 'open', rule: 'FR-SB-1', kind: 'verdict' },
  ...more,
});

describe('what follows when a part turns outdated', () => {
  it.each([
    // action, days since the ticket closed are inside the window; common practice, no source
    ['nothing', 0, 0],
    ['next-service', 0, 1],
    ['call-back', 1, 0],
    ['stop-use', 1, 0],
  ] as const)('for a unit that is out, %s makes %i calls and %i notes', (action, calls, notes) => {
    const plan = planConsequences([judged(held(), 'outdated', action)], NOTHING, recheck);
    expect(plan.reasons).toHaveLength(calls);
    expect(plan.notes).toHaveLength(notes);
    expect(plan.flags).toEqual([]);
    expect(plan.verdicts).toMatchObject([{ from: 'right', to: 'outdated' }]);
  });

  it.each(['nothing', 'next-service', 'call-back', 'stop-use'] as const)(
    'a unit in the shop is flagged on its open ticket and nobody is called, with %s',
    (action) => {
      const plan = planConsequences([judged(held({ openTicketId: 30 }), 'outdated', action)], NOTHING, recheck);
      expect(plan.flags).toMatchObject([{ ticketId: 30, verdict: 'outdated', severity: 4 }]);
      expect([...plan.reasons, ...plan.notes]).toEqual([]);
    },
  );

  it('leaves no note beside a call: the strongest action goes for the whole place', () => {
    const one = judged(held(), 'outdated', 'call-back');
    const rules = [...one.record!.rules, { key: 'FR-2', version: 1, source: 'SB-2', action: 'next-service' as const }];
    const plan = planConsequences([{ ...one, record: { ...one.record!, rules } }], NOTHING, recheck);
    expect([plan.reasons.length, plan.notes.length]).toEqual([1, 0]);
  });

  it('calls on the first day of the look-back window, not on the day before it, save for a stop use', () => {
    const calls = (closedOn: number, action: Action) =>
      planConsequences([judged(held({ closedOn }), 'outdated', action)], NOTHING, recheck).reasons.length;
    expect(calls(WINDOW, 'call-back')).toBe(1);
    expect(calls(WINDOW - 1, 'call-back')).toBe(0);
    expect(calls(WINDOW - 1, 'stop-use')).toBe(1);
  });

  it('gives each place of a mixture its own answer', () => {
    const right = judged(held({ place: 2, partId: 6 }), 'right');
    const plan = planConsequences([judged(held(), 'outdated', 'call-back'), right], NOTHING, recheck);
    expect(plan.reasons.map(({ place }) => place)).toEqual([1]);
    expect(plan.verdicts.map(({ place }) => place)).toEqual([1]);
  });

  it('calls nobody for a part that is undecided or disputed', () => {
    for (const verdict of ['undecided', 'disputed'] as const) {
      expect(planConsequences([judged(held(), verdict, 'nothing')], NOTHING, recheck).reasons).toEqual([]);
    }
  });
});

describe('what stands already', () => {
  it('is not planned again, whether the call is open or was settled', () => {
    const again = judged(held({ verdict: 'outdated', judgement: record('call-back') }), 'outdated', 'call-back');
    for (const live of [true, false]) {
      const plan = planConsequences([again], { ...NOTHING, reasons: [reason({ live })] }, recheck);
      expect(plan).toEqual({
        ...{ judged: 1, verdicts: [], confirmed: [], flags: [], flagsCleared: [] },
        ...{ reasons: [], reasonsWithdrawn: [], notes: [], notesClosed: [] },
      });
    }
  });

  it('is called about anew for another part, another bulletin, or once it was withdrawn', () => {
    const one = judged(held(), 'outdated', 'call-back');
    for (const other of [{ partId: 9, live: false }, { source: 'SB-0' }, { withdrawn: true }]) {
      const plan = planConsequences([one], { ...NOTHING, reasons: [reason(other)] }, recheck);
      expect(plan.reasons).toHaveLength(1);
    }
  });

  it('keeps a flag about the same matter and puts a new one in the place of another', () => {
    const one = judged(held({ openTicketId: 30 }), 'outdated', 'call-back');
    const plan = (standing: StandingFlag) => planConsequences([one], { ...NOTHING, flags: [standing] }, recheck);
    expect(plan(flag())).toMatchObject({ flags: [], flagsCleared: [] });
    expect(plan(flag({ severity: 3 }))).toMatchObject({ flags: [{ severity: 4 }], flagsCleared: [{ id: 80 }] });
    expect(plan(flag({ state: 'sent-back' }))).toMatchObject({ flags: [], flagsCleared: [] });
    expect(plan(flag({ rule: 'FR-SB-0' }))).toMatchObject({ flags: [{ ticketId: 30 }], flagsCleared: [{ id: 80 }] });
    expect(plan(flag({ kind: 'mismatch' }))).toMatchObject({ flags: [{ ticketId: 30 }], flagsCleared: [] });
  });

  it('respects what a manager accepted, until the day named is past', () => {
    const inShop = judged(held({ openTicketId: 30 }), 'outdated', 'call-back');
    const out = judged(held(), 'outdated', 'call-back');
    const plan = (one: JudgedInstall, acceptedUntil: number | null) =>
      planConsequences([one], { ...NOTHING, flags: [flag({ state: 'accepted', acceptedUntil })] }, recheck);
    expect(plan(inShop, null).flags).toEqual([]);
    expect(plan(inShop, TODAY).flags).toEqual([]);
    expect(plan(inShop, TODAY - 1).flags).toHaveLength(1);
    expect(plan(out, null).reasons).toEqual([]);
    expect(plan(out, TODAY - 1).reasons).toHaveLength(1);
  });
});

describe('what has lost its ground', () => {
  it('is closed, saying why', () => {
    const fine = judged(held({ verdict: 'outdated' }), 'right');
    const standing = { ...NOTHING, reasons: [reason()] };
    expect(planConsequences([fine], standing, recheck).reasonsWithdrawn).toEqual([
      { id: 90, callbackId: 40, why: 'Bulletin SB-1 was published.', mended: false },
    ]);
    const inShop = judged(held({ verdict: 'outdated', openTicketId: 30 }), 'right');
    expect(planConsequences([inShop], { ...NOTHING, flags: [flag()] }, recheck).flagsCleared).toHaveLength(1);
  });

  it('is settled when the part was replaced or taken out', () => {
    const replaced = judged(held({ partId: 6, verdict: null }), 'right');
    const standing = { ...NOTHING, reasons: [reason()], flags: [flag({ id: 81, positionId: 2 })] };
    expect(planConsequences([replaced], standing, wholeUnit)).toMatchObject({
      reasonsWithdrawn: [{ id: 90, callbackId: 40, why: 'The part was replaced.', mended: true }],
      flagsCleared: [{ id: 81, why: 'The part was taken out.' }],
    });
    expect(planConsequences([], { ...NOTHING, reasons: [reason()] }, wholeUnit).reasonsWithdrawn).toMatchObject([
      { id: 90, callbackId: 40, mended: true },
    ]);
  });

  it('stays while the unit is at the bench, until it is handed over', () => {
    const atBench = judged(held({ openTicketId: 30, partId: 6, verdict: null }), 'right');
    const standing = { ...NOTHING, reasons: [reason()] };
    expect(planConsequences([atBench], standing, wholeUnit).reasonsWithdrawn).toEqual([]);
  });

  it("keeps a manager's own order as long as the part is doubtful", () => {
    const standing = { ...NOTHING, reasons: [reason({ source: REVIEW_SOURCE })] };
    const plan = (verdict: Verdict) =>
      planConsequences([judged(held({ verdict: 'undecided' }), verdict)], standing, recheck).reasonsWithdrawn;
    expect(plan('undecided')).toEqual([]);
    expect(plan('right')).toHaveLength(1);
  });
});
