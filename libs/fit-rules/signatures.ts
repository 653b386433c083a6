import type { Day, DaySet, DaySpan } from '../day';
import type { PartKey } from '../part-number';
import type { Action, BarReason, FitRule, Rulebook, RuleRef } from './fit-rule';
import type { FitRuleFile, RulebookFile, UnitFactsFile } from './fit-rule-file';
import type { Ruling } from './ruling';
import type { UnitFacts } from './unit-facts';
import type { Judgement, PartQuestion, Verdict } from './verdict';

// ---- files
/** One sentence a person can act on: the rule (or source, supersession), the field, the value, what is accepted. */
export interface FileProblem {
  readonly place: string;
  readonly field: string;
  readonly message: string;
}
export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly FileProblem[] };
export declare function readFitRule(file: unknown): Read<FitRule>;
export declare function readRulebook(file: unknown): Read<Rulebook>;
export declare function readUnitFacts(file: unknown): Read<UnitFacts>;
export declare function writeFitRule(rule: FitRule): FitRuleFile;
export declare function writeRulebook(rulebook: Rulebook): RulebookFile;
export declare function writeUnitFacts(unit: UnitFacts): UnitFactsFile;

// ---- one day, one instant
export interface CompiledRulebook {
  readonly inForceOn: Day;
  readonly knownAt: number;
}
export declare function compileRulebook(rulebook: Rulebook, at: { inForceOn: Day; knownAt: number }): CompiledRulebook;
export declare function rulingFor(compiled: CompiledRulebook, unit: UnitFacts, position: string): Ruling;

// ---- judging
export interface JudgeOptions {
  /** Today at the shop. */
  readonly today: Day;
  /** Epoch milliseconds. */
  readonly now: number;
  /** The last instant of a civil day at the shop; UTC when left out. */
  readonly endOfDay?: (day: Day) => number;
}
export interface Judge {
  readonly today: Day;
  readonly now: number;
  ruling(unit: UnitFacts, position: string, at?: { inForceOn?: Day; knownAt?: number }): Ruling;
  judge(question: PartQuestion): Judgement;
  readonly bulk: BulkJudge;
}
export declare function createJudge(rulebook: Rulebook, options: JudgeOptions): Judge;

/**
 * The fast path. A slot stands for one (line, model, options, serial, position): ask for it once per unit and place,
 * then judge as many parts as wanted. Days are whole numbers; OPEN_START and OPEN_END stand for open ends.
 */
export interface BulkJudge {
  slotOf(unit: Omit<UnitFacts, 'built'>, position: string): number;
  /** -1 for a part that no rule and no supersession names: every such part is judged alike. */
  partIndex(part: PartKey): number;
  /** Index into `verdicts`. `fittedOn` CAME_WITH_UNIT: fitted on the build day. */
  verdictCode(slot: number, part: number, builtFrom: number, builtTo: number, fittedOn: number): number;
  verdictCodeOfSet(slot: number, parts: readonly number[], built: DaySet, fittedOn: number): number;
}

// ---- words
export interface VerdictWords {
  readonly technician: string;
  readonly owner: string;
}
export interface Naming {
  readonly part?: (part: PartKey) => string;
  readonly position?: (position: string) => string;
  readonly rule?: (rule: RuleRef) => string;
}
export declare function sayVerdict(judgement: Judgement, naming?: Naming): VerdictWords;
export declare function sayRuling(ruling: Ruling, naming?: Naming): readonly string[];
export declare function explain(judgement: Judgement, rulebook: Rulebook, naming?: Naming): readonly string[];

// ---- flags
export type Severity = 'note' | 'caution' | 'serious' | 'urgent';
export declare function severityOf(about: {
  verdict: Verdict;
  action: Action;
  barReasons: readonly BarReason[];
  /** Break-away torque of the fitted part over that of the required one; null when not known. */
  strength: { low: number; high: number } | null;
}): Severity;

// ---- rechecks
export interface RuleScope {
  readonly line: string;
  readonly models: readonly string[];
  readonly positions: readonly string[];
  readonly built: DaySpan;
}
/** Which installs the changed rules can touch: nothing outside these scopes can get another verdict through them. */
export declare function scopeOfRules(changed: readonly FitRule[]): readonly RuleScope[];
/** The next day after `day` on which some rule known at the instant comes into force or ends; null when none does. */
export declare function nextInForceDay(rulebook: Rulebook, day: Day, knownAt: number): Day | null;
