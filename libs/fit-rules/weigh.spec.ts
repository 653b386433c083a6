import { createJudge } from './judge';
import type { FitRule, Rulebook } from './fit-rule';
import { bar, bookOf, LATER, paper, rule, unit } from './testing/made-rules';

const manual = paper('owners-manual');
const list = paper('parts-list');
const revised = paper('revised-parts-list');
const bulletin = paper('service-bulletin', '2012-01-01', 'sb-1');
const laterBulletin = paper('service-bulletin', '2014-01-01', 'sb-2');
const finding = paper('shop-finding');
const papers = [manual, list, revised, bulletin, laterBulletin, finding];

function pieceOf(rules: readonly FitRule[], more: Partial<Rulebook> = {}) {
  const { pieces } = createJudge(bookOf(papers, rules, more), LATER).ruling(unit('2015-05-05'), 'pin');
  expect(pieces).toHaveLength(1);
  return { outcome: pieces[0]!.outcome, ...pieces[0]!.grounds[0]! };
}

function verdictOn(part: string, rules: readonly FitRule[], more: Partial<Rulebook> = {}) {
  const question = { unit: unit('2015-05-05'), position: 'pin', parts: [part], fittedOn: null };
  return createJudge(bookOf(papers, rules, more), LATER).judge(question).verdict;
}

describe('which rule decides', () => {
  it('the highest standing, and every other rule is listed with the reason it lost', () => {
    const { deciding, overridden } = pieceOf([
      rule('a', manual, { required: 'M/1' }),
      rule('b', revised, { required: 'M/2' }),
      rule('c', list, { required: 'M/3' }),
    ]);
    expect(deciding).toEqual([{ key: 'b', version: 1 }]);
    expect(overridden).toEqual([
      { rule: { key: 'a', version: 1 }, because: { code: 'lower-standing', than: { key: 'b', version: 1 } } },
      { rule: { key: 'c', version: 1 }, because: { code: 'lower-standing', than: { key: 'b', version: 1 } } },
    ]);
  });

  it('then the latest issue day', () => {
    const { deciding, overridden } = pieceOf([
      rule('a', laterBulletin, { required: 'M/1' }),
      rule('b', bulletin, { required: 'M/2' }),
    ]);
    expect(deciding).toEqual([{ key: 'a', version: 1 }]);
    expect(overridden[0]!.because).toEqual({ code: 'issued-earlier', than: { key: 'a', version: 1 } });
  });

  it('a rule that only bars never decides, however high it stands', () => {
    const { outcome, overridden } = pieceOf([
      rule('a', bulletin, { barred: [bar('M/2')] }),
      rule('b', manual, { required: 'M/1' }),
    ]);
    expect(outcome).toMatchObject({ kind: 'decided', saying: { required: 'M/1' }, barred: [{ part: 'M/2' }] });
    expect(overridden).toEqual([{ rule: { key: 'a', version: 1 }, because: { code: 'only-bars' } }]);
  });

  it('rules that tie and say the same decide together', () => {
    const { outcome, deciding } = pieceOf([
      rule('a', list, { required: 'M/1', allowed: ['M/3', 'M/2'] }),
      rule('b', list, { required: 'M/1', allowed: ['M/2', 'M/3', 'M/3'] }),
    ]);
    expect(outcome.kind).toBe('decided');
    expect(deciding.map(({ key }) => key)).toEqual(['a', 'b']);
  });

  it('rules that tie and say different things make a dispute about what they differ in, and only about that', () => {
    const rules = [
      rule('a', list, { required: 'M/1', allowed: ['M/3'] }),
      rule('b', list, { required: 'M/2', allowed: ['M/3'] }),
    ];
    expect(pieceOf(rules).outcome).toMatchObject({ kind: 'disputed', why: 'rules-tie' });
    expect(['M/1', 'M/2', 'M/3', 'M/4'].map((part) => verdictOn(part, rules))).toEqual([
      'disputed',
      'disputed',
      'allowed',
      'wrong',
    ]);
  });

  it('where nothing decides nothing is said, save of the parts barred', () => {
    const rules = [rule('a', bulletin, { barred: [bar('M/2')] })];
    expect(pieceOf(rules).outcome.kind).toBe('nothing-said');
    expect(verdictOn('M/1', rules)).toBe('undecided');
    expect(verdictOn('M/2', rules)).toBe('wrong');
  });
});

