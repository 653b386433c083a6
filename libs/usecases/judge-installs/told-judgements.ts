import type { StrengthView } from '../../contracts';
import type { PartQuestion, Verdict } from '../../fit-rules';
import type { LoosePart } from '../ports/install-store';
import type { LoadedRulebook } from '../rulebook';
import type { JudgementRecord } from './judgement-record';

/** A judgement with its reasons, put into words. */
export interface ToldJudgement {
  readonly verdict: Verdict;
  readonly record: JudgementRecord;
  readonly strength: StrengthView | null;
}

/** Enough for a chunk of a recheck; each takes a few kilobytes. */
const MOST_KEPT = 4_000;

/** The judgements told by one rulebook, kept for as long as it is: one for each class of questions and way of holding. */
export class ToldJudgements {
  private readonly told = new Map<string, ToldJudgement>();

  private constructor(private readonly rulebook: LoadedRulebook) {}

  static of(rulebook: LoadedRulebook): ToldJudgements {
    let judgements = kept.get(rulebook);
    if (!judgements) kept.set(rulebook, (judgements = new ToldJudgements(rulebook)));
    return judgements;
  }

  nameOf(question: PartQuestion, loose: LoosePart | null): string {
    const name = this.rulebook.judge.classOf(question);
    return loose === null ? name : `${name} ${loose.purpose} ${loose.quantity}`;
  }

  find(name: string): ToldJudgement | undefined {
    return this.told.get(name);
  }

  keep(name: string, judgement: ToldJudgement): ToldJudgement {
    if (this.told.size >= MOST_KEPT) this.told.clear();
    this.told.set(name, judgement);
    return judgement;
  }
}

const kept = new WeakMap<LoadedRulebook, ToldJudgements>();
