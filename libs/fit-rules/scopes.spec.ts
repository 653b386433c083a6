import { nextInForceDay, rulesTurningBetween, scopeOfRules } from './scopes';
import { bookOf, paper, rule } from './testing/made-rules';

const list = paper('parts-list');

describe('the scope of changed rules', () => {
  it('joins scopes of the same place whose build dates meet or touch, and no others', () => {
    const built = (from: number, to: number) => ({ required: 'M/1', built: { from, to } });
    const scopes = scopeOfRules([
      rule('a', list, built(0, 10)),
      rule('b', list, built(10, 20)),
      rule('c', list, built(21, 30)),
      rule('d', list, { ...built(5, 8), positions: ['hub'] }),
      rule('e', list, { ...built(5, 8), models: ['T4'] }),
    ]);
    const seen = scopes.map(({ positions, models, built: { from, to } }) => [positions[0], models.length, from, to]);
    expect(seen).toEqual([
      ['pin', 1, 5, 8],
      ['hub', 0, 5, 8],
      ['pin', 0, 0, 20],
      ['pin', 0, 21, 30],
    ]);
  });
});

describe('papers that are dated ahead', () => {
  const rules = [
    rule('a', list, { required: 'M/1', inForce: { from: 10, to: 30 } }),
    rule('b', list, { required: 'M/2', inForce: { from: 20, to: Infinity } }),
    rule('gone', list, { required: 'M/3', inForce: { from: 15, to: 16 }, known: { from: 0, to: 5 } }),
  ];
  const book = bookOf([list], rules);

  it('the next day on which the answer can turn by itself is the next beginning or end known now', () => {
    expect([9, 10, 20, 29, 30].map((on) => nextInForceDay(book, on, 9))).toEqual([10, 20, 30, 30, null]);
    expect(nextInForceDay(book, 10, 4)).toBe(15);
  });

  it('the rules that turn between two days: the first day is past, the last is counted', () => {
    const keys = (from: number, to: number) => rulesTurningBetween(book, from, to, 9).map(({ key }) => key);
    expect(keys(9, 10)).toEqual(['a']);
    expect(keys(10, 19)).toEqual([]);
    expect(keys(10, 30)).toEqual(['a', 'b']);
  });
});
