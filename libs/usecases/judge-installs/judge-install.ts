import type { StrengthView } from '../../contracts';
import {
  CAME_WITH_UNIT,
  sayVerdict,
  severityOf,
  verdicts,
  type Judgement,
  type PartQuestion,
  type Verdict,
} from '../../fit-rules';
import type { HeldInstall, LoosePart } from '../ports/install-store';
import type { LoadedRulebook } from '../rulebook';
import type { JudgementRecord, KeptStrength } from './judgement-record';
import { askedAt } from './kept-question';
import { ToldJudgements, type ToldJudgement } from './told-judgements';

/** An install with its verdict of now. `record` is null where the verdict is good and stayed as it was. */
export interface JudgedInstall {
  readonly install: HeldInstall;
  readonly verdict: Verdict;
  readonly record: JudgementRecord | null;
  /** How a shear fastener that is not the required one compares with it; null where there is nothing to compare. */
  readonly strength: StrengthView | null;
}

/**
 * Judges one install. Of installs that are judged alike, one is judged with its reasons and put into words, and what
 * comes of it serves them all. One of a kind that was not met yet is judged by numbers first, and with reasons only where
 * something follows from them.
 */
export function judgeInstall(install: HeldInstall, rulebook: LoadedRulebook): JudgedInstall {
  const { unit, position, parts, fittedOn, loose } = install;
  const question = { unit: unit.facts, position, parts, fittedOn };
  const told = ToldJudgements.of(rulebook);
  const name = told.nameOf(question, loose);
  const known = told.find(name);
  const verdict = known?.verdict ?? quickVerdict(install, rulebook);
  const good = verdict === 'right' || verdict === 'allowed';
  if (good && verdict === install.verdict) return { install, verdict, record: null, strength: null };
  return { install, ...(known ?? told.keep(name, tell(question, rulebook, loose))) };
}

function tell(question: PartQuestion, rulebook: LoadedRulebook, loose: LoosePart | null): ToldJudgement {
  const judgement = rulebook.judge.judge(question);
  const strength = strengthOf(judgement, rulebook);
  return { verdict: judgement.verdict, record: recordOf(judgement, rulebook, loose, strength), strength };
}

function quickVerdict({ unit, position, parts, fittedOn }: HeldInstall, { judge }: LoadedRulebook): Verdict {
  const { bulk } = judge;
  const numbers = parts.map((part) => bulk.partIndex(part));
  const slot = bulk.slotOf(unit.facts, position);
  return verdicts[bulk.verdictCodeOfSet(slot, numbers, unit.facts.built, fittedOn ?? CAME_WITH_UNIT)]!;
}

/** What is kept of a judgement. */
export function recordOf(
  judgement: Judgement,
  rulebook: LoadedRulebook,
  loose: LoosePart | null = null,
  strength: StrengthView | null = strengthOf(judgement, rulebook),
): JudgementRecord {
  const held = loose && {
    as: loose.purpose === 'spare' ? ('spare' as const) : ('picked' as const),
    quantity: loose.quantity,
  };
  const words = sayVerdict(judgement, rulebook.naming, held);
  const rules = judgement.deciding.map((ref) => {
    const { source, action } = rulebook.ruleOf(ref)!;
    return { key: ref.key, version: ref.version, source, action };
  });
  const required = requiredPart(judgement);
  return {
    action: judgement.action,
    rules,
    source: only(rules.map((rule) => rule.source)),
    required,
    barredWhy: judgement.bars[0] ? judgement.bars[0].note || judgement.bars[0].reason : null,
    then: only(judgement.candidates.map((one) => one.then)),
    couldHaveKnown: judgement.couldHaveKnown,
    technician: words.technician,
    owner: words.owner,
    severity: severityOf({
      verdict: judgement.verdict,
      action: judgement.action,
      barReasons: judgement.bars.map((bar) => bar.reason),
      strength: strength?.fitted ? strength.severity : null,
    }),
    strength: strength && keptOf(strength),
    asked: askedAt(rulebook),
  };
}

/** The strength behind a verdict on one known part where one part is required. */
export function strengthOf(judgement: Judgement, { strengths }: LoadedRulebook): StrengthView | null {
  const { unit, position, parts } = judgement.question;
  const required = requiredPart(judgement);
  if (required === null || parts.length !== 1) return null;
  return strengths.compare(unit.line, position, parts[0]!, required);
}

function keptOf({ sentences, caution: _, ...figures }: StrengthView): KeptStrength {
  return { ...figures, sentence: sentences[0]! };
}

function requiredPart({ ruling }: Judgement): string | null {
  const required = ruling.pieces.map(({ outcome }) => (outcome.kind === 'decided' ? outcome.saying.required : null));
  return only(required);
}

/** The value when all are the same; null when there is none or they differ. */
function only<T>(all: readonly T[]): T | null {
  const first = all[0];
  return first !== undefined && all.every((one) => one === first) ? first : null;
}
