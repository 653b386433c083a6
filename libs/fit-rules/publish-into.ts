import type { Day } from '../day';
import type { FitRule, Rulebook } from './fit-rule';
import type { Source } from './source';

/** What a paper changes when it is published, corrected or withdrawn. */
export interface RulebookChange {
  /** Papers that are new to the shop. */
  readonly sources?: readonly Source[];
  /** Rules that come in. Their version and known span are set here. */
  readonly opens?: readonly FitRule[];
  /** Rules that go out of force: from the day on, by the papers, they no longer speak. */
  readonly ends?: readonly { readonly rule: string; readonly on: Day }[];
  /** Rules that the shop no longer holds true at all. */
  readonly withdraws?: readonly string[];
}

/**
 * The rulebook as it would be after the change, published at the instant `at` (epoch milliseconds). Nothing is
 * overwritten: a version that ends or is withdrawn has its known span closed, an ending is a new version of the rule,
 * and a rule that opens under a key known already is its next version. A key that is not known is passed over.
 */
export function publishInto(rulebook: Rulebook, change: RulebookChange, at: number): Rulebook {
  const { sources = [], opens = [], ends = [], withdraws = [] } = change;
  const endsOn = new Map(ends.map(({ rule, on }) => [rule, on]));
  const closed = new Set([...endsOn.keys(), ...withdraws, ...opens.map(({ key }) => key)]);
  const latest = new Map<string, number>();
  for (const { key, version } of rulebook.rules) latest.set(key, Math.max(version, latest.get(key) ?? 0));
  const versions: FitRule[] = [];
  const added: FitRule[] = [];
  const add = (rule: FitRule): void => {
    const version = (latest.get(rule.key) ?? 0) + 1;
    latest.set(rule.key, version);
    added.push({ ...rule, version, known: { from: at, to: Infinity } });
  };
  for (const rule of rulebook.rules) {
    const touched = closed.has(rule.key) && rule.known.from <= at && at < rule.known.to;
    if (!touched) versions.push(rule);
    else if (rule.known.from < at) versions.push({ ...rule, known: { from: rule.known.from, to: at } });
    const on = endsOn.get(rule.key);
    if (touched && on !== undefined && rule.inForce.from < on) {
      add({ ...rule, inForce: { from: rule.inForce.from, to: Math.min(on, rule.inForce.to) } });
    }
  }
  for (const rule of opens) add(rule);
  return { ...rulebook, rules: [...versions, ...added], sources: [...rulebook.sources, ...sources] };
}
