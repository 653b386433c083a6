import type { BulletinDraft } from '../../contracts';
import { day, formatDay, type Day } from '../../day';
import { publishInto, readFitRule, sayFileProblem, type FitRule, type Rulebook, type Source } from '../../fit-rules';

/** What a draft would do to a rulebook at one instant. */
export interface DraftChanges {
  /** New versions, known from the instant on. */
  readonly opens: readonly FitRule[];
  /** Keys whose version that was known is closed. */
  readonly closes: readonly string[];
  /** Old and new versions of everything that changes: the scope of the recheck. */
  readonly changed: readonly FitRule[];
  /** The rulebook as it would stand afterwards. */
  readonly rulebook: Rulebook;
}

export type DraftResult =
  { readonly ok: true; readonly value: DraftChanges } | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Applies a draft in memory at the instant `at`, epoch milliseconds. Publishing writes exactly this, and "what if"
 * judges by exactly this. A draft that cannot be applied is refused with one sentence for each entry.
 */
export function applyDraft(rulebook: Rulebook, source: Source, draft: BulletinDraft, at: number): DraftResult {
  const knownNow = new Map(rulebook.rules.filter((rule) => rule.known.to === Infinity).map((rule) => [rule.key, rule]));
  const problems = draft.ends.flatMap((end, i) => endProblem(end, i, knownNow.get(end.rule)));
  const opens: FitRule[] = [];
  for (const [i, file] of draft.opens.entries()) {
    const read = readFitRule({ ...file, source: source.key, version: 1, known: { from: null, to: null } });
    if (read.ok) opens.push(read.value);
    else problems.push(...read.problems.map((one) => `opens[${i}]: ${sayFileProblem(one)}`));
  }
  if (problems.length > 0) return { ok: false, problems };
  const known = rulebook.sources.some(({ key }) => key === source.key);
  const ends = draft.ends.map(({ rule, on }) => ({ rule, on: day(on) }));
  const after = publishInto(rulebook, { sources: known ? [] : [source], opens, ends }, at);
  return { ok: true, value: changesBetween(knownNow, after, at) };
}

function endProblem({ rule, on }: BulletinDraft['ends'][number], i: number, old: FitRule | undefined): string[] {
  if (!old) return [`ends[${i}].rule is '${rule}', but must be the key of a rule that is known now.`];
  if (old.inForce.to > day(on)) return [];
  return [
    `ends[${i}].on is '${on}', but must be before ${formatDay(old.inForce.to)}, the day rule '${rule}' ends already.`,
  ];
}

function changesBetween(knownNow: ReadonlyMap<string, FitRule>, after: Rulebook, at: number): DraftChanges {
  const opens = after.rules.filter((rule) => rule.known.from === at && rule.known.to === Infinity);
  const stillKnown = new Set(
    after.rules.filter((rule) => rule.known.to === Infinity && rule.known.from < at).map(({ key }) => key),
  );
  const closes = [...knownNow.keys()].filter((key) => !stillKnown.has(key));
  return { opens, closes, changed: [...closes.map((key) => knownNow.get(key)!), ...opens], rulebook: after };
}

/** The day by whose papers the changes are looked at: today, or the day on which the last of them comes into force. */
export function dayOfChanges(today: Day, { opens }: Pick<DraftChanges, 'opens'>): Day {
  return Math.max(today, ...opens.map((rule) => rule.inForce.from).filter(Number.isFinite));
}
