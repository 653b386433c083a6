import { day } from '../../day';
import { readRulebook, sourceFromFile, usualStanding, type FitRuleFile, type Rulebook } from '../../fit-rules';
import { applyDraft } from './apply-draft';
import { changesBy, recheckScopeOf } from './scope-of-changes';

const AT = Date.parse('2026-11-20T10:00:00.000Z');
const paper = (key: string) => ({
  ...{ key, kind: 'service-bulletin' as const, publisher: 'Holmgard', number: key, title: key },
  ...{ issued: '2026-11-01', effective: null, received: '2026-11-02' },
});
const rule = (key: string, more: Partial<FitRuleFile> = {}): FitRuleFile => ({
  ...{ key, version: 1, line: 'TL-40', models: [], options: [], positions: ['pin'], serials: null, source: 'PL-1' },
  ...{ allowed: [], barred: [], action: 'nothing', replaces: [], required: 'HOLM/A' },
  built: { from: '2014-01-01', to: '2016-01-01' },
  inForce: { from: '2010-01-01', to: null },
  known: { from: '2010-01-01T00:00:00.000Z', to: null },
  ...more,
});
const rulebook: Rulebook = (() => {
  const file = { rules: [rule('FR-1')], sources: [paper('PL-1')], supersessions: [], standing: usualStanding };
  const read = readRulebook(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
})();
const SB = sourceFromFile(paper('SB-1'));

function changes(draft: Parameters<typeof applyDraft>[2]) {
  const applied = applyDraft(rulebook, SB, draft, AT);
  if (!applied.ok) throw new Error(applied.problems.join(' '));
  return applied.value;
}

describe('applyDraft', () => {
  it('ends a rule by closing its version and opening one that ends on the day', () => {
    const { opens, closes, rulebook: after } = changes({ opens: [], ends: [{ rule: 'FR-1', on: '2026-11-15' }] });
    expect(closes).toEqual(['FR-1']);
    expect(opens).toMatchObject([{ key: 'FR-1', version: 2, source: 'PL-1', inForce: { to: day('2026-11-15') } }]);
    expect(after.rules.map(({ version, known }) => [version, known.from < AT, known.to])).toEqual([
      [1, true, AT],
      [2, false, Infinity],
    ]);
  });

  it('only closes a rule that would never have been in force', () => {
    const { opens, closes } = changes({ opens: [], ends: [{ rule: 'FR-1', on: '2010-01-01' }] });
    expect([closes, opens]).toEqual([['FR-1'], []]);
  });

  it('opens a rule under a known key as its next version: a correction', () => {
    const { opens, closes } = changes({ opens: [rule('FR-1', { required: 'HOLM/B' })], ends: [] });
    expect(closes).toEqual(['FR-1']);
    expect(opens).toMatchObject([{ key: 'FR-1', version: 2, source: 'SB-1', required: 'HOLM/B' }]);
  });

  it('refuses an end that is none, naming entry, value and what would be accepted', () => {
    const ends = [
      { rule: 'FR-9', on: '2026-11-15' },
      { rule: 'FR-1', on: '2026-11-15' },
    ];
    expect(applyDraft(rulebook, SB, { opens: [], ends }, AT)).toEqual({
      ok: false,
      problems: ["ends[0].rule is 'FR-9', but must be the key of a rule that is known now."],
    });
  });

  it('refuses a rule whose span ends before it begins, naming rule, field and value', () => {
    const bad = rule('FR-2', { built: { from: '2016-01-01', to: '2014-01-01' } });
    const applied = applyDraft(rulebook, SB, { opens: [bad], ends: [] }, AT);
    expect(applied).toMatchObject({ ok: false });
    expect(JSON.stringify(applied)).toMatch(/opens\[0\]: rule FR-2, built: .*2016-01-01.* must end after it begins/);
  });
});

describe('what a recheck reads', () => {
  const scopeOn = (today: string, draft: Parameters<typeof applyDraft>[2]) => {
    const { changed, opens } = changes(draft);
    const closed = changed.filter((one) => !opens.includes(one));
    return recheckScopeOf(changesBy(day(today), closed, opens));
  };

  it('is the lines, positions and build dates of the rules that change', () => {
    const built = { from: '2015-06-01', to: null };
    const draft = { opens: [rule('FR-2', { built, positions: ['blade'], action: 'stop-use' })], ends: [] };
    expect(scopeOn('2026-11-20', draft)).toEqual({
      everything: false,
      areas: [{ line: 'TL-40', positions: ['blade'], from: day('2015-06-01'), to: null }],
      ignoresLookBack: true,
    });
  });

  it('is nothing while every change waits for its day', () => {
    const opens = [rule('FR-2', { inForce: { from: '2026-12-01', to: null } })];
    const draft = { opens, ends: [{ rule: 'FR-1', on: '2026-12-01' }] };
    expect(scopeOn('2026-11-20', draft).areas).toEqual([]);
    expect(scopeOn('2026-12-01', draft).areas).toHaveLength(1);
    expect(scopeOn('2026-11-30', { opens, ends: [] }).areas).toEqual([]);
    expect(scopeOn('2026-12-01', { opens, ends: [] }).areas).toHaveLength(1);
  });
});
