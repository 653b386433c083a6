import { day } from '../day';
import { publishInto } from './publish-into';
import { bookOf, paper, rule } from './testing/made-rules';

const list = paper('parts-list');
const first = rule('a', list, { required: 'M/1', inForce: { from: 0, to: Infinity } });
const book = bookOf([list], [first, rule('b', list, { required: 'M/2' })]);

describe('publishing into a rulebook', () => {
  it('ending a rule closes what was known and adds a version that ends by the papers', () => {
    const { rules } = publishInto(book, { ends: [{ rule: 'a', on: day('2015-01-01') }] }, 1_000);
    expect(rules.filter(({ key }) => key === 'a')).toEqual([
      { ...first, known: { from: -Infinity, to: 1_000 } },
      { ...first, version: 2, inForce: { from: 0, to: day('2015-01-01') }, known: { from: 1_000, to: Infinity } },
    ]);
  });

  it('ending a rule on a day before it came into force leaves no version behind', () => {
    const { rules } = publishInto(book, { ends: [{ rule: 'a', on: 0 }] }, 1_000);
    expect(rules.filter(({ key }) => key === 'a')).toEqual([{ ...first, known: { from: -Infinity, to: 1_000 } }]);
  });

  it('a rule that opens under a known key is its next version, and the last one is no longer known', () => {
    const { rules } = publishInto(book, { opens: [{ ...first, required: 'M/3' }] }, 1_000);
    expect(
      rules.filter(({ key }) => key === 'a').map(({ version, required, known }) => [version, required, known]),
    ).toEqual([
      [1, 'M/1', { from: -Infinity, to: 1_000 }],
      [2, 'M/3', { from: 1_000, to: Infinity }],
    ]);
  });

  it('withdrawing closes what was known and adds nothing; the rest is left alone', () => {
    const { rules } = publishInto(book, { withdraws: ['a'] }, 1_000);
    expect(rules).toEqual([{ ...first, known: { from: -Infinity, to: 1_000 } }, book.rules[1]]);
  });

  it('a rule published and withdrawn at one instant was never known', () => {
    const opened = publishInto(book, { opens: [rule('c', list, { required: 'M/4' })] }, 1_000);
    expect(publishInto(opened, { withdraws: ['c'] }, 1_000).rules.map(({ key }) => key)).toEqual(['a', 'b']);
  });

  it('does not touch the rulebook it was given', () => {
    const before = JSON.stringify(book);
    publishInto(book, { ends: [{ rule: 'a', on: 5 }], withdraws: ['b'], sources: [list] }, 1_000);
    expect(JSON.stringify(book)).toBe(before);
  });
});
