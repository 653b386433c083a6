import type { BulletinDraft } from '../../contracts';
import type { FitRuleFile } from '../../fit-rules';

/** Lines and positions a draft names that the shop does not have, and keys it opens twice; one sentence each. */
export function draftProblems(
  { opens }: BulletinDraft,
  places: ReadonlyMap<string, ReadonlySet<string>>,
): readonly string[] {
  const problems: string[] = [];
  const seen = new Set<string>();
  for (const [i, rule] of (opens as unknown as readonly FitRuleFile[]).entries()) {
    if (seen.has(rule.key))
      problems.push(`opens[${i}].key is '${rule.key}', but each key may stand once in a bulletin.`);
    seen.add(rule.key);
    const positions = places.get(rule.line);
    if (!positions) {
      problems.push(
        `opens[${i}] (rule ${rule.key}): line is '${rule.line}', but must be one of ${some(places.keys())}.`,
      );
      continue;
    }
    for (const position of rule.positions.filter((code) => !positions.has(code))) {
      problems.push(
        `opens[${i}] (rule ${rule.key}): position is '${position}', but line ${rule.line} has ${some(positions)}.`,
      );
    }
  }
  return problems;
}

function some(words: Iterable<string>): string {
  const all = [...words];
  return all.length > 12 ? `${all.slice(0, 12).join(', ')} and ${all.length - 12} more` : all.join(', ');
}
