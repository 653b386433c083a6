import type { Standing, UnitFactsFile } from '../../fit-rules';

/** When a question was asked, and by what weight of papers. */
export interface AskedAt {
  /** Day `YYYY-MM-DD`. */
  readonly today: string;
  /** ISO 8601, as known then. */
  readonly now: string;
  /** Kept only where the shop had set its own; a standing has no versions. */
  readonly standing?: Standing;
}

/**
 * What a verdict was asked with. No version of a rule is ever overwritten, so the question and its two clocks are enough
 * to give the same verdict again from the rulebook of any later day. It knows nothing of the rulebook, so that the
 * store's ports can name it.
 */
export interface KeptQuestion extends AskedAt {
  readonly unit: UnitFactsFile;
  readonly position: string;
  readonly parts: readonly string[];
  /** Days `YYYY-MM-DD`. */
  readonly fittedOn: string | null;
}
