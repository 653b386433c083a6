import type { StrengthView } from '../../contracts';
import type { Action, RuleRef, Severity, ThenVerdict } from '../../fit-rules';
import type { AskedAt } from './question-record';

/** The strength figures of a shear fastener that is not the required one, with the answer in one sentence. */
export type KeptStrength = Omit<StrengthView, 'sentences' | 'caution'> & { readonly sentence: string };

/**
 * What is kept of a judgement: enough to tell why without judging again. Installs that are judged alike share one, so it
 * says nothing of the unit; with what the install holds and what its unit was then, it can be judged again.
 */
export interface JudgementRecord {
  readonly action: Action;
  /** The deciding rules and those whose bar holds, each with its source. */
  readonly rules: readonly (RuleRef & { readonly source: string; readonly action: Action })[];
  /** Key of the source that decides; null when nothing decides or several do. */
  readonly source: string | null;
  /** Part key, when every piece that decides requires the same part. */
  readonly required: string | null;
  readonly barredWhy: string | null;
  readonly then: ThenVerdict | null;
  readonly couldHaveKnown: boolean | null;
  /** What the bench reads. */
  readonly technician: string;
  /** What the owner is told. */
  readonly owner: string;
  readonly severity: Severity;
  /** When it was asked; absent in records kept before questions were. */
  readonly asked?: AskedAt;
  /** How a shear fastener compares with the required one; null where there is nothing to compare. */
  readonly strength: KeptStrength | null;
}