describe('a rule that is replaced', () => {
  it('is dropped with its bars, whatever the standing of the one that replaces it', () => {
    const { deciding, overridden, outcome } = pieceOf([
      rule('a', bulletin, { required: 'M/1', barred: [bar('M/2')] }),
      rule('b', list, { required: 'M/2', replaces: ['a'] }),
    ]);
    expect(deciding).toEqual([{ key: 'b', version: 1 }]);
    expect(overridden[0]!.because).toEqual({ code: 'replaced', by: { key: 'b', version: 1 } });
    expect(outcome.barred).toEqual([]);
  });

  it('is dropped there and only there: where the other does not cover, it speaks on', () => {
    const judge = createJudge(
      bookOf(papers, [
        rule('a', bulletin, { required: 'M/1' }),
        rule('b', list, { required: 'M/2', replaces: ['a'], built: unit('2015-01-01', '2015-06-30').built[0]! }),
      ]),
      LATER,
    );
    const required = judge
      .ruling(unit('2014-01-01', '2015-12-31'), 'pin')
      .pieces.map(({ outcome }) => (outcome.kind === 'decided' ? outcome.saying.required : null));
    expect(required).toEqual(['M/1', 'M/2', 'M/1']);
  });

  it('a rule that names itself is not dropped', () => {
    expect(verdictOn('M/1', [rule('a', list, { required: 'M/1', replaces: ['a'] })])).toBe('right');
  });
});

describe('a bar', () => {
  it('of a rule that lost still holds', () => {
    const rules = [
      rule('a', list, { required: 'M/9', barred: [bar('M/2')] }),
      rule('b', list, { required: 'M/9', allowed: ['M/2'] }),
    ];
    expect(verdictOn('M/2', rules)).toBe('wrong');
  });

  it('is lifted by a rule of higher standing that requires or allows the part, and says by which', () => {
    const { lifted, outcome } = pieceOf([
      rule('a', list, { barred: [bar('M/2')] }),
      rule('b', bulletin, { required: 'M/1', allowed: ['M/2'] }),
    ]);
    expect(lifted).toMatchObject([{ part: 'M/2', rule: { key: 'a' }, by: { key: 'b' } }]);
    expect(outcome.barred).toEqual([]);
  });

  it('is not lifted by a rule of equal standing, be it later: when in doubt, a part stays barred', () => {
    const rules = [rule('a', bulletin, { barred: [bar('M/1')] }), rule('b', laterBulletin, { required: 'M/1' })];
    expect(pieceOf(rules).outcome).toMatchObject({ kind: 'disputed', why: 'required-and-barred' });
    expect(verdictOn('M/1', rules)).toBe('disputed');
  });

  it('that holds on an allowed part makes it wrong', () => {
    const rules = [
      rule('a', list, { required: 'M/1', allowed: ['M/2'] }),
      rule('b', bulletin, { barred: [bar('M/2')] }),
    ];
    expect(verdictOn('M/2', rules)).toBe('wrong');
    expect(verdictOn('M/1', rules)).toBe('right');
  });

  it('speaks of the number it names: a substitute of a barred part is judged by its own number', () => {
    const known = { from: -Infinity, to: Infinity };
    const supersessions = [{ from: 'M/1', to: 'M/2', direction: 'both-ways' as const, known }];
    const rules = [rule('a', list, { required: 'M/2' }), rule('b', bulletin, { barred: [bar('M/1')] })];
    expect(verdictOn('M/2', rules, { supersessions })).toBe('right');
    expect(verdictOn('M/1', rules, { supersessions })).toBe('wrong');
  });

  it('on the required part throws doubt on its substitutes as well', () => {
    const known = { from: -Infinity, to: Infinity };
    const supersessions = [{ from: 'M/1', to: 'M/2', direction: 'both-ways' as const, known }];
    const rules = [rule('a', list, { required: 'M/1' }), rule('b', bulletin, { barred: [bar('M/1')] })];
    expect(verdictOn('M/2', rules, { supersessions })).toBe('disputed');
  });
});

