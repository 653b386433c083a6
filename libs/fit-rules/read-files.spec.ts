import { readFitRule, readRulebook, readUnitFacts, sayFileProblem, type Read } from './read-files';
import { bookOf, paper, rule } from './testing/made-rules';
import { Draw, stream } from './testing/random-book';
import { usualStanding } from './source';
import { writeFitRule, writeRulebook, writeUnitFacts } from './wire';

const list = paper('parts-list');
const good = writeFitRule(rule('FR-1', list, { required: 'HOLM/P100' }));

function sentences<T>(read: Read<T>): readonly string[] {
  return read.ok ? [] : read.problems.map(sayFileProblem);
}

describe('a fit rule in a file', () => {
  it('is refused naming the rule, the field, the value and what is accepted', () => {
    expect(sentences(readFitRule({ ...good, required: 'P100' }))).toEqual([
      'rule FR-1, required: "P100" will not do: must be MAKER/NUMBER in canonical form, such as HOLM/70412B.',
    ]);
    expect(sentences(readFitRule({ ...good, built: { from: '2015-02-29', to: null } }))).toEqual([
      'rule FR-1, built.from: "2015-02-29" will not do: must be a day that exists, written YYYY-MM-DD.',
    ]);
    expect(sentences(readFitRule({ ...good, positions: [] }))).toEqual([
      'rule FR-1, positions: [] will not do: must name at least one position.',
    ]);
  });

  it('is refused when a span ends before it begins, or on the day it begins', () => {
    for (const to of ['2015-01-01', '2014-12-31']) {
      expect(sentences(readFitRule({ ...good, inForce: { from: '2015-01-01', to } }))).toEqual([
        `rule FR-1, inForce: {"from":"2015-01-01","to":"${to}"} will not do: must end after it begins (the end itself is not included).`,
      ]);
    }
    expect(sentences(readFitRule({ ...good, serials: { scheme: 'six', from: '200', to: '100' } }))).toHaveLength(1);
  });

  it('is refused when it says nothing at all', () => {
    expect(sentences(readFitRule({ ...good, required: null }))).toEqual([
      'rule FR-1, required: null will not do: must require, allow or bar a part, or replace a rule.',
    ]);
  });

  it('tells of every field that is wrong, and of fields it does not know', () => {
    expect(sentences(readFitRule({ ...good, line: '', version: 0, colour: 'red' }))).toHaveLength(3);
  });

  it('that is no object at all is refused too', () => {
    expect(sentences(readFitRule('rule'))).toHaveLength(1);
    expect(sentences(readFitRule(null))).toHaveLength(1);
  });
});

describe('a rulebook in a file', () => {
  it('comes back as it was written, whatever is in it', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const book = new Draw(stream(seed)).rulebook();
      const file: unknown = JSON.parse(JSON.stringify(writeRulebook(book)));
      expect(readRulebook(file)).toEqual({ ok: true, value: book });
    }
  });

  it('has the usual standing where it names none', () => {
    const { rules, sources, supersessions } = writeRulebook(bookOf([list], []));
    expect(readRulebook({ rules, sources, supersessions })).toMatchObject({ value: { standing: usualStanding } });
  });

  it('names the entry that is wrong by its key, or by its number when it has none', () => {
    const file = writeRulebook(bookOf([list], []));
    const bad = {
      ...file,
      rules: [{ ...good, line: '' }],
      supersessions: [{ from: 'HOLM/1', to: null, direction: 'one-way', known: { from: null, to: null } }],
    };
    expect(sentences(readRulebook(bad))).toEqual([
      'rule FR-1, line: "" will not do: a product line must not be empty.',
      'supersession 1, to: null will not do: must be null for a dead part and name a part otherwise.',
    ]);
  });

  it('is refused when a rule rests on a paper that is not in it', () => {
    const file = { ...writeRulebook(bookOf([list], [])), rules: [{ ...good, source: 'SB-9' }] };
    expect(sentences(readRulebook(file))).toEqual([
      'rule FR-1, source: "SB-9" will not do: no source of this rulebook has that key.',
    ]);
  });

  it('is refused when one version stands twice, or two versions are known at one time', () => {
    const file = { ...writeRulebook(bookOf([list], [])), rules: [good, good] };
    expect(sentences(readRulebook(file))).toEqual([
      'rule FR-1, version: version 1 stands here twice; each may stand once.',
    ]);
    const until = { from: null, to: '2020-01-02T00:00:00.000Z' };
    const since = { from: '2020-01-01T00:00:00.000Z', to: null };
    const overlapping = [
      { ...good, known: until },
      { ...good, version: 2, known: since },
    ];
    expect(sentences(readRulebook({ ...file, rules: overlapping }))).toEqual([
      'rule FR-1, known: versions 1 and 2 are known at the same time; the earlier must end first.',
    ]);
    const touching = [
      { ...good, known: { ...until, to: since.from } },
      { ...good, version: 2, known: since },
    ];
    expect(sentences(readRulebook({ ...file, rules: touching }))).toEqual([]);
  });
});

describe('the facts of a unit in a file', () => {
  it('come back as they were written', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const unit = new Draw(stream(seed)).unit();
      expect(readUnitFacts(writeUnitFacts(unit))).toEqual({ ok: true, value: unit });
    }
  });

  it('may give spans in any order, overlapping: the days are what counts', () => {
    const spans = [
      { from: '2015-03-01', to: '2015-05-01' },
      { from: '2015-01-01', to: '2015-03-01' },
    ];
    const file = { line: 'talus', model: null, options: {}, serial: null, built: spans };
    expect(readUnitFacts(file)).toMatchObject({ value: { built: [{}] } });
  });
});
