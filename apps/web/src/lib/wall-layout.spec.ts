import { layWall, WALL, type WallSpan } from './wall-layout';

const part = (number: string) => ({ key: `HOLM/${number}`, number, name: 'Pin' });
const span = (from: string, to: string, required: string | null): WallSpan => ({
  ...{ from, to, outcome: required ? 'decided' : 'nothing-said', required: required ? part(required) : null },
  ...{ allowed: [], barred: [], papers: [] },
});
const wall = (...spans: WallSpan[]) =>
  layWall({
    production: { from: '2012-01-01', to: '2022-01-01' },
    rows: [{ position: 'PIN', positionName: 'Pin', when: '', spans }],
  });

describe('the layout of the wall chart', () => {
  it('lays the production from the end of the labels to the right edge, without a hole', () => {
    const [row] = wall(span('2012-01-01', '2017-01-01', 'A'), span('2017-01-01', '2022-01-01', 'B')).rows;
    const [first, second] = row!.spans;
    expect(first!.x).toBe(WALL.label);
    expect(first!.x + first!.width).toBeCloseTo(second!.x);
    expect(second!.x + second!.width).toBeCloseTo(WALL.width - 1);
  });

  it('writes a number only where it has room, whole or not at all', () => {
    const [row] = wall(span('2012-01-01', '2012-03-01', '70-412A'), span('2012-03-01', '2022-01-01', '70-412B')).rows;
    expect(row!.spans.map(({ label }) => label)).toEqual([null, '70-412B']);
  });

  it('fills spans of one part alike, those of another otherwise, and leaves gaps unfilled', () => {
    const spans = [
      span('2012-01-01', '2014-01-01', 'A'),
      span('2014-01-01', '2016-01-01', null),
      span('2016-01-01', '2018-01-01', 'B'),
      span('2018-01-01', '2022-01-01', 'A'),
    ];
    expect(wall(...spans).rows[0]!.spans.map(({ ink }) => ink)).toEqual([0, null, 1, 0]);
  });

  it('marks every first of January where there is room, the first day of production included', () => {
    const { years } = wall(span('2012-01-01', '2022-01-01', 'A'));
    expect(years.map(({ year }) => year)).toEqual([2012, 2013, 2014, 2015, 2016, 2017, 2018, 2019, 2020, 2021]);
    expect(years[0]!.x).toBe(WALL.label);
  });
});
