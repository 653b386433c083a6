import { day, daySpan } from '../../day';
import { createJudge } from '../judge';
import type { FitRule, Rulebook } from '../fit-rule';
import { bar, bookOf, LATER, paper, rule } from '../testing/made-rules';
import { Draw, stream, world } from '../testing/random-book';
import { auditRulebook } from './audit-rulebook';
import { newFindings } from './compare-audits';
import type { AuditContext, AuditLine, Finding } from './finding';

const list = paper('parts-list');
const bulletin = paper('service-bulletin', '2016-03-01', 'sb-4');
const production = daySpan(day('2014-01-01'), day('2018-01-01'));
const talus: AuditLine = { line: 'talus', positions: ['pin'], models: ['T4', 'T5'], schemes: ['six'], production };
const context: AuditContext = {
  inForceOn: LATER.today,
  knownAt: LATER.now,
  lines: [talus],
  catalogue: null,
  withdrawnSources: new Set(),
};
const KNOWN = { from: -Infinity, to: Infinity };

function audit(rules: readonly FitRule[], more: Partial<AuditContext> = {}, rest: Partial<Rulebook> = {}) {
  return auditRulebook(bookOf([list, bulletin], rules, rest), { ...context, ...more });
}

function built(from: string | null, to: string | null) {
  return { from: from === null ? -Infinity : day(from), to: to === null ? Infinity : day(to) };
}

function sentences(findings: readonly Finding[]): readonly string[] {
  return findings.map(({ sentence }) => sentence);
}