describe('a part that is not named itself', () => {
  const known = { from: -Infinity, to: Infinity };
  const rules = [rule('a', list, { required: 'M/1', allowed: ['M/5'] })];

  it('counts as the required one when each may replace the other', () => {
    const supersessions = [{ from: 'M/2', to: 'M/1', direction: 'both-ways' as const, known }];
    expect(verdictOn('M/2', rules, { supersessions })).toBe('right');
  });

  it('is allowed when it may replace the required one but not be replaced by it, and wrong the other way round', () => {
    const supersessions = [
      { from: 'M/1', to: 'M/2', direction: 'one-way' as const, known },
      { from: 'M/0', to: 'M/1', direction: 'one-way' as const, known },
      { from: 'M/5', to: 'M/6', direction: 'one-way' as const, known },
    ];
    expect(['M/2', 'M/0', 'M/6'].map((part) => verdictOn(part, rules, { supersessions }))).toEqual([
      'allowed',
      'wrong',
      'allowed',
    ]);
  });
});

describe('what is not known of the unit', () => {
  it('a build date that cannot be, because the evidence contradicts itself, leaves everything undecided', () => {
    const judge = createJudge(bookOf(papers, [rule('a', list, { required: 'M/1' })]), LATER);
    const impossible = unit('2015-05-05', '2015-05-05', { built: [] });
    expect(judge.judge({ unit: impossible, position: 'pin', parts: ['M/1'], fittedOn: null }).verdict).toBe(
      'undecided',
    );
    expect(judge.ruling(impossible, 'pin')).toMatchObject({ pieces: [], settled: false, notNeeded: [] });
  });

  it('an option matters only when turning it round changes the answer', () => {
    const clutch = [{ option: 'clutch', fitted: true }];
    const ruling = (required: string) =>
      createJudge(
        bookOf(papers, [rule('a', list, { required: 'M/1' }), rule('b', bulletin, { required, options: clutch })]),
        LATER,
      ).ruling(unit('2015-05-05'), 'pin');
    expect(ruling('M/2').boundaries).toEqual([{ axis: 'option', option: 'clutch' }]);
    expect(ruling('M/2').settled).toBe(false);
    expect(ruling('M/1').settled).toBe(true);
    expect(ruling('M/1').notNeeded).toContainEqual({ fact: 'option', option: 'clutch' });
  });

  it('a model that is not known is cut like the rest', () => {
    const judge = createJudge(
      bookOf(papers, [rule('a', list, { required: 'M/1' }), rule('b', bulletin, { required: 'M/2', models: ['T4'] })]),
      LATER,
    );
    const ruling = judge.ruling(unit('2015-05-05', '2015-05-05', { model: null }), 'pin');
    expect(ruling.boundaries).toEqual([{ axis: 'model', models: ['T4'] }]);
    expect(ruling.pieces.map(({ where }) => where.model)).toEqual([{ only: 'T4' }, 'another-model']);
  });

  it('neighbouring pieces that say the same are one, even when another rule decides', () => {
    const judge = createJudge(
      bookOf(papers, [
        rule('a', list, { required: 'M/1', built: unit('2015-01-01', '2015-06-30').built[0]! }),
        rule('b', bulletin, { required: 'M/1', built: unit('2015-07-01', '2015-12-31').built[0]! }),
      ]),
      LATER,
    );
    const { pieces, settled, notNeeded } = judge.ruling(unit('2015-02-01', '2015-11-30'), 'pin');
    expect(pieces).toHaveLength(1);
    expect(pieces[0]!.grounds.map(({ deciding }) => deciding[0]!.key)).toEqual(['a', 'b']);
    expect(settled).toBe(true);
    expect(notNeeded).toContainEqual({ fact: 'build-date' });
  });
});
