import type { Day } from '../day';
import { SupersessionGraph, type PartKey } from '../part-number';
import type { FitRule, Rulebook, RuleRef } from './fit-rule';
import { PositionTable, type Variant } from './position-table';
import { prepareRules, type PreparedRule } from './prepared-rule';
import type { SlotFacts } from './unit-facts';

/** Every version of the rules of one line and position, with tables made for the days and instants asked about. */
export class PositionBook {
  /** Days on which some rule comes into force or goes out of it; -Infinity first. */
  readonly inForceCuts: readonly Day[];
  private readonly knownCuts: readonly number[];
  private readonly models: ReadonlySet<string>;
  private readonly tables = new Map<string, PositionTable>();
  /** The rules of every time together: they ask for whatever any table can ask for. */
  private readonly whole: PositionTable;
  /** No rule of any time asks for the model, an option or the serial: every unit of the line is answered alike. */
  readonly isPlain: boolean;

  constructor(private readonly rules: readonly PreparedRule[]) {
    this.inForceCuts = distinct(rules.flatMap(({ rule }) => [rule.inForce.from, rule.inForce.to]));
    this.knownCuts = distinct(rules.flatMap(({ rule }) => [rule.known.from, rule.known.to]));
    this.models = new Set(rules.flatMap(({ rule }) => rule.models));
    this.whole = new PositionTable(rules);
    this.isPlain = this.models.size === 0 && this.whole.options.length === 0 && !this.whole.asksForSerial;
  }

  /** Text that is the same for two units exactly when no rule of any time can tell them apart, build date aside. */
  factsKey({ model, options, serial }: SlotFacts): string {
    if (this.isPlain) return '';
    const settings = this.whole.options.map((option) =>
      Object.hasOwn(options, option) ? Number(options[option]) : '?',
    );
    return JSON.stringify([this.modelKey(model), settings, this.whole.serialKey(serial)]);
  }

  /** The rule that a reference names, if it speaks of this line and position at all. */
  ruleOf(ref: RuleRef): FitRule | undefined {
    return this.rules.find(({ rule }) => rule.key === ref.key && rule.version === ref.version)?.rule;
  }

  private modelKey(model: string | null): string {
    return model === null ? '?' : this.models.has(model) ? `=${model}` : 'another';
  }

  /** Every way the unit can be, its build date aside, by the papers of a day, as known at an instant. */
  variantsOf(unit: SlotFacts, inForceOn: Day, knownAt: number): readonly Variant[] {
    if (unit.model !== null) return this.table(unit.model, inForceOn, knownAt).variantsOf(unit);
    const named = new Set(this.speaking(inForceOn, knownAt).flatMap(({ rule }) => rule.models));
    const others = this.table(null, inForceOn, knownAt).variantsOf(unit);
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
    if (!table) {
      const speaking = this.speaking(inForceOn, knownAt).filter(
        ({ rule: { models } }) => models.length === 0 || (model !== null && models.includes(model)),
      );
      this.tables.set(key, (table = new PositionTable(speaking)));
    }
    return table;
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
  private readonly named: ReadonlySet<PartKey>;
  private readonly books = new Map<string, Map<string, PositionBook | PreparedRule[]>>();

  constructor(rulebook: Rulebook) {
    this.named = partsNamedIn(rulebook);
    this.graph = new SupersessionGraph(rulebook.supersessions);
    for (const prepared of prepareRules(rulebook)) {
      for (const position of new Set(prepared.rule.positions)) this.collect(prepared, position);
    }
  }

  /** The book of a line and position; an empty one where no rule has ever spoken. */
  book(line: string, position: string): PositionBook {
    const positions = this.books.get(line);
    const found = positions?.get(position);
    if (found === undefined || positions === undefined) return NO_RULES;
    if (found instanceof PositionBook) return found;
    const made = new PositionBook(found);
    positions.set(position, made);
    return made;
  }

  /** Every part that a rule or a supersession names, each once. */
  parts(): ReadonlySet<PartKey> {
    return this.named;
  }

  private collect(prepared: PreparedRule, position: string): void {
    const { line } = prepared.rule;
    const positions = this.books.get(line) ?? new Map<string, PositionBook | PreparedRule[]>();
    this.books.set(line, positions);
    const rules = positions.get(position) as PreparedRule[] | undefined;
    if (rules) rules.push(prepared);
    else positions.set(position, [prepared]);
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

const NO_RULES = new PositionBook([]);

function distinct(ends: number[]): number[] {
  return [...new Set([-Infinity, ...ends])].filter((end) => end !== Infinity).sort((a, b) => a - b);
}

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
