import type { VerdictView, VerdictWord } from '../../contracts';
import { saySpan } from '../../day';
import { sayBarReason, sayVerdict, saySerials, type Judgement, type ThenVerdict } from '../../fit-rules';
import { strengthOf } from '../judge-installs';
import { namingOf, sourceOfRule, type Names } from './naming-of';
import { partRefOf } from './part-ref';
import { sourceRef } from './ruling-view';

/** A judgement for the page: the verdict in one glance, the rule behind it, its dates, and how bad a wrong part is. */
export function verdictView(judgement: Judgement, names: Names): VerdictView {
  const words = sayVerdict(judgement, namingOf(names));
  const decider = judgement.deciding[0] ?? null;
  const rule = decider && (names.rulebook.ruleOf(decider) ?? null);
  const source = decider && sourceOfRule(names.rulebook, decider);
  const required = requiredPart(judgement);
  const late = judgement.verdict === 'wrong' || judgement.verdict === 'outdated';
  const bar = judgement.bars[0];
  return {
    verdict: judgement.verdict,
    sentence: words.technician,
    ownerSentence: words.owner,
    required: required === null ? null : partRefOf(required, names.partsByKey),
    rule: rule?.key ?? null,
    source: source && sourceRef(source),
    builtSpan: rule ? sayBuilt(rule) : '',
    inForceSpan: rule ? saySpan(rule.inForce) : '',
    action: late ? judgement.action : null,
    barredWhy: bar ? sayBarReason(bar) : null,
    thenVerdict: thenOf(judgement),
    couldHaveKnown: judgement.couldHaveKnown,
    revision: names.rulebook.revision,
    strength: strengthOf(judgement, names.rulebook),
  };
}

/** The part that is required wherever something decides, when that is one part; null otherwise. */
export function requiredPart({ ruling }: Pick<Judgement, 'ruling'>): string | null {
  const required = ruling.pieces.flatMap(({ outcome }) =>
    outcome.kind === 'decided' ? [outcome.saying.required] : [],
  );
  return new Set(required).size === 1 ? required[0]! : null;
}

function sayBuilt({
  built,
  serials,
}: {
  built: Parameters<typeof saySpan>[0];
  serials: Parameters<typeof saySerials>[0] | null;
}) {
  return serials === null ? saySpan(built) : `${saySpan(built)}, ${saySerials(serials)}`;
}

/** By the papers of another day there is no "outdated", only "no", which the page shows as wrong. */
function thenOf({ candidates }: Judgement): VerdictWord | null {
  const words = new Set<ThenVerdict>(candidates.map((one) => one.then));
  const [only] = words;
  if (words.size !== 1 || only === undefined) return null;
  return only === 'no' ? 'wrong' : only;
}
