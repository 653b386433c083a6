import { day, daySpan } from '../../day';
import { compileRulebook } from '../ruling-for';
import { bookOf, LATER, paper, rule } from '../testing/made-rules';
import { wallChart } from './wall-chart';

const list = paper('parts-list');
const bulletin = paper('service-bulletin');
const production = daySpan(day('2014-01-01'), day('2018-01-01'));
const talus = { line: 'talus', positions: ['pin', 'hub'], models: ['T4', 'T5'], schemes: [], production };

function chart(rules: Parameters<typeof bookOf>[1]) {
  const compiled = compileRulebook(bookOf([list, bulletin], rules), { inForceOn: LATER.today, knownAt: LATER.now });
  return wallChart(compiled, talus);
}

describe('the data of the wall chart', () => {
  it('has one row per position and covers the production span from end to end, gaps standing out', () => {
    const change = day('2016-02-01');
    const rows = chart([rule('a', list, { required: 'M/1', built: { from: change, to: Infinity } })]);
    expect(
      rows.map(({ position, spans }) => [
        position,
        spans.map(({ built, outcome }) => [built.from, built.to, outcome.kind]),
      ]),
    ).toEqual([
      [
        'pin',
        [
          [production.from, change, 'nothing-said'],
          [change, production.to, 'decided'],
        ],
      ],
      ['hub', [[production.from, production.to, 'nothing-said']]],
    ]);
  });

  it('joins neighbours that say the same and names every rule that decides there', () => {
    const rows = chart([
      rule('a', list, { required: 'M/1' }),
      rule('b', bulletin, { required: 'M/1', built: { from: day('2016-02-01'), to: Infinity } }),
    ]);
    expect(rows[0]!.spans).toHaveLength(1);
    expect(rows[0]!.spans[0]!.deciding.map(({ key }) => key)).toEqual(['a', 'b']);
  });

  it('has a row per model where the model makes a difference, and one row where it makes none', () => {
    const split = chart([
      rule('a', list, { required: 'M/1' }),
      rule('b', bulletin, { required: 'M/2', models: ['T4'] }),
    ]);
    expect(split.filter(({ position }) => position === 'pin').map(({ where }) => where.model)).toEqual([
      { only: 'T4' },
      'another-model',
    ]);
    const alike = chart([
      rule('a', list, { required: 'M/1' }),
      rule('b', bulletin, { required: 'M/1', models: ['T4'] }),
    ]);
    expect(alike.filter(({ position }) => position === 'pin')).toHaveLength(1);
  });
});
