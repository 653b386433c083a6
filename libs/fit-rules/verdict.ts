import type { Day } from '../day';
import type { PartKey } from '../part-number';
import type { Action, RuleRef } from './fit-rule';
import type { HeldBar, PieceWhere, Ruling } from './ruling';
import type { UnitFacts } from './unit-facts';

/** The judgement on one part in one place. */
export const verdicts = ['right', 'allowed', 'outdated', 'wrong', 'undecided', 'disputed'] as const;
export type Verdict = (typeof verdicts)[number];

/** What one piece says of one part. */
export type PartOutcome = 'required' | 'allowed' | 'no' | 'nothing-said' | 'disputed';

/** A verdict by the papers of another day: there is no "outdated" then, only `no`. */
export type ThenVerdict = 'right' | 'allowed' | 'no' | 'undecided' | 'disputed';

/** One part in one place of one unit. */
export interface PartQuestion {
  readonly unit: UnitFacts;
  readonly position: string;
  /** The part; or, when it is told by its marks, every part it can be. Empty: it cannot be told at all. */
  readonly parts: readonly PartKey[];
  /** The day it was fitted; null when it came with the unit or the day is not known. */
  readonly fittedOn: Day | null;
}

/** One piece seen from one part, with the rules that decide there and the bars on this part. */
export interface JudgedPiece {
  readonly where: PieceWhere;
  readonly outcome: PartOutcome;
  readonly deciding: readonly RuleRef[];
  readonly bars: readonly HeldBar[];
}

/** The verdict on one known part. */
export interface PartJudgement {
  readonly part: PartKey;
  readonly verdict: Verdict;
  readonly pieces: readonly JudgedPiece[];
  /** By the papers in force on the day it was fitted, as known now. */
  readonly then: ThenVerdict;
  /** By the same papers, as the shop knew at the end of that day; null when it came with the unit. */
  readonly thenAsKnown: ThenVerdict | null;
}

/** The verdict with everything a person needs to check it. */
export interface Judgement {
  readonly question: PartQuestion;
  readonly verdict: Verdict;
  /** One per candidate part, in order of their keys. */
  readonly candidates: readonly PartJudgement[];
  /**
   * For outdated and wrong: whether the papers the shop held on the day of fitting already gave a plain `no`.
   * Null for other verdicts and for a part that came with the unit.
   */
  readonly couldHaveKnown: boolean | null;
  /** The deciding rules over all pieces, and those whose bar holds on this part. */
  readonly deciding: readonly RuleRef[];
  /** The bars that hold on a candidate part. */
  readonly bars: readonly HeldBar[];
  /** The strongest action of those rules when the verdict is outdated or wrong; else `nothing`. */
  readonly action: Action;
  readonly ruling: Ruling;
}
