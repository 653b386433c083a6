import type { Day, DaySpan } from '../day';
import type { PartKey, Supersession } from '../part-number';
import type { FitRule, Rulebook } from './fit-rule';
import { byText } from './prepared-rule';

/** Installs on one line, of some models (empty: all), in some positions, built within a span. */
export interface RuleScope {
  readonly line: string;
  readonly models: readonly string[];
  readonly positions: readonly string[];
  readonly built: DaySpan;
}

/**
 * Which installs the changed rules can touch. Whatever lies outside keeps its verdict: a rule speaks, replaces, bars
 * and lifts bars only where it covers. Give it the old and the new version of every rule that changes. Scopes of one
 * line, model list and position list whose spans meet or touch are joined.
 */
export function scopeOfRules(changed: readonly FitRule[]): readonly RuleScope[] {
  const scopes = changed.map(({ line, models, positions, built }) => {
    const scope = { line, models: [...new Set(models)].sort(), positions: [...new Set(positions)].sort(), built };
    return { scope, key: JSON.stringify([line, scope.models, scope.positions]) };
  });
  scopes.sort((a, b) => byText(a.key, b.key) || a.scope.built.from - b.scope.built.from);
  const joined: typeof scopes = [];
  for (const one of scopes) {
    const last = joined[joined.length - 1];
    const { built } = one.scope;
    if (last?.key !== one.key || last.scope.built.to < built.from) joined.push(one);
    else {
      const span = { from: last.scope.built.from, to: Math.max(last.scope.built.to, built.to) };
      joined[joined.length - 1] = { key: last.key, scope: { ...last.scope, built: span } };
    }
  }
  return joined.map(({ scope }) => scope);
}

/**
 * Which installs changed supersessions can touch: those under rules that name a part tied, over any number of steps,
 * to a part of the change.
 */
export function scopeOfSupersessions(rulebook: Rulebook, changed: readonly Supersession[]): readonly RuleScope[] {
  const tied = tiedParts([...rulebook.supersessions, ...changed], changed.flatMap(partsOf));
  return scopeOfRules(
    rulebook.rules.filter(
      ({ required, allowed }) => (required !== null && tied.has(required)) || allowed.some((part) => tied.has(part)),
    ),
  );
}

/** The parts and every part tied to them by supersessions of any time, in either direction. */
export function tiedParts(supersessions: readonly Supersession[], parts: readonly PartKey[]): ReadonlySet<PartKey> {
  const neighbours = new Map<PartKey, PartKey[]>();
  for (const one of supersessions) {
    for (const part of partsOf(one)) {
      const own = neighbours.get(part);
      if (own) own.push(...partsOf(one));
      else neighbours.set(part, partsOf(one));
    }
  }
  const tied = new Set(parts);
  for (const part of tied) for (const next of neighbours.get(part) ?? []) tied.add(next);
  return tied;
}

/** The first day after `day` on which a rule known at the instant comes into force or goes out of it; null when none. */
export function nextInForceDay({ rules }: Pick<Rulebook, 'rules'>, day: Day, knownAt: number): Day | null {
  let next = Infinity;
  for (const { inForce, known } of rules) {
    if (!(known.from <= knownAt && knownAt < known.to)) continue;
    for (const end of [inForce.from, inForce.to]) if (end > day && end < next) next = end;
  }
  return next === Infinity ? null : next;
}

/** The rules whose being in force changes between two days (after `from`, up to and including `to`), as known then. */
export function rulesTurningBetween(
  { rules }: Pick<Rulebook, 'rules'>,
  from: Day,
  to: Day,
  knownAt: number,
): readonly FitRule[] {
  const turns = (end: number) => from < end && end <= to;
  return rules.filter(
    ({ inForce, known }) => known.from <= knownAt && knownAt < known.to && (turns(inForce.from) || turns(inForce.to)),
  );
}

function partsOf({ from, to }: Supersession): PartKey[] {
  return to === null ? [from] : [from, to];
}
