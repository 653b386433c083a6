import type { Day, DaySet, DaySpan } from '../day';
import type { PartKey } from '../part-number';
import type { Bar, OptionCondition, RuleRef, SerialSpan } from './fit-rule';

/** A bar that holds, and the rule that sets it. */
export interface HeldBar extends Bar {
  readonly rule: RuleRef;
}

/** A bar that was set and does not hold, with the rule of higher standing that requires or allows the part. */
export interface LiftedBar extends HeldBar {
  readonly by: RuleRef;
}

/** Why a rule that covers a piece does not decide there. */
export type LostBecause =
  | { readonly code: 'replaced'; readonly by: RuleRef }
  | { readonly code: 'lower-standing'; readonly than: RuleRef }
  | { readonly code: 'issued-earlier'; readonly than: RuleRef }
  | { readonly code: 'only-bars' };

export interface OverriddenRule {
  readonly rule: RuleRef;
  readonly because: LostBecause;
}

/** What the deciding rules say; several when they tie and say different things. Parts in order of their keys. */
export interface Saying {
  readonly required: PartKey | null;
  readonly allowed: readonly PartKey[];
  readonly rules: readonly RuleRef[];
}

/**
 * The answer in one piece. Two pieces have the same outcome exactly when what is said is the same: the kind, the
 * required part, the allowed parts that are not barred, and (where nothing is said, or the bar makes the dispute) the
 * barred parts. Bars are listed whole for the reader.
 */
export type Outcome =
  | { readonly kind: 'decided'; readonly saying: Saying; readonly barred: readonly HeldBar[] }
  | {
      readonly kind: 'disputed';
      readonly why: 'rules-tie' | 'required-and-barred';
      readonly sayings: readonly Saying[];
      readonly barred: readonly HeldBar[];
    }
  | { readonly kind: 'nothing-said'; readonly barred: readonly HeldBar[] };

/**
 * Where a piece lies. `model`, `serial` and `options` name only what is not known of the unit and is therefore cut; a serial of
 * `another-scheme` lies in none of the schemes that the rules name (or there is none).
 */
export interface PieceWhere {
  readonly built: DaySet;
  /** A model that is not known is cut too: one the rules name, or any other. */
  readonly model: { readonly only: string } | 'another-model' | null;
  readonly serial: SerialSpan | 'another-scheme' | null;
  readonly options: readonly OptionCondition[];
}

/** One stretch of build dates on which the same rules speak, and how they were weighed. */
export interface Ground {
  readonly built: DaySpan;
  readonly deciding: readonly RuleRef[];
  readonly overridden: readonly OverriddenRule[];
  readonly barred: readonly HeldBar[];
  readonly lifted: readonly LiftedBar[];
}

/** Neighbouring stretches with the same outcome, joined. */
export interface RulingPiece {
  readonly where: PieceWhere;
  readonly outcome: Outcome;
  readonly grounds: readonly Ground[];
}

/** A boundary that parts two outcomes: what a person would have to find out. */
export type Boundary =
  /** Built before `at` one outcome, on `at` or later another. `after` is the last possible day before it. */
  | { readonly axis: 'built'; readonly at: Day; readonly after: Day }
  | { readonly axis: 'serial'; readonly scheme: string; readonly at: string }
  /** Not the key, but the scheme that the serial is written in decides. */
  | { readonly axis: 'serial-scheme'; readonly schemes: readonly string[] }
  | { readonly axis: 'option'; readonly option: string }
  | { readonly axis: 'model'; readonly models: readonly string[] };

/** A fact that is not known and makes no difference to the answer. */
export type NotNeeded =
  | { readonly fact: 'build-date' }
  | { readonly fact: 'serial' }
  | { readonly fact: 'model' }
  | { readonly fact: 'option'; readonly option: string };

/** The answer for one unit and position, by the papers of one day, as known at one instant. */
export interface Ruling {
  readonly position: string;
  readonly inForceOn: Day;
  /** Epoch milliseconds. */
  readonly knownAt: number;
  /** In order of model, serial scheme and key, options, build date. Empty only when no build date is possible. */
  readonly pieces: readonly RulingPiece[];
  /** One outcome over every piece, and something decides it. */
  readonly settled: boolean;
  readonly boundaries: readonly Boundary[];
  readonly notNeeded: readonly NotNeeded[];
}
