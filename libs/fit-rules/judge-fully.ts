import { intersectionOf, type Day } from '../day';
import type { PartKey } from '../part-number';
import { actions, type Action, type RuleRef } from './fit-rule';
import { NO, outcomeBits, partOutcome, thenVerdictOf } from './part-outcome';
import { byText } from './prepared-rule';
import type { RulebookHistory } from './rulebook-history';
import { rulingFor, stretchesWithin } from './ruling-for';
import type { UnitFacts } from './unit-facts';
import type { JudgedPiece, Judgement, PartJudgement, PartQuestion, ThenVerdict, Verdict } from './verdict';

/** What a judgement rests on, besides the question. */
export interface JudgedAt {
  readonly history: RulebookHistory;
  readonly today: Day;
  readonly now: number;
  readonly endOfDay: (day: Day) => number;
}

/** The verdict on one part in one place, with everything a person needs to check it. */
export function judgeFully(at: JudgedAt, question: PartQuestion): Judgement {
  const { unit, position } = question;
  const parts = [...new Set(question.parts)].sort();
  const candidates = parts.map((part) => judgePart(at, question, part));
  const verdict = jointVerdict(candidates.map((one) => one.verdict));
  const pieces = candidates.flatMap((one) => one.pieces);
  const bars = eachOnce(
    pieces.flatMap((piece) => piece.bars),
    (bar) => `${bar.rule.key} ${bar.rule.version} ${bar.part}`,
  );
  const deciding = eachOnce([...pieces.flatMap((piece) => piece.deciding), ...bars.map(({ rule }) => rule)], refText);
  const late = verdict === 'outdated' || verdict === 'wrong';
  return {
    question,
    verdict,
    candidates,
    couldHaveKnown: late ? couldHaveKnown(candidates) : null,
    deciding,
    bars,
    action: late ? strongestAction(ruleActions(at, question, deciding)) : 'nothing',
    ruling: rulingFor({ inForceOn: at.today, knownAt: at.now, history: at.history }, unit, position),
  };
}

/** Candidates that all get one verdict share it; otherwise, and when there is none, nothing can be decided. */
export function jointVerdict(all: readonly Verdict[]): Verdict {
  const first = all[0];
  return first !== undefined && all.every((one) => one === first) ? first : 'undecided';
}

function couldHaveKnown(candidates: readonly PartJudgement[]): boolean | null {
  if (candidates.some(({ thenAsKnown }) => thenAsKnown === null)) return null;
  return candidates.every(({ thenAsKnown }) => thenAsKnown === 'no');
}

function judgePart(at: JudgedAt, { unit, position, fittedOn }: PartQuestion, part: PartKey): PartJudgement {
  const pieces = judgedPieces(at, unit, position, part);
  const bits = pieces.reduce((all, { outcome }) => all | outcomeBits[outcome], 0);
  const then = thenVerdict(at, unit, position, part, fittedOn, at.now);
  const thenAsKnown = fittedOn === null ? null : thenVerdict(at, unit, position, part, fittedOn, at.endOfDay(fittedOn));
  return { part, verdict: verdictOf(bits, then), pieces, then, thenAsKnown };
}

function verdictOf(bits: number, then: ThenVerdict): Verdict {
  if (bits === NO) return then === 'right' || then === 'allowed' ? 'outdated' : 'wrong';
  return thenVerdictOf(bits) as Exclude<ThenVerdict, 'no'>;
}

function judgedPieces(at: JudgedAt, unit: UnitFacts, position: string, part: PartKey): JudgedPiece[] {
  const variants = at.history.book(unit.line, position).variantsOf(unit, at.today, at.now);
  return variants.flatMap(({ stretches, where }) =>
    stretchesWithin(stretches, unit.built).map(({ built, weighed }) => ({
      where: { ...where, built: [built] },
      outcome: partOutcome(weighed, part, at.history.graph, at.now),
      deciding: weighed.deciding,
      bars: weighed.outcome.barred.filter((bar) => bar.part === part),
    })),
  );
}

/** The verdict by the papers of the fitting day; of each build day, piece by piece, when it came with the unit. */
function thenVerdict(
  at: JudgedAt,
  unit: UnitFacts,
  position: string,
  part: PartKey,
  fittedOn: Day | null,
  knownAt: number,
): ThenVerdict {
  const book = at.history.book(unit.line, position);
  const days = fittedOn === null ? book.inForceCuts : [fittedOn];
  let bits = 0;
  days.forEach((from, i) => {
    const within = fittedOn === null ? [{ from, to: days[i + 1] ?? Infinity }] : unit.built;
    const built = intersectionOf(unit.built, within);
    if (built.length === 0) return;
    for (const { stretches } of book.variantsOf(unit, from, knownAt)) {
      for (const { weighed } of stretchesWithin(stretches, built)) {
        bits |= outcomeBits[partOutcome(weighed, part, at.history.graph, knownAt)];
      }
    }
  });
  return thenVerdictOf(bits);
}

function ruleActions(at: JudgedAt, { unit, position }: PartQuestion, deciding: readonly RuleRef[]): Action[] {
  const book = at.history.book(unit.line, position);
  return deciding.map((ref) => book.ruleOf(ref)!.action);
}

/** The strongest of the actions; `nothing` when there is none. */
export function strongestAction(all: readonly Action[]): Action {
  return actions[Math.max(0, ...all.map((action) => actions.indexOf(action)))]!;
}

function refText({ key, version }: RuleRef): string {
  return `${key} ${version}`;
}

function eachOnce<T>(all: readonly T[], keyOf: (one: T) => string): T[] {
  const byKey = new Map<string, T>();
  for (const one of all) if (!byKey.has(keyOf(one))) byKey.set(keyOf(one), one);
  return [...byKey.keys()].sort(byText).map((key) => byKey.get(key)!);
}
