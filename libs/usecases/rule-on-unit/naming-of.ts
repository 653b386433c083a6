import { saySource, type FullNaming, type RuleRef } from '../../fit-rules';
import type { PartRow, PositionRow } from '../ports/index';
import type { LoadedRulebook } from '../rulebook';

/** Catalogue names for sentences, and the parts and positions behind them. */
export interface Names {
  readonly partsByKey: ReadonlyMap<string, PartRow>;
  readonly positions: ReadonlyMap<string, PositionRow>;
  readonly rulebook: LoadedRulebook;
}

/** How parts, positions and rules are called in sentences for this catalogue and rulebook. */
export function namingOf({ partsByKey, positions, rulebook }: Names): FullNaming {
  return {
    line: (code) => rulebook.shapes.lines.get(code) ?? code,
    part: (key) => partsByKey.get(key)?.number ?? key,
    position: (code) => positions.get(code)?.name ?? code,
    rule: (ref) => {
      const source = sourceOfRule(rulebook, ref);
      return source ? saySource(source) : `rule ${ref.key}`;
    },
  };
}

/** The paper behind one version of a rule. */
export function sourceOfRule(rulebook: LoadedRulebook, ref: RuleRef) {
  const rule = rulebook.ruleOf(ref);
  return rule ? (rulebook.sources.get(rule.source) ?? null) : null;
}
