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
  const known = rulebook.rules.filter(
    ({ known: { from, to } }) => from > to || (from <= context.knownAt && context.knownAt < to),
  );
  const sources = new Set(rulebook.sources.map(({ key }) => key));
  const keys = new Set(rulebook.rules.map(({ key }) => key));
  const naming = papersThatName(known);
  return known.flatMap((rule) => [
    ...emptySpans(rule),
    ...sourceTrouble(rule, sources, context),
    ...rule.replaces.filter((key) => !keys.has(key)).map((key) => found('replaces-nothing', rule, [], key)),
    ...barsWithoutOther(rule, naming),
  ]);
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

function found(code: FindingCode, rule: FitRule, parts: readonly PartKey[], detail: string): RuleFinding {
  const rules = [{ key: rule.key, version: rule.version }];
  return {
    code,
    line: rule.line,
    position: rule.positions.length === 1 ? rule.positions[0]! : null,
    rules,
    parts,
    detail,
  };
}

function emptySpans(rule: FitRule): RuleFinding[] {
  const { built, inForce, known, serials } = rule;
  const empty: string[] = [];
  if (!(built.from < built.to)) empty.push('build-date span');
  if (!(inForce.from < inForce.to)) empty.push('in-force span');
  if (!(known.from < known.to)) empty.push('known span');
  if (serials !== null && serials.from !== null && serials.to !== null && serials.from >= serials.to)
    empty.push('serial span');
  return empty.map((span) => found('empty-span', rule, [], span));
}

function sourceTrouble(rule: FitRule, sources: ReadonlySet<string>, { withdrawnSources }: AuditContext): RuleFinding[] {
  if (!sources.has(rule.source)) return [found('missing-source', rule, [], rule.source)];
  return withdrawnSources.has(rule.source) ? [found('withdrawn-source', rule, [], rule.source)] : [];
}

/** Per paper, line and position: it names a part to fit there. */
function papersThatName(rules: readonly FitRule[]): ReadonlySet<string> {
  const naming = new Set<string>();
  for (const rule of rules) {
    if (rule.required === null && rule.allowed.length === 0) continue;
    for (const position of rule.positions) naming.add(`${rule.source}\n${rule.line}\n${position}`);
  }
  return naming;
}

function barsWithoutOther(rule: FitRule, naming: ReadonlySet<string>): RuleFinding[] {
  if (rule.barred.length === 0 || rule.required !== null || rule.allowed.length > 0) return [];
  const bare = rule.positions.filter((position) => !naming.has(`${rule.source}\n${rule.line}\n${position}`));
  const parts = [...new Set(rule.barred.map(({ part }) => part))].sort();
  return bare.length === 0 ? [] : [found('bar-names-no-other', rule, parts, bare.join(', '))];
}
