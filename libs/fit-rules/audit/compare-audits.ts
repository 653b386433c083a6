import type { RuleRef } from '../fit-rule';
import type { Finding } from './finding';

/** Findings of the later audit that the earlier one did not have: what a change would bring in. */
export function newFindings(before: readonly Finding[], after: readonly Finding[]): readonly Finding[] {
  const had = new Set(before.map((finding) => finding.sentence));
  return after.filter((finding) => !had.has(finding.sentence));
}

/** Groups of rules that some unit is disputed between; a group inside another is left out. In order of their keys. */
export function disputedGroups(findings: readonly Finding[]): readonly (readonly RuleRef[])[] {
  const disputes = findings.filter(({ code }) => code === 'disputed').map(({ rules }) => rules);
  const texts = disputes.map((rules) => new Set(rules.map(refText)));
  const isWithin = (a: ReadonlySet<string>, b: ReadonlySet<string>) => [...a].every((text) => b.has(text));
  return disputes.filter((_, i) =>
    texts.every((other, j) => i === j || !isWithin(texts[i]!, other) || (other.size === texts[i]!.size && i < j)),
  );
}

function refText({ key, version }: RuleRef): string {
  return `${key} ${version}`;
}
