import { ALL_DAYS, day } from '../day';
import { diffRulebooks, diffRulings } from './diff';
import { createJudge } from './judge';
import { bookOf, LATER, paper, rule, unit } from './testing/made-rules';
import { Draw, stream, world } from './testing/random-book';

const list = paper('parts-list');
const bulletin = paper('service-bulletin');
const clock = { inForceOn: LATER.today, knownAt: LATER.now };
const change = { from: day('2015-07-01'), to: Infinity };

describe('the difference of two rulings', () => {
  it('is the build dates for which the answer is another one, with both answers', () => {
    const before = bookOf([list], [rule('a', list, { required: 'M/1' })]);
    const after = bookOf([list, bulletin], [...before.rules, rule('b', bulletin, { required: 'M/2', built: change })]);
    const asked = unit('2015-01-01', '2015-12-31');
    const rulingIn = (book: typeof before) => createJudge(book, LATER).ruling(asked, 'pin');
    const changes = diffRulings(rulingIn(before), rulingIn(after));
    expect(changes).toHaveLength(1);
    expect(changes[0]!.where.built).toEqual([{ from: change.from, to: day('2016-01-01') }]);
    expect(changes[0]).toMatchObject({
      before: { saying: { required: 'M/1' } },
      after: { saying: { required: 'M/2' } },
    });
  });

  it('there is none where another rule says the same', () => {
    const before = bookOf([list], [rule('a', list, { required: 'M/1' })]);
    const after = bookOf([list, bulletin], [...before.rules, rule('b', bulletin, { required: 'M/1', built: change })]);
    expect(diffRulebooks({ rulebook: before, ...clock }, { rulebook: after, ...clock })).toEqual([]);
  });
});

describe('the difference of two rulebooks', () => {
  it('names the model alone when only the model is touched', () => {
    const before = bookOf(
      [list],
      [rule('a', list, { required: 'M/1', models: ['T5'] }), rule('c', list, { required: 'M/1' })],
    );
    const after = bookOf([list, bulletin], [...before.rules, rule('b', bulletin, { required: 'M/2', models: ['T4'] })]);
    const changes = diffRulebooks({ rulebook: before, ...clock }, { rulebook: after, ...clock });
    expect(changes.map(({ where }) => [where.model, where.built])).toEqual([[{ only: 'T4' }, [ALL_DAYS]]]);
  });

  it('names exactly the units whose ruling differs, whatever their model, serial and options', () => {
    for (let seed = 1; seed <= 250; seed++) {
      const draw = new Draw(stream(seed * 7));
      const [before, after] = [draw.rulebook(), draw.rulebook()];
      const at = { inForceOn: draw.below(24), knownAt: draw.below(6) };
      const changes = diffRulebooks({ rulebook: before, ...at }, { rulebook: after, ...at });
      const options = Object.fromEntries(world.options.map((option) => [option, draw.chance(0.5)]));
      const serial = { scheme: draw.pick([...world.schemes, 's3']), key: draw.pick(world.keys) };
      const on = draw.below(24);
      const model = draw.pick(world.models);
      const known = { line: 'l1', model, options, serial, built: [{ from: on, to: on + 1 }] };
      const position = draw.pick(['p1', 'p2']);
      const judgeAt = { today: at.inForceOn, now: at.knownAt };
      const differs = diffRulings(
        createJudge(before, judgeAt).ruling(known, position),
        createJudge(after, judgeAt).ruling(known, position),
      );
      const named = changes.filter(
        ({ where, ...place }) =>
          place.position === position &&
          where.built.some(({ from, to }) => from <= on && on < to) &&
          (where.model === null || where.model === 'another-model' || where.model.only === model) &&
          (where.serial === null ||
            where.serial === 'another-scheme' ||
            (where.serial.scheme === serial.scheme &&
              (where.serial.from ?? '') <= serial.key &&
              (where.serial.to === null || serial.key < where.serial.to))) &&
          where.options.every(({ option, fitted }) => options[option] === fitted),
      );
      // "Another" does not say which: there a change may be of a unit beside this one, never the other way round.
      const certain = named.filter(({ where }) => where.model !== 'another-model' && where.serial !== 'another-scheme');
      if (differs.length > 0) expect(named.length).toBeGreaterThan(0);
      if (certain.length > 0) expect(differs).toHaveLength(1);
    }
  });
});
