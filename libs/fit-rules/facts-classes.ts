import { byText, type PreparedRule } from './prepared-rule';
import type { SlotFacts } from './unit-facts';

/** More options than this on one position are told apart by text instead of by number. */
const MOST_OPTIONS_AS_NUMBER = 20;

/**
 * Sorts units into classes that no rule of any time can tell apart, build date aside. All units of a class are answered
 * alike, so what is worked out for one serves them all.
 */
export class FactsClasses {
  /** No rule asks for anything but the build date: there is one class. */
  readonly isOne: boolean;
  /** Classes are the whole numbers below this; Infinity where they are told apart by text. */
  readonly count: number;
  /** Number of each model that a rule names; 0 is any other model, 1 is a model that is not known. */
  private readonly models: Numbering;
  private readonly options: readonly string[];
  /** Per scheme that a rule names its first number and its cuts; 0 is any other scheme, 1 is a serial not known. */
  private readonly schemes: readonly SchemeNumbers[];
  private readonly serialCount: number;

  constructor(rules: readonly PreparedRule[]) {
    const models = new Set<string>();
    const options = new Set<string>();
    const cuts = new Map<string, Set<string>>();
    for (const { rule } of rules) {
      for (const model of rule.models) models.add(model);
      for (const { option } of rule.options) options.add(option);
      if (rule.serials === null) continue;
      const { scheme, from, to } = rule.serials;
      if (!cuts.has(scheme)) cuts.set(scheme, new Set());
      for (const end of [from, to]) if (end !== null) cuts.get(scheme)!.add(end);
    }
    this.options = [...options].sort(byText);
    this.models = new Numbering([...models]);
    const schemes: SchemeNumbers[] = [];
    let first = 2;
    for (const [scheme, own] of cuts) {
      schemes.push({ scheme, first, cuts: [...own].sort(byText) });
      first += own.size + 2;
    }
    this.schemes = schemes;
    this.serialCount = schemes.length === 0 ? 1 : first;
    this.isOne = models.size === 0 && this.options.length === 0 && schemes.length === 0;
    const byNumber = this.options.length <= MOST_OPTIONS_AS_NUMBER;
    this.count = byNumber ? (models.size + 2) * this.serialCount * 3 ** this.options.length : Infinity;
  }

  /** The class of a unit. */
  of({ model, options, serial }: SlotFacts): number | string {
    if (this.isOne) return 0;
    const about = this.models.of(model) * this.serialCount + this.serialNumber(serial);
    if (this.options.length > MOST_OPTIONS_AS_NUMBER) {
      return `${about} ${this.options.map((option) => settingOf(options[option])).join('')}`;
    }
    let number = about;
    for (const option of this.options) number = number * 3 + settingOf(options[option]);
    return number;
  }

  /** Per scheme: first is "key not known", then one number for each stretch between its cuts. */
  private serialNumber(serial: SlotFacts['serial']): number {
    if (this.schemes.length === 0) return 0;
    if (serial === null) return 1;
    const scheme = schemeNamed(this.schemes, serial.scheme);
    if (scheme === undefined) return 0;
    const { key } = serial;
    if (key === null) return scheme.first;
    let [low, high] = [0, scheme.cuts.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (scheme.cuts[middle]! <= key) low = middle + 1;
      else high = middle;
    }
    return scheme.first + 1 + low;
  }
}

interface SchemeNumbers {
  readonly scheme: string;
  readonly first: number;
  readonly cuts: readonly string[];
}

/** There are a few schemes at most, and comparing their names is quicker than hashing one. */
function schemeNamed(schemes: readonly SchemeNumbers[], name: string): SchemeNumbers | undefined {
  for (let i = 0; i < schemes.length; i++) if (schemes[i]!.scheme === name) return schemes[i];
  return undefined;
}

/** Up to this many names are compared one by one, which is quicker than hashing; more are looked up. */
const FEW_NAMES = 8;

/** Numbers names from 2 on. */
class Numbering {
  private readonly byName: ReadonlyMap<string, number> | null;

  constructor(private readonly names: readonly string[]) {
    this.byName = names.length > FEW_NAMES ? new Map(names.map((name, i) => [name, i + 2])) : null;
  }

  /** 0 for a name that has no number, and for every name where none has; 1 for null. */
  of(name: string | null): number {
    const { names, byName } = this;
    if (names.length === 0) return 0;
    if (name === null) return 1;
    if (byName !== null) return byName.get(name) ?? 0;
    for (let i = 0; i < names.length; i++) if (names[i] === name) return i + 2;
    return 0;
  }
}

function settingOf(fitted: boolean | undefined): number {
  return fitted === true ? 1 : fitted === false ? 0 : 2;
}