describe('the audit of a rulebook', () => {
  it('finds nothing in a rulebook that says one thing for every unit of the line', () => {
    expect(audit([rule('a', list, { required: 'M/1' })])).toEqual([]);
  });

  it('finds a gap with its exact days, within the production span only', () => {
    const rules = [
      rule('a', list, { required: 'M/1', built: built(null, '2015-01-01') }),
      rule('b', list, { required: 'M/2', built: built('2015-03-01', null) }),
    ];
    const [gap, ...more] = audit(rules);
    expect(more).toEqual([]);
    expect(gap).toMatchObject({ code: 'gap', severity: 'warning', line: 'talus', position: 'pin' });
    expect(gap!.sentence).toBe('talus, pin, built 1 Jan 2015 to 28 Feb 2015: no rule says what belongs here.');
    expect(gap!.example!.built).toEqual([daySpan(day('2015-01-01'), day('2015-01-02'))]);
  });

  it('a position that no rule speaks of is one gap over the whole production', () => {
    const findings = audit([]);
    expect(findings.map(({ where }) => where!.built)).toEqual([[production]]);
  });

  it('finds a dispute, and a required part that is barred', () => {
    const rules = [
      rule('a', list, { required: 'M/1', built: built(null, '2016-01-01') }),
      rule('b', list, { required: 'M/2', built: built('2015-12-01', null) }),
      rule('c', bulletin, { barred: [bar('M/2')], built: built('2017-01-01', null) }),
    ];
    expect(sentences(audit(rules))).toEqual([
      'talus, pin, built 1 Dec 2015 to 31 Dec 2015: rule a and rule b stand equal and say different things about M/1 and M/2.',
      'talus, pin, built 1 Jan 2017 to 31 Dec 2017: M/2 is both required and barred (rule b and rule c).',
      'talus, pin: rule c bars M/2, and its paper names no part to fit instead (pin).',
    ]);
  });

  it('finds rules that decide for no unit, and not those that do somewhere', () => {
    const rules = [
      rule('old', list, { required: 'M/1' }),
      rule('somewhere', list, { required: 'M/1', models: ['T4'], positions: ['pin'] }),
      rule('new', bulletin, { required: 'M/2', models: ['T5'] }),
      rule('newer', bulletin, { required: 'M/3', models: ['T4'] }),
    ];
    expect(audit(rules).map(({ code, rules: about }) => [code, about[0]!.key])).toEqual([
      ['never-decides', 'old'],
      ['never-decides', 'somewhere'],
    ]);
  });

  it('finds required parts that are dead or in no catalogue, but not dead parts that something replaces', () => {
    const rules = [rule('a', list, { required: 'M/1' })];
    const dead = { from: 'M/1', to: null, direction: 'dead' as const, known: KNOWN };
    const onward = { from: 'M/1', to: 'M/2', direction: 'both-ways' as const, known: KNOWN };
    expect(audit(rules, {}, { supersessions: [dead] }).map(({ code }) => code)).toEqual(['dead-part']);
    expect(audit(rules, {}, { supersessions: [dead, onward] }).map(({ code }) => code)).toEqual(['dead-and-replaced']);
    expect(audit(rules, { catalogue: new Set(['M/2']) }).map(({ code }) => code)).toEqual(['unknown-part']);
  });

  it('finds rings and forks of supersessions', () => {
    const step = (from: string, to: string) => ({ from, to, direction: 'one-way' as const, known: KNOWN });
    const supersessions = [step('M/1', 'M/2'), step('M/2', 'M/1'), step('M/5', 'M/6'), step('M/5', 'M/7')];
    expect(sentences(audit([rule('a', list, { required: 'M/9' })], {}, { supersessions }))).toEqual([
      'M/1 and M/2 give way to one another in a ring.',
      'M/5 gives way to M/6 and M/7, and nothing says to which.',
    ]);
  });

  it('finds spans that end before they begin', () => {
    const backwards = { from: 10, to: 5 };
    const rules = [
      rule('a', list, { required: 'M/1' }),
      rule('b', list, { required: 'M/1', built: backwards }),
      rule('c', list, { required: 'M/1', inForce: backwards }),
      rule('d', list, { required: 'M/1', known: backwards }),
      rule('e', list, { required: 'M/1', serials: { scheme: 'six', from: '2', to: '1' } }),
    ];
    const empty = audit(rules).filter(({ code }) => code === 'empty-span');
    expect(sentences(empty)).toEqual([
      'talus, pin: the build-date span of rule b ends before it begins.',
      'talus, pin: the in-force span of rule c ends before it begins.',
      'talus, pin: the known span of rule d ends before it begins.',
      'talus, pin: the serial span of rule e ends before it begins.',
    ]);
  });

  it('finds rules on papers withdrawn or missing, and rules that replace what has never been', () => {
    const rules = [
      rule('a', bulletin, { required: 'M/1' }),
      { ...rule('b', list, { required: 'M/1' }), source: 'lost' },
      rule('c', list, { required: 'M/1', replaces: ['a', 'never'] }),
    ];
    const codes = audit(rules, { withdrawnSources: new Set(['sb-4']) }).map(({ code, rules: about }) => [
      code,
      about[0]!.key,
    ]);
    expect(codes).toContainEqual(['withdrawn-source', 'a']);
    expect(codes).toContainEqual(['missing-source', 'b']);
    expect(codes).toContainEqual(['replaces-nothing', 'c']);
    expect(codes.filter(([code]) => code === 'replaces-nothing')).toHaveLength(1);
  });

  it('a paper that bars in one rule and names the part to fit in another is complete', () => {
    const rules = [rule('a', bulletin, { barred: [bar('M/2')] }), rule('b', bulletin, { required: 'M/1' })];
    expect(audit(rules)).toEqual([]);
  });

  it('finds a boundary that no evidence can tell, only where the answer changes', () => {
    const rules = [
      rule('a', list, { required: 'M/1', built: built(null, '2015-01-01') }),
      rule('b', list, { required: 'M/2', built: built('2015-01-01', '2016-06-10') }),
      rule('c', list, { required: 'M/3', built: built('2016-06-10', null) }),
      rule('d', bulletin, { required: 'M/3', built: built('2017-05-05', null) }),
    ];
    const monthsOnly = (_: string, boundary: number) => boundary === day('2015-01-01');
    const found = audit(rules, { canTellApart: monthsOnly });
    expect(found.map(({ code, where }) => [code, where!.built[0]!.from])).toEqual([
      ['untellable-boundary', day('2016-06-10')],
    ]);
    expect(found[0]!.sentence).toBe(
      'talus, pin: the answer changes for units built from 10 Jun 2016 on, and no evidence can tell that day from the day before.',
    );
  });

  it('names model, serial or option where only some units are touched, and none where all are', () => {
    const gapForT5 = audit([rule('a', list, { required: 'M/1', models: ['T4'] })]);
    expect(gapForT5.map(({ where }) => where!.model)).toEqual(['another-model']);
    expect(gapForT5[0]!.example!.model).toBe('T5');
    const bySerial = [rule('a', list, { required: 'M/1', serials: { scheme: 'six', from: '5', to: null } })];
    expect(audit(bySerial).map(({ where }) => where!.serial)).toEqual([{ scheme: 'six', from: null, to: '5' }]);
  });

  it('does not count models and schemes that the line does not have', () => {
    const both = ['T4', 'T5'].map((model) => rule(model, list, { required: 'M/1', models: [model] }));
    const bySerial = rule('s', bulletin, { required: 'M/2', serials: { scheme: 'another', from: '1', to: '2' } });
    expect(audit([...both, bySerial]).map(({ code }) => code)).toEqual(['never-decides']);
  });

  it('tells what a change would bring in', () => {
    const before = audit([rule('a', list, { required: 'M/1' })]);
    const after = audit([rule('a', list, { required: 'M/1' }), rule('b', bulletin, { barred: [bar('M/1')] })]);
    expect(newFindings(before, after).map(({ code }) => code)).toEqual(['required-and-barred', 'bar-names-no-other']);
    expect(newFindings(after, after)).toEqual([]);
  });

  it('is complete: on every unit and day a ruling is undecided or disputed exactly where the audit says so', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const draw = new Draw(stream(seed * 97));
      const book = draw.rulebook();
      const { models, schemes } = world;
      const line = { line: 'l1', positions: ['p1'], models, schemes, production: daySpan(0, 25) };
      const at = { inForceOn: draw.below(24), knownAt: draw.below(6) };
      const findings = auditRulebook(book, { ...context, ...at, lines: [line] });
      const judge = createJudge(book, { today: at.inForceOn, now: at.knownAt });
      const speaking = book.rules.filter(
        ({ positions, inForce, known }) =>
          positions.includes('p1') &&
          inForce.from <= at.inForceOn &&
          at.inForceOn < inForce.to &&
          known.from <= at.knownAt &&
          at.knownAt < known.to,
      );
      for (let on = 0; on < 25; on++) {
        const options = Object.fromEntries(world.options.map((option) => [option, draw.chance(0.5)]));
        const serial = { scheme: draw.pick(schemes), key: draw.pick(world.keys) };
        const unit = { line: 'l1', model: draw.pick(models), options, serial, built: [daySpan(on, on + 1)] };
        const ofModel = speaking.filter((one) => one.models.length === 0 || one.models.includes(unit.model));
        const named = {
          models: new Set(speaking.flatMap((one) => one.models)),
          schemes: new Set(ofModel.flatMap((one) => (one.serials === null ? [] : [one.serials.scheme]))),
        };
        const { kind } = judge.ruling(unit, 'p1').pieces[0]!.outcome;
        const touching = findings.filter(
          ({ where }) => where !== null && speaksOf(where, unit, named) && holds(where, on),
        );
        const codes = new Set(touching.map(({ code }) => code));
        expect([seed, on, codes.has('gap')]).toEqual([seed, on, kind === 'nothing-said']);
        expect([seed, on, codes.has('disputed') || codes.has('required-and-barred')]).toEqual([
          seed,
          on,
          kind === 'disputed',
        ]);
      }
    }
  });
});

interface Names {
  readonly models: ReadonlySet<string>;
  readonly schemes: ReadonlySet<string>;
}

type Where = NonNullable<Finding['where']>;

function holds({ built: spans }: Where, on: number): boolean {
  return spans.some(({ from, to }) => from <= on && on < to);
}

/** True when a place in the findings speaks of the unit; "another" is one that no rule in force names. */
function speaksOf(
  { model, serial, options }: Where,
  unit: { model: string; options: Record<string, boolean>; serial: { scheme: string; key: string } },
  named: Names,
): boolean {
  const byModel =
    model === null || (model === 'another-model' ? !named.models.has(unit.model) : model.only === unit.model);
  const bySerial =
    serial === null ||
    (serial === 'another-scheme'
      ? !named.schemes.has(unit.serial.scheme)
      : serial.scheme === unit.serial.scheme &&
        (serial.from === null || serial.from <= unit.serial.key) &&
        (serial.to === null || unit.serial.key < serial.to));
  return byModel && bySerial && options.every(({ option, fitted }) => unit.options[option] === fitted);
}
