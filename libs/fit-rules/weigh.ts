import type { Bar, RuleRef } from './fit-rule';
import type { PreparedRule } from './prepared-rule';
import type { HeldBar, LiftedBar, Outcome, OverriddenRule, Saying } from './ruling';
import type { Weighed } from './weighed';

/**
 * Weighs the rules that cover one stretch, given in their fixed order. Replaced rules are dropped first; of the rest
 * that require or allow something the highest standing decides, then the latest issue day. Bars of the rules that are
 * not dropped hold unless a rule of higher standing requires or allows the very part.
 */
export function weigh(covering: readonly PreparedRule[]): Weighed {
  if (covering.length === 0) return NOTHING;
  if (covering.length > 1) return weighTogether(covering);
  const only = covering[0]!;
  return (only.alone ??= weighTogether(covering));
}

const NOTHING = weighTogether([]);

function weighTogether(covering: readonly PreparedRule[]): Weighed {
  const standing = withoutReplaced(covering);
  const deciders = decidersOf(standing);
  const { barred, lifted } = barsOf(standing);
  const outcome = outcomeOf(deciders, barred);
  const overridden = covering.length === deciders.length ? [] : overriddenOf(covering, deciders);
  return { outcome, deciding: deciders.map(({ ref }) => ref), overridden, lifted, key: outcomeKey(outcome) };
}

function withoutReplaced(covering: readonly PreparedRule[]): readonly PreparedRule[] {
  if (!covering.some(({ replaces }) => replaces !== null)) return covering;
  return covering.filter((one) => replacerOf(one, covering) === undefined);
}

/** The first covering rule, other than itself, that names the rule as replaced. */
function replacerOf(one: PreparedRule, covering: readonly PreparedRule[]): PreparedRule | undefined {
  return covering.find((other) => other.rule.key !== one.rule.key && other.replaces?.has(one.rule.key));
}

/** The rules of the highest standing and, among them, of the latest issue day, among those that require or allow. */
function decidersOf(rules: readonly PreparedRule[]): readonly PreparedRule[] {
  let best: PreparedRule[] = [];
  for (const one of rules) {
    if (!one.decides) continue;
    const against = best[0];
    const lead = against ? one.standing - against.standing || one.issued - against.issued : 1;
    // Two rules without a source differ by NaN (infinity less infinity): they tie.
    if (lead > 0) best = [one];
    else if (!(lead < 0)) best.push(one);
  }
  return best;
}

function barsOf(rules: readonly PreparedRule[]): { barred: readonly HeldBar[]; lifted: readonly LiftedBar[] } {
  const barred: HeldBar[] = [];
  const lifted: LiftedBar[] = [];
  for (const one of rules) {
    for (const bar of one.rule.barred) {
      const { part } = bar;
      const over = rules.find(
        (other) => other.standing > one.standing && (other.rule.required === part || other.rule.allowed.includes(part)),
      );
      if (over) lifted.push({ ...bar, rule: one.ref, by: over.ref });
      else barred.push(heldBar(bar, one.ref));
    }
  }
  return { barred, lifted };
}

/** Field by field, since this is made for every bar of every stretch and a spread of bars of two shapes is slow. */
function heldBar({ part, reason, note, voidsWarranty }: Bar, rule: RuleRef): HeldBar {
  return voidsWarranty ? { part, reason, note, voidsWarranty, rule } : { part, reason, note, rule };
}

function outcomeOf(deciders: readonly PreparedRule[], barred: readonly HeldBar[]): Outcome {
  const first = deciders[0];
  if (first === undefined) return { kind: 'nothing-said', barred };
  const sayings = sayingsOf(deciders);
  if (sayings.length > 1) return { kind: 'disputed', why: 'rules-tie', sayings, barred };
  const { required } = first.rule;
  if (required !== null && barred.some(({ part }) => part === required)) {
    return { kind: 'disputed', why: 'required-and-barred', sayings, barred };
  }
  return { kind: 'decided', saying: sayings[0]!, barred };
}

function sayingsOf(deciders: readonly PreparedRule[]): Saying[] {
  if (deciders.length === 1) return [sayingOf(deciders)];
  const sayings = new Map<string, PreparedRule[]>();
  for (const one of deciders) {
    const says = `${one.rule.required ?? ''}|${one.allowed.join(',')}`;
    const same = sayings.get(says);
    if (same) same.push(one);
    else sayings.set(says, [one]);
  }
  return [...sayings.keys()].sort().map((says) => sayingOf(sayings.get(says)!));
}

function sayingOf(rules: readonly PreparedRule[]): Saying {
  const { rule, allowed } = rules[0]!;
  return { required: rule.required, allowed, rules: rules.map(({ ref }) => ref) };
}

function overriddenOf(covering: readonly PreparedRule[], deciders: readonly PreparedRule[]): OverriddenRule[] {
  const than = deciders[0];
  return covering.flatMap((one): OverriddenRule[] => {
    if (deciders.includes(one)) return [];
    const replacer = replacerOf(one, covering);
    if (replacer) return [{ rule: one.ref, because: { code: 'replaced', by: replacer.ref } }];
    if (!one.decides || than === undefined) return [{ rule: one.ref, because: { code: 'only-bars' } }];
    const code = one.standing < than.standing ? 'lower-standing' : 'issued-earlier';
    return [{ rule: one.ref, because: { code, than: than.ref } }];
  });
}

/** Text that is equal for two outcomes exactly when they say the same; see {@link Outcome}. */
export function outcomeKey(outcome: Outcome): string {
  const bars = outcome.barred.length === 0 ? '' : [...new Set(outcome.barred.map(({ part }) => part))].sort().join(',');
  if (outcome.kind === 'nothing-said') return `n:${bars}`;
  if (outcome.kind === 'decided') {
    const { required, allowed } = outcome.saying;
    const free = bars === '' ? allowed : allowed.filter((part) => !outcome.barred.some((bar) => bar.part === part));
    return `d:${required ?? ''}|${free.join(',')}`;
  }
  return `x:${bars}:${outcome.sayings.map(({ required, allowed }) => `${required ?? ''}|${allowed.join(',')}`).join(';')}`;
}
