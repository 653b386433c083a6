import type { Day } from '../day';
import { BulkJudge } from './bulk-judge';
import type { Rulebook } from './fit-rule';
import { judgeFully } from './judge-fully';
import { QuestionClasses } from './question-classes';
import { RulebookHistory } from './rulebook-history';
import type { Ruling } from './ruling';
import { rulingFor } from './ruling-for';
import type { UnitFacts } from './unit-facts';
import type { Judgement, PartQuestion } from './verdict';

export interface JudgeOptions {
  /** Today at the shop. */
  readonly today: Day;
  /** Epoch milliseconds. */
  readonly now: number;
  /** The last instant of a civil day at the shop, in epoch milliseconds; the day in UTC when left out. */
  readonly endOfDay?: (day: Day) => number;
}

const MILLISECONDS_A_DAY = 86_400_000;

/** The last millisecond of the day in UTC. */
export function endOfDayUtc(day: Day): number {
  return (day + 1) * MILLISECONDS_A_DAY - 1;
}

/**
 * Judges parts against one rulebook, by the papers of today as known now. Made once, asked often: what it works out for
 * a line and a position it keeps. Give it a rulebook with rules that are not published yet, and it answers "what if".
 */
export class Judge {
  readonly today: Day;
  readonly now: number;
  private readonly history: RulebookHistory;
  private readonly endOfDay: (day: Day) => number;
  private readonly classes: QuestionClasses;
  private fast: BulkJudge | null = null;

  constructor(rulebook: Rulebook, { today, now, endOfDay }: JudgeOptions) {
    this.today = today;
    this.now = now;
    this.endOfDay = endOfDay ?? endOfDayUtc;
    this.history = new RulebookHistory(rulebook);
    this.classes = new QuestionClasses(this.history);
  }

  /** What is right in the position; by other papers or other knowledge where `at` names them. */
  ruling(unit: UnitFacts, position: string, at: { inForceOn?: Day; knownAt?: number } = {}): Ruling {
    const { inForceOn = this.today, knownAt = this.now } = at;
    return rulingFor({ inForceOn, knownAt, history: this.history }, unit, position);
  }

  /** The verdict with its reasons. For many verdicts without reasons, use {@link bulk}. */
  judge(question: PartQuestion): Judgement {
    const { history, today, now, endOfDay } = this;
    return judgeFully({ history, today, now, endOfDay }, question);
  }

  /**
   * Questions of one class are judged alike, in the same words: whoever asks many need ask one of each. What repeats the
   * question itself (its unit, the build days of a piece) is that of the one that was asked.
   */
  classOf(question: PartQuestion): string {
    return this.classes.of(question);
  }

  /** The fast path: the same verdicts as numbers, without reasons. */
  get bulk(): BulkJudge {
    return (this.fast ??= new BulkJudge(this.history, this.today, this.now));
  }
}

/** Makes a judge; see {@link Judge}. */
export function createJudge(rulebook: Rulebook, options: JudgeOptions): Judge {
  return new Judge(rulebook, options);
}
