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
  /** Number of each model that a rule names; 0 is any other model, 1 is a model that is not known. */
  private readonly models = new Map<string, number>();
  private readonly options: readonly string[];
  /** Per scheme that a rule names its first number and its cuts; 0 is any other scheme, 1 is a serial not known. */
  private readonly schemes = new Map<string, { readonly first: number; readonly cuts: readonly string[] }>();
  private readonly serialCount: number;

  constructor(rules: readonly PreparedRule[]) {
    const options = new Set<string>();
    const cuts = new Map<string, Set<string>>();
    for (const { rule } of rules) {
      for (const model of rule.models) if (!this.models.has(model)) this.models.set(model, this.models.size + 2);
      for (const { option } of rule.options) options.add(option);
      if (rule.serials === null) continue;
      const { scheme, from, to } = rule.serials;
      if (!cuts.has(scheme)) cuts.set(scheme, new Set());
      for (const end of [from, to]) if (end !== null) cuts.get(scheme)!.add(end);
    }
    this.options = [...options].sort(byText);
    let first = 2;
    for (const [scheme, own] of cuts) {
      this.schemes.set(scheme, { first, cuts: [...own].sort(byText) });
      first += own.size + 2;
    }
    this.serialCount = first;
    this.isOne = this.models.size === 0 && this.options.length === 0 && this.schemes.size === 0;
  }

  /** The class of a unit. */
  of({ model, options, serial }: SlotFacts): number | string {
    if (this.isOne) return 0;
    const modelNumber = model === null ? 1 : (this.models.get(model) ?? 0);
    const about = modelNumber * this.serialCount + this.serialNumber(serial);
    if (this.options.length > MOST_OPTIONS_AS_NUMBER) {
      return `${about} ${this.options.map((option) => settingOf(options[option])).join('')}`;
    }
    let number = about;
    for (const option of this.options) number = number * 3 + settingOf(options[option]);
    return number;
  }

  /** Per scheme: first is "key not known", then one number for each stretch between its cuts. */
  private serialNumber(serial: SlotFacts['serial']): number {
    if (serial === null) return 1;
    const scheme = this.schemes.get(serial.scheme);
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

function settingOf(fitted: boolean | undefined): number {
  return fitted === true ? 1 : fitted === false ? 0 : 2;
}
