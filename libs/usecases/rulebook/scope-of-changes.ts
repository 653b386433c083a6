import type { RecheckScope } from '../../contracts';
import type { Day } from '../../day';
import { scopeOfRules, type FitRule } from '../../fit-rules';

/** What a recheck must read when these rules changed: old and new version of each. */
export function recheckScopeOf(changed: readonly FitRule[]): RecheckScope {
  return {
    everything: false,
    areas: scopeOfRules(changed).map(({ line, positions, built }) => ({
      line,
      positions: [...positions],
      from: built.from === -Infinity ? null : built.from,
      to: built.to === Infinity ? null : built.to,
    })),
    ignoresLookBack: changed.some((rule) => rule.action === 'stop-use'),
  };
}

/**
 * Of the changed rules, those that can change an answer by the papers of `today`. A rule that comes in later, or whose
 * end was only named for a later day, changes nothing before that day; its own recheck starts then.
 */
export function changesBy(today: Day, closed: readonly FitRule[], opened: readonly FitRule[]): readonly FitRule[] {
  const openedByKey = new Map(opened.map((rule) => [rule.key, rule]));
  const waiting = new Set(
    closed.filter((old) => onlyEndsLater(old, openedByKey.get(old.key), today)).map((old) => old.key),
  );
  const closedKeys = new Set(closed.map(({ key }) => key));
  const notYet = (rule: FitRule) => !closedKeys.has(rule.key) && rule.inForce.from > today;
  return [...closed, ...opened.filter((rule) => !notYet(rule))].filter((rule) => !waiting.has(rule.key));
}

function onlyEndsLater(old: FitRule, now: FitRule | undefined, today: Day): boolean {
  if (!now || now.inForce.to <= today || old.inForce.to <= today) return false;
  const text = ({ version: _, known: __, inForce: { from }, ...rest }: FitRule) => JSON.stringify([from, rest]);
  return text(old) === text(now);
}
