import type { RuleList, RulesQuery } from '../../contracts';
import type { Day } from '../../day';
import type { FitRule } from '../../fit-rules';
import { loadRulebook, type LoadedRulebook } from '../rulebook';
import type { Ports } from '../run';
import { ruleView } from '../view-bulletin/rule-view';
import { clocksOf } from './clocks';

/** More are never sent at once; the page says how many there are and asks for a narrower look. */
const MOST_RULES = 300;

/** Rules known at an instant, by line and position, each as a sentence; found by words of the sentence, key or paper. */
export async function listRules({ store, clock }: Ports, query: RulesQuery): Promise<RuleList> {
  const loaded = await loadRulebook(store, clock);
  const { inForceOn, knownAt, said } = clocksOf(query, loaded);
  const words = query.q.toLowerCase().split(/\s+/).filter(Boolean);
  const found = loaded.rulebook.rules
    .filter(({ known }) => known.from <= knownAt && knownAt < known.to)
    .filter(({ line, positions }) => (query.line ?? line) === line && holds(positions, query.position))
    .map((rule) => rowOf(rule, loaded, inForceOn))
    .filter((row) => words.length === 0 || hasAll(row, words))
    .sort((a, b) => compare(a.line, b.line) || compare(a.positions[0]!, b.positions[0]!) || compare(a.key, b.key));
  return { ...said, total: found.length, rules: found.slice(0, MOST_RULES) };
}

function rowOf(rule: FitRule, { naming }: LoadedRulebook, on: Day): RuleList['rules'][number] {
  const { inForce } = rule;
  return {
    ...ruleView(rule, naming),
    lineName: naming.line(rule.line),
    positionNames: rule.positions.map((position) => naming.position(position, rule.line)),
    paper: naming.rule(rule),
    speaks: on < inForce.from ? 'coming' : on < inForce.to ? 'in-force' : 'ended',
  };
}

const holds = (positions: readonly string[], wanted: string | undefined): boolean =>
  wanted === undefined || positions.includes(wanted);

/** Numbers are found whatever dashes and blanks they are typed with. */
function hasAll({ sentence, key, paper }: RuleList['rules'][number], words: readonly string[]): boolean {
  const text = `${sentence} ${key} ${paper}`.toLowerCase();
  const plain = text.replace(/[\s-]/g, '');
  return words.every((word) => text.includes(word) || plain.includes(word.replace(/-/g, '')));
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
