import type { DaySpan } from '../day';
import type { KnownSpan, PartKey, Supersession } from '../part-number';
import type { Source, Standing } from './source';

/** What is to be done about units that are already out, mildest first. */
export const actions = ['nothing', 'next-service', 'call-back', 'stop-use'] as const;
export type Action = (typeof actions)[number];

/** Why a part is barred. `breaks-later`: the drive line is at risk; `breaks-sooner`: nuisance failures. */
export const barReasons = ['breaks-later', 'breaks-sooner', 'does-not-fit', 'unsafe', 'other'] as const;
export type BarReason = (typeof barReasons)[number];

export interface Bar {
  readonly part: PartKey;
  readonly reason: BarReason;
  /** The paper's reason in the shop's words; may be empty. */
  readonly note: string;
  /** The paper says that fitting it ends the maker's warranty; left out where it says nothing of that. */
  readonly voidsWarranty?: true;
}

/** The rule speaks only of units that have the option fitted (or only of those that have not). */
export interface OptionCondition {
  readonly option: string;
  readonly fitted: boolean;
}

/** Serial keys of one scheme from `from` up to, not including, `to`; null is an open side. Keys compare with `<`. */
export interface SerialSpan {
  readonly scheme: string;
  readonly from: string | null;
  readonly to: string | null;
}

/** What one paper says about some positions of some units. One version: nothing is overwritten. */
export interface FitRule {
  readonly key: string;
  readonly version: number;
  readonly line: string;
  /** Models of the line; empty means every model. */
  readonly models: readonly string[];
  /** All of these must hold. */
  readonly options: readonly OptionCondition[];
  readonly positions: readonly string[];
  readonly built: DaySpan;
  readonly serials: SerialSpan | null;
  readonly inForce: DaySpan;
  readonly known: KnownSpan;
  /** Key of the source. */
  readonly source: string;
  readonly required: PartKey | null;
  readonly allowed: readonly PartKey[];
  readonly barred: readonly Bar[];
  readonly action: Action;
  /** Keys of rules that this one takes the place of, wherever both cover a unit. */
  readonly replaces: readonly string[];
}

/** Names one version of one rule. */
export interface RuleRef {
  readonly key: string;
  readonly version: number;
}

/** All that a shop has ever held true about parts: every version of every rule, with the papers behind them. */
export interface Rulebook {
  readonly rules: readonly FitRule[];
  readonly sources: readonly Source[];
  readonly supersessions: readonly Supersession[];
  readonly standing: Standing;
}
