import type { RulebookOverview } from '../../contracts';
import { formatDay } from '../../day';
import { loadRulebook } from '../rulebook';
import type { Ports } from '../run';

/** Every paper with its standing and state, and how many rules each line has that are known now. */
export async function viewRulebook({ store, clock }: Ports): Promise<RulebookOverview> {
  const { revision, today, rulebook } = await loadRulebook(store, clock);
  const [papers, lines] = [await store.bulletins.list(), await store.catalogue.lines()];
  const counts = new Map<string, number>();
  for (const { line, known } of rulebook.rules) {
    if (known.to === Infinity) counts.set(line, (counts.get(line) ?? 0) + 1);
  }
  return {
    revision,
    inForceOn: formatDay(today),
    sources: papers.map(({ id, key, kind, publisher, number, title, issued, effective, state, ruleCount }) => {
      const standing = rulebook.standing[kind];
      return { id, key, kind, publisher, number, title, issued, effective, state, standing, ruleCount };
    }),
    lines: lines.map(({ code, name, maker }) => ({ code, name, maker: maker.name, ruleCount: counts.get(code) ?? 0 })),
  };
}
