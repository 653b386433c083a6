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
import { groupBy } from '../group-by';
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
  const places = new PlacesOfParts(after.rulebook);
  const lost = new Map<PartKey, { place: PartPlace; loss: PartLoss }[]>();
  for (const place of places.at([...changed, ...known], changed)) {
    const loss = partLoss(old, young, place, ({ key, version }) => opened.has(`${key} ${version}`));
    if (loss) lost.set(place.part, [...(lost.get(place.part) ?? []), { place, loss }]);
  }
  const everywhere = groupBy(lost.size === 0 ? [] : places.at(known, known), partOf);
  return [...lost].map(([part, losses]) => {
    const good = (everywhere.get(part) ?? []).flatMap((place) =>
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

/** Which parts could go where, by the rules that name them or one they stand in for. */
class PlacesOfParts {
  /** Each part with those it replaces or is replaced by. */
  private readonly beside = new Map<PartKey, Set<PartKey>>();

  constructor({ supersessions }: Rulebook) {
    for (const { from, to } of supersessions) if (to !== null) for (const one of [from, to]) this.add(one, [from, to]);
  }

  /** The positions of `wanted`, each with the parts that some of the rules names there and those that may stand in. */
  at(rules: readonly FitRule[], wanted: readonly FitRule[]): readonly PartPlace[] {
    const positions = new Set(wanted.flatMap((rule) => rule.positions.map((one) => placeKey(rule.line, one))));
    const places = new Map<string, PartPlace>();
    for (const rule of rules) {
      const here = rule.positions.filter((one) => positions.has(placeKey(rule.line, one)));
      if (here.length === 0) continue;
      const parts = this.partsOf(rule);
      for (const position of here)
        for (const part of parts) places.set(placeKey(rule.line, position, part), { line: rule.line, position, part });
    }
    return [...places.values()];
  }

  private partsOf({ required, allowed, barred }: FitRule): ReadonlySet<PartKey> {
    const named = [...(required === null ? [] : [required]), ...allowed, ...barred.map((bar) => bar.part)];
    return new Set(named.flatMap((part) => [part, ...(this.beside.get(part) ?? [])]));
  }

  private add(part: PartKey, others: readonly PartKey[]): void {
    const known = this.beside.get(part) ?? new Set();
    for (const other of others) known.add(other);
    this.beside.set(part, known);
  }
}

const placeKey = (...names: readonly string[]): string => names.join('\n');
const partOf = ({ part }: PartPlace): PartKey => part;

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
