import type { PartKey } from '../part-number';
import type { FitRule, Rulebook, RuleRef } from './fit-rule';
import type { Weighed } from './weighed';

/** A rule with what the weighing asks for again and again worked out once. */
export interface PreparedRule {
  readonly rule: FitRule;
  readonly ref: RuleRef;
  readonly standing: number;
  /** Issue day of its source. */
  readonly issued: number;
  readonly replaces: ReadonlySet<string> | null;
  /** It requires or allows something; a rule that only bars never decides. */
  readonly decides: boolean;
  /** Allowed parts in order of their keys, each once. */
  readonly allowed: readonly PartKey[];
  /** What it makes of a stretch that no other rule covers; worked out when first met. */
  alone: Weighed | null;
}

/** Prepares rules of the book whose sources and standing are given. A rule whose source is missing has no standing. */
export type PrepareRule = (rule: FitRule) => PreparedRule;

export function preparing({ sources, standing }: Pick<Rulebook, 'sources' | 'standing'>): PrepareRule {
  const sourceByKey = new Map(sources.map((source) => [source.key, source]));
  return (rule) => {
    const source = sourceByKey.get(rule.source);
    const allowed = rule.allowed.length < 2 ? rule.allowed : [...new Set(rule.allowed)].sort();
    return {
      rule,
      ref: { key: rule.key, version: rule.version },
      standing: source ? standing[source.kind] : -Infinity,
      issued: source ? source.issued : -Infinity,
      replaces: rule.replaces.length > 0 ? new Set(rule.replaces) : null,
      decides: rule.required !== null || allowed.length > 0,
      allowed,
      alone: null,
    };
  };
}

/** The fixed order of rules, by key and version: no answer depends on the order the rules came in. */
export function inFixedOrder(a: PreparedRule, b: PreparedRule): number {
  return byText(a.rule.key, b.rule.key) || a.rule.version - b.rule.version;
}

/** Orders text by code unit, the same on every machine and in every language. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
