import fc from 'fast-check';
import { SaidBefore } from './said-before';

describe('what rows said before', () => {
  it('is told as a map would tell it', () =>
    fc.assert(
      fc.property(
        fc.array(fc.record({ key: fc.integer({ max: 40, min: 0 }), text: fc.integer({ max: 2, min: 0 }) }), {
          maxLength: 90,
        }),
        (rows) => {
          const said = new SaidBefore();
          const first = new Map<number, { n: number; text: number }>();
          for (const [at, { key, text }] of rows.entries()) {
            const n = at + 2;
            const before = first.get(key);
            const told = said.look(n, `part ${key}`, { text }, `part ${key}`);
            if (!before) {
              first.set(key, { n, text });
              expect(told).toBeNull();
            } else if (before.text === text) expect(told).toEqual({ n, outcome: 'same', problems: [] });
            else
              expect(told?.problems.map(({ says }) => says)).toEqual([
                `Row ${before.n} speaks of part ${key} already, and says otherwise; keep one.`,
              ]);
          }
        },
      ),
    ));

  it('is still told when the table has grown many times', () => {
    const said = new SaidBefore();
    for (let n = 2; n < 20_000; n++) expect(said.look(n, `part ${n}`, { n }, 'this part')).toBeNull();
    for (const n of [2, 3, 511, 512, 513, 1_025, 19_999]) {
      expect(said.look(30_000, `part ${n}`, { n }, 'this part')?.outcome).toBe('same');
      expect(said.look(30_000, `part ${n}`, { n: 0 }, 'this part')?.problems[0]?.says).toContain(`Row ${n} speaks`);
    }
  });
});
