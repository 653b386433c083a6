import type { SupersessionSheetRow } from '../../../sheets';
import type { NewSupersession, ReadSheetRow, WeighedRow } from '../../ports/index';
import { added, changed, problem, rejected, same, type KindRun, type OpenKind } from '../kind-work';
import { SaidBefore } from '../said-before';
import { recheckOf } from '../new-revision';
import { readNumber, rulesByCode } from './parts';

interface Read {
  readonly n: number;
  /** Null for a part that stays. */
  readonly one: NewSupersession | null;
}

/** Which part gives way to which. What is known stays on record; a change closes it and opens the new. */
export const openSupersessions: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const makers = await rulesByCode(tx);
  const said = new SaidBefore();
  let [closes, opens]: [number[], NewSupersession[]] = [[], []];
  let at: number | null = null;
  const read = ({ n, values }: ReadSheetRow): Read | WeighedRow => {
    const row = values as unknown as SupersessionSheetRow;
    if (!row.by && row.how !== 'dead') return { n, one: null };
    const from = readNumber(row.number, row.maker, makers);
    if (!from.ok) return rejected(n, from.problem);
    if (!row.by) return { n, one: { from: from.key, to: null, direction: 'dead' } };
    const to = readNumber(row.by, row.byMaker ?? row.maker, makers, ['by', 'byMaker']);
    if (!to.ok) return rejected(n, to.problem);
    if (to.key === from.key) return rejected(n, problem('by', 'not-accepted', 'A part cannot give way to itself.'));
    return { n, one: { from: from.key, to: to.key, direction: row.how === 'both-ways' ? 'both-ways' : 'one-way' } };
  };
  return {
    async weigh(rows) {
      [closes, opens] = [[], []];
      const all = rows.map(read);
      const keys = all.flatMap((one) => ('one' in one && one.one ? [one.one.from] : []));
      const known = await tx.bulk.supersessionsFrom([...new Set(keys)]);
      return all.map((each) => {
        if (!('one' in each)) return each;
        const { n, one } = each;
        if (one === null) return same(n);
        const again = said.look(n, `${one.from} ${one.to ?? ''}`, one, 'this part and its successor');
        if (again) return again;
        const before = known.find(({ from, to }) => from === one.from && to === one.to);
        if (before?.direction === one.direction) return same(n);
        if (before) closes.push(before.id);
        opens.push(one);
        return before ? changed(n) : added(n);
      });
    },
    async write() {
      if (opens.length === 0) return;
      at ??= (await tx.rulebook.addRevision({ cause: 'import', sourceId: null, personId: actor.id })).at;
      await tx.bulk.saveSupersessions(closes, opens, at);
    },
    finish: () => recheckOf(tx, actor, { everything: true, areas: [], ignoresLookBack: false }),
  };
};
