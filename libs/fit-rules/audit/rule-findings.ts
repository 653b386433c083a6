import type { PartKey, Supersession } from '../../part-number';
import { supersessionFindings } from '../../part-number';
import type { FitRule, Rulebook, RuleRef } from '../fit-rule';
import type { AuditContext, FindingCode } from './finding';

/** Something found about a rule, a paper or a part as such, before it is put into words. */
export interface RuleFinding {
  readonly code: FindingCode;
  readonly line: string | null;
  readonly position: string | null;
  readonly rules: readonly RuleRef[];
  readonly parts: readonly PartKey[];
  /** What the sentence needs besides: a field, a source key, a rule key. */
  readonly detail: string;
}

/** Looks at every rule known at the instant by itself, whatever its in-force span. */
export function ruleFindings(rulebook: Rulebook, context: AuditContext): readonly RuleFinding[] {
  const sources = new Set(rulebook.sources.map(({ key }) => key));
  const known = rulebook.rules.filter(({ known: { from, to } }) => {
    return from >= to || (from <= context.knownAt && context.knownAt < to);
  });
  const found: RuleFinding[] = [];
  for (const rule of known) {
    const empty = emptySpanOf(rule);
    if (empty !== null) found.push(foundInRule('empty-span', rule, [], empty));
    if (!sources.has(rule.source)) found.push(foundInRule('missing-source', rule, [], rule.source));
    else if (context.withdrawnSources.has(rule.source)) {
      found.push(foundInRule('withdrawn-source', rule, [], rule.source));
    }
  }
  return [...found, ...replacesNothing(rulebook, known), ...barsWithoutOther(known)];
}

/** Rings, forks and dead ends among the supersessions known at the instant. */
export function partFindings(supersessions: readonly Supersession[], knownAt: number): readonly RuleFinding[] {
  return supersessionFindings(supersessions, knownAt).map((one) => {
    const about = { line: null, position: null, rules: [], detail: '' };
    if (one.code === 'cycle') return { ...about, code: 'supersession-cycle', parts: one.parts };
    if (one.code === 'fork') return { ...about, code: 'supersession-fork', parts: [one.from, ...one.to] };
    return { ...about, code: 'dead-and-replaced', parts: [one.part, ...one.to] };
  });
}

/** A finding about one rule; it has a position when the rule has one. */
export function foundInRule(code: FindingCode, rule: FitRule, parts: readonly PartKey[], detail: string): RuleFinding {
  const rules = [{ key: rule.key, version: rule.version }];
  const position = rule.positions.length === 1 ? rule.positions[0]! : null;
  return { code, line: rule.line, position, rules, parts, detail };
}

/** The first span of the rule that ends before it begins, or holds nothing; null when all are sound. */
function emptySpanOf({ built, inForce, known, serials }: FitRule): string | null {
  if (!(built.from < built.to)) return 'build-date span';
  if (!(inForce.from < inForce.to)) return 'in-force span';
  if (!(known.from < known.to)) return 'known span';
  const emptySerials = serials !== null && serials.from !== null && serials.to !== null && serials.from >= serials.to;
  return emptySerials ? 'serial span' : null;
}

function replacesNothing(rulebook: Rulebook, known: readonly FitRule[]): RuleFinding[] {
  const replacing = known.filter(({ replaces }) => replaces.length > 0);
  if (replacing.length === 0) return [];
  const keys = new Set(rulebook.rules.map(({ key }) => key));
  return replacing.flatMap((rule) =>
    rule.replaces.filter((key) => !keys.has(key)).map((key) => foundInRule('replaces-nothing', rule, [], key)),
  );
}

/** Rules that only bar, and whose paper requires and allows nothing in the same position. */
function barsWithoutOther(known: readonly FitRule[]): RuleFinding[] {
  const names = ({ required, allowed }: FitRule) => required !== null || allowed.length > 0;
  const barring = known.filter((rule) => rule.barred.length > 0 && !names(rule));
  if (barring.length === 0) return [];
  const papers = new Set(barring.map(({ source }) => source));
  const named = new Set<string>();
  for (const rule of known) {
    if (!papers.has(rule.source) || !names(rule)) continue;
    for (const position of rule.positions) named.add(JSON.stringify([rule.source, rule.line, position]));
  }
  return barring.flatMap((rule) => {
    const bare = rule.positions.filter((one) => !named.has(JSON.stringify([rule.source, rule.line, one])));
    const parts = [...new Set(rule.barred.map(({ part }) => part))].sort();
    return bare.length === 0 ? [] : [foundInRule('bar-names-no-other', rule, parts, bare.join(', '))];
  });
}
