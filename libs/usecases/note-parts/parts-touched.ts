import type { Day } from '../../day';
import {
  createJudge,
  partLoss,
  sayBarReason,
  sayPlace,
  whereGood,
  type FitRule,
  type Judge,
  type PartLoss,
  type PartPlace,
  type Rulebook,
} from '../../fit-rules';
import type { PartKey } from '../../part-number';
import type { LoadedRulebook } from '../rulebook';

/** A part that a change of the rulebook bars or ends for some units, whether or not a shelf holds any of it. */
export interface TouchedPart {
  readonly part: PartKey;
  readonly kind: 'barred' | 'ended';
  /** Some unit still takes it. */
  readonly stillGood: boolean;
  readonly sentences: readonly string[];
}

/** A rulebook as it stands or would stand, and the instant as of which it is known, in epoch milliseconds. */
export interface RulebookThen {
  readonly rulebook: Rulebook;
  readonly now: number;
}

/** Sentences about where it stays right; the rest goes without saying. */
const MOST_STILL = 3;

/**
 * Every part that loses a place by the papers of `day`: barred by one of the opened rules, or required or allowed before
 * and no more. The ruling of each unit decides; this only says for which units it will.
 */
export function partsTouched(
  before: RulebookThen,
  after: RulebookThen,
  { opens, changed, day }: { opens: readonly FitRule[]; changed: readonly FitRule[]; day: Day },
  naming: LoadedRulebook['naming'],
): readonly TouchedPart[] {
  const judges = [before, after].map(({ rulebook, now }) => createJudge(rulebook, { today: day, now }));
  const [old, young] = judges as [Judge, Judge];
  const opened = new Set(opens.map(({ key, version }) => `${key} ${version}`));
  const known = after.rulebook.rules.filter((rule) => rule.known.to === Infinity);
  const lost = new Map<PartKey, { place: PartPlace; loss: PartLoss }[]>();
  for (const place of placesOf([...changed, ...known], changed, after.rulebook)) {
    const loss = partLoss(old, young, place, ({ key, version }) => opened.has(`${key} ${version}`));
    if (loss) lost.set(place.part, [...(lost.get(place.part) ?? []), { place, loss }]);
  }
  return [...lost].map(([part, losses]) => {
    const good = placesOf(known, known, after.rulebook, part).flatMap((place) =>
      whereGood(young, place).map((where) => `Still right at ${sayPosition(place, naming)}: ${sayPlace(where)}.`),
    );
    return {
      part,
      kind: losses.some(({ loss }) => loss.bars.length > 0) ? 'barred' : 'ended',
      stillGood: good.length > 0,
      sentences: [...losses.flatMap((one) => sayLoss(one, naming)), ...good.slice(0, MOST_STILL)],
    };
  });
}

/** The positions of `at`, each with the parts that some rule names there and those that may stand in for them. */
function placesOf(
  rules: readonly FitRule[],
  at: readonly FitRule[],
  { supersessions }: Rulebook,
  only?: PartKey,
): readonly PartPlace[] {
  const wanted = new Set(at.flatMap(({ line, positions }) => positions.map((one) => JSON.stringify([line, one]))));
  const places = new Map<string, PartPlace>();
  for (const { line, positions, ...rule } of rules) {
    const named = [
      ...(rule.required === null ? [] : [rule.required]),
      ...rule.allowed,
      ...rule.barred.map((b) => b.part),
    ];
    const beside = supersessions.flatMap(({ from, to }) =>
      to !== null && (named.includes(from) || named.includes(to)) ? [from, to] : [],
    );
    for (const position of positions) {
      if (!wanted.has(JSON.stringify([line, position]))) continue;
      for (const part of new Set([...named, ...beside])) {
        if (only !== undefined && part !== only) continue;
        places.set(JSON.stringify([line, position, part]), { line, position, part });
      }
    }
  }
  return [...places.values()];
}

function sayPosition({ line, position }: PartPlace, naming: LoadedRulebook['naming']): string {
  return `${naming.position(position, line)}, ${naming.line(line)}`;
}

function sayLoss(
  { place, loss: { where, bars } }: { place: PartPlace; loss: PartLoss },
  naming: LoadedRulebook['naming'],
): readonly string[] {
  const why = [...new Set(bars.map((bar) => sayBarReason(bar)))].join('; ');
  const what = bars.length > 0 ? 'Barred' : 'No longer right';
  return where.map(
    (one) => `${what} at ${sayPosition(place, naming)}${why === '' ? '' : ` (${why})`}: ${sayPlace(one)}.`,
  );
}
