import type { RuleRef } from './fit-rule';
import type { LiftedBar, Outcome, OverriddenRule } from './ruling';

/** How the rules that cover one stretch were weighed against each other. */
export interface Weighed {
  readonly outcome: Outcome;
  readonly deciding: readonly RuleRef[];
  readonly overridden: readonly OverriddenRule[];
  readonly lifted: readonly LiftedBar[];
  /** Two stretches with the same key have the same outcome. */
  readonly key: string;
}
