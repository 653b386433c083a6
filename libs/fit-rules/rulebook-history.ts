import type { Day } from '../day';
import { SupersessionGraph, type PartKey } from '../part-number';
import type { FitRule, Rulebook, RuleRef } from './fit-rule';
import { FactsClasses } from './facts-classes';
import { cutsOf, PositionTable, type Variant } from './position-table';
import { inFixedOrder, preparing, type PreparedRule, type PrepareRule } from './prepared-rule';
import { usualStanding } from './source';
import type { SlotFacts } from './unit-facts';

/** Every version of the rules of one line and position, with tables made for the days and instants asked about. */
export class PositionBook {
  /** Days on which some rule comes into force or goes out of it; -Infinity first. */
  readonly inForceCuts: readonly Day[];
  private readonly knownCuts: readonly number[];
  private readonly models: ReadonlySet<string>;
  private readonly tables = new Map<string, PositionTable>();
  private made: FactsClasses | null = null;

  /** Every version of every rule, in one fixed order. */
  readonly rules: readonly PreparedRule[];

  constructor(unordered: readonly FitRule[], prepare: PrepareRule) {
    const rules = unordered.map(prepare).sort(inFixedOrder);
    this.rules = rules;
    this.inForceCuts = cutsOf(rules.map(({ rule }) => rule.inForce));
    this.knownCuts = cutsOf(rules.map(({ rule }) => rule.known));
    this.models = modelsOf(rules);
  }

  /** Units that no rule of any time can tell apart, build date aside. */
  get classes(): FactsClasses {
    return (this.made ??= new FactsClasses(this.rules));
  }

  /** The rule that a reference names, if it speaks of this line and position at all. */
  ruleOf(ref: RuleRef): FitRule | undefined {
    return this.rules.find(({ rule }) => rule.key === ref.key && rule.version === ref.version)?.rule;
  }

  /** Every way the unit can be, its build date aside, by the papers of a day, as known at an instant. */
  variantsOf(unit: SlotFacts, inForceOn: Day, knownAt: number): readonly Variant[] {
    if (unit.model !== null) return this.table(unit.model, inForceOn, knownAt).variantsOf(unit);
    const others = this.table(null, inForceOn, knownAt).variantsOf(unit);
    if (this.models === NONE) return others;
    const named = modelsOf(this.speaking(inForceOn, knownAt));
    if (named.size === 0) return others;
    const ofModel = (only: string) =>
      this.table(only, inForceOn, knownAt)
        .variantsOf(unit)
        .map((variant) => ({ ...variant, where: { ...variant.where, model: { only } } }));
    const ofOthers = others.map((one) => ({ ...one, where: { ...one.where, model: 'another-model' as const } }));
    return [...[...named].sort().flatMap(ofModel), ...ofOthers];
  }

  /** The table for a model (null: one that no rule names). */
  private table(model: string | null, inForceOn: Day, knownAt: number): PositionTable {
    const named = model !== null && this.models.has(model) ? `=${model}` : '';
    const key = `${lastAtOrBefore(this.inForceCuts, inForceOn)} ${lastAtOrBefore(this.knownCuts, knownAt)} ${named}`;
    let table = this.tables.get(key);
    if (!table) this.tables.set(key, (table = new PositionTable(this.speakingOf(model, inForceOn, knownAt))));
    return table;
  }

  private speakingOf(model: string | null, inForceOn: Day, knownAt: number): readonly PreparedRule[] {
    const speaking = this.speaking(inForceOn, knownAt);
    if (this.models === NONE) return speaking;
    return speaking.filter(({ rule: { models } }) => models.length === 0 || (model !== null && models.includes(model)));
  }

  private speaking(inForceOn: Day, knownAt: number): readonly PreparedRule[] {
    return this.rules.filter(
      ({ rule: { inForce, known } }) =>
        inForce.from <= inForceOn && inForceOn < inForce.to && known.from <= knownAt && knownAt < known.to,
    );
  }
}

/**
 * A rulebook arranged for questions about any day in force and any instant of knowledge. Tables are made when first
 * asked for and kept, so a judge pays only for the lines and positions it meets.
 */
export class RulebookHistory {
  readonly graph: SupersessionGraph;
  /** Every rule of every time. */
  readonly rules: readonly FitRule[];
  private readonly prepare: PrepareRule;
  private readonly books = new Map<string, Map<string, PositionBook | FitRule[]>>();

  constructor(rulebook: Rulebook) {
    this.graph = new SupersessionGraph(rulebook.supersessions);
    this.rules = rulebook.rules;
    this.prepare = preparing(rulebook);
    for (const rule of this.rules) {
      if (rule.positions.length === 1) this.collect(rule, rule.positions[0]!);
      else for (const position of new Set(rule.positions)) this.collect(rule, position);
    }
  }

  /** The book of a line and position; an empty one where no rule has ever spoken. */
  book(line: string, position: string): PositionBook {
    const positions = this.books.get(line);
    const found = positions?.get(position);
    if (found === undefined || positions === undefined) return NO_RULES;
    if (found instanceof PositionBook) return found;
    const made = new PositionBook(found, this.prepare);
    positions.set(position, made);
    return made;
  }

  /** Units of a line that no rule of any time can tell apart in any of these positions, build date aside. */
  classesOf(line: string, positions: readonly string[]): FactsClasses {
    return new FactsClasses(positions.flatMap((position) => this.book(line, position).rules));
  }

  /** The same book made for this one look and not kept: a sweep over all of them must not hold them all. */
  passingBook(line: string, position: string): PositionBook {
    const found = this.books.get(line)?.get(position);
    if (found === undefined) return NO_RULES;
    return found instanceof PositionBook ? found : new PositionBook(found, this.prepare);
  }

  private collect(rule: FitRule, position: string): void {
    let positions = this.books.get(rule.line);
    if (!positions) this.books.set(rule.line, (positions = new Map<string, PositionBook | FitRule[]>()));
    const rules = positions.get(position) as FitRule[] | undefined;
    if (rules) rules.push(rule);
    else positions.set(position, [rule]);
  }
}

/** Every part that a rule or a supersession of the rulebook names, of any time. */
export function partsNamedIn({ rules, supersessions }: Pick<Rulebook, 'rules' | 'supersessions'>): Set<PartKey> {
  const named = new Set<PartKey>();
  for (const { required, allowed, barred } of rules) {
    if (required !== null) named.add(required);
    for (const part of allowed) named.add(part);
    for (const { part } of barred) named.add(part);
  }
  for (const { from, to } of supersessions) {
    named.add(from);
    if (to !== null) named.add(to);
  }
  return named;
}

const NONE: ReadonlySet<string> = new Set();

function modelsOf(rules: readonly PreparedRule[]): ReadonlySet<string> {
  let named: Set<string> | null = null;
  for (const { rule } of rules) for (const model of rule.models) (named ??= new Set()).add(model);
  return named ?? NONE;
}

const NO_RULES = new PositionBook([], preparing({ sources: [], standing: usualStanding }));

/** Index of the last cut that is not after the value; the first cut is -Infinity, so there always is one. */
export function lastAtOrBefore(cuts: readonly number[], value: number): number {
  let [low, high] = [0, cuts.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (cuts[middle]! <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}
