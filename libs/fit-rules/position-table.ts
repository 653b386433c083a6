import type { Day } from '../day';
import type { OptionCondition, SerialSpan } from './fit-rule';
import { byText, inFixedOrder, type PreparedRule } from './prepared-rule';
import type { PieceWhere } from './ruling';
import type { UnitFacts } from './unit-facts';
import { weigh } from './weigh';
import type { Weighed } from './weighed';

/** Stretches of build dates on which the same rules speak: number i runs from `starts[i]` to `starts[i + 1]`. */
export interface Stretches {
  /** The first is -Infinity; the last stretch has no end. */
  readonly starts: readonly Day[];
  readonly weighed: readonly Weighed[];
}

/** A stretch of the serial axis; null: in none of the schemes that the rules name. */
export type SerialPiece = SerialSpan | null;

/** One way the unit can be, apart from its build date, with the stretches that hold then. */
export interface Variant {
  readonly serial: SerialPiece;
  readonly options: readonly OptionCondition[];
  readonly stretches: Stretches;
  /** What had to be cut because it is not known. */
  readonly where: Omit<PieceWhere, 'built'>;
}

/** The rules of one line and position for one model, ready to be looked up. */
export class PositionTable {
  /** The options that these rules ask for, in order. */
  readonly options: readonly string[];
  private readonly schemes: ReadonlyMap<string, readonly string[]>;
  private readonly made = new Map<string, Stretches>();
  private only: readonly Variant[] | null = null;

  constructor(private readonly rules: readonly PreparedRule[]) {
    this.options = optionsOf(rules);
    this.schemes = schemesOf(rules);
  }

  /** Every way the unit can be: one per piece of each axis that is not known. Serials first, then options. */
  variantsOf(unit: Pick<UnitFacts, 'options' | 'serial'>): readonly Variant[] {
    if (this.options.length === 0 && this.schemes.size === 0) return (this.only ??= [this.plainVariant()]);
    const serials = this.serialPieces(unit.serial);
    const settings = this.settings(unit.options);
    const serialCut = this.schemes.size > 0 && (unit.serial?.key ?? null) === null;
    return serials.flatMap((serial) =>
      settings.map((options) => ({
        serial,
        options,
        stretches: this.stretches(serial, options),
        where: {
          model: null,
          serial: serialCut ? (serial ?? 'another-scheme') : null,
          options: options.filter(({ option }) => !Object.hasOwn(unit.options, option)),
        },
      })),
    );
  }

  private plainVariant(): Variant {
    const where = { model: null, serial: null, options: [] };
    return { serial: null, options: [], stretches: stretchesOf(this.rules), where };
  }

  private serialPieces(serial: UnitFacts['serial']): readonly SerialPiece[] {
    if (this.schemes.size === 0) return [null];
    if (serial === null) return [...[...this.schemes.keys()].flatMap((scheme) => this.piecesOf(scheme)), null];
    const pieces = this.schemes.has(serial.scheme) ? this.piecesOf(serial.scheme) : [null];
    const { key } = serial;
    if (key === null || pieces[0] === null) return pieces;
    return pieces.filter((one) => one !== null && holdsKey(one, key));
  }

  private piecesOf(scheme: string): SerialPiece[] {
    const cuts = [null, ...this.schemes.get(scheme)!];
    return cuts.map((from, i) => ({ scheme, from, to: cuts[i + 1] ?? null }));
  }

  private settings(known: UnitFacts['options']): readonly (readonly OptionCondition[])[] {
    let settings: OptionCondition[][] = [[]];
    for (const option of this.options) {
      const fitted = Object.hasOwn(known, option) ? known[option] : undefined;
      const values = fitted === undefined ? [false, true] : [fitted];
      settings = settings.flatMap((one) => values.map((value) => [...one, { option, fitted: value }]));
    }
    return settings;
  }

  private stretches(serial: SerialPiece, options: readonly OptionCondition[]): Stretches {
    const where = serial === null ? '-' : `${serial.scheme}\n${serial.from ?? ''}`;
    const key = `${where}\n${options.map(({ fitted }) => (fitted ? '1' : '0')).join('')}`;
    let stretches = this.made.get(key);
    if (!stretches) {
      const speaking = this.rules.filter(
        ({ rule }) => coversSerial(rule.serials, serial) && meets(rule.options, options),
      );
      this.made.set(key, (stretches = stretchesOf(speaking)));
    }
    return stretches;
  }
}

/** The stretch that the day lies in. */
export function stretchAt({ starts }: Stretches, day: Day): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= day) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Sweeps the build dates once, keeping the rules that speak in their fixed order. */
export function stretchesOf(rules: readonly PreparedRule[]): Stretches {
  const coming = rules.filter(({ rule }) => rule.built.from < rule.built.to);
  const starts = cutsOf(coming.map(({ rule }) => rule.built));
  coming.sort((a, b) => a.rule.built.from - b.rule.built.from);
  const weighed: Weighed[] = [];
  let [speaking, next]: [PreparedRule[], number] = [[], 0];
  for (const start of starts) {
    if (speaking.length > 0) speaking = speaking.filter(({ rule }) => rule.built.to > start);
    const before = speaking.length;
    for (; next < coming.length && coming[next]!.rule.built.from <= start; next++) speaking.push(coming[next]!);
    if (speaking.length > before && speaking.length > 1) speaking.sort(inFixedOrder);
    weighed.push(weigh(speaking));
  }
  return { starts, weighed };
}

/** -Infinity and every other beginning and finite end of the spans, each once, in order. */
export function cutsOf(spans: readonly { readonly from: number; readonly to: number }[]): number[] {
  const ends = [-Infinity];
  for (const { from, to } of spans) {
    if (from !== -Infinity && from !== Infinity) ends.push(from);
    if (to !== Infinity && to !== -Infinity) ends.push(to);
  }
  if (ends.length === 1) return ends;
  ends.sort((a, b) => a - b);
  return ends.filter((end, i) => end !== ends[i - 1]);
}

const NO_NAMES: readonly string[] = [];

function optionsOf(rules: readonly PreparedRule[]): readonly string[] {
  let named: Set<string> | null = null;
  for (const { rule } of rules) for (const { option } of rule.options) (named ??= new Set()).add(option);
  return named === null ? NO_NAMES : [...named].sort();
}

const NO_SCHEMES: ReadonlyMap<string, readonly string[]> = new Map();

/** Per scheme, in order, the keys at which some rule begins or ends. */
function schemesOf(rules: readonly PreparedRule[]): ReadonlyMap<string, readonly string[]> {
  if (rules.every(({ rule }) => rule.serials === null)) return NO_SCHEMES;
  const cuts = new Map<string, Set<string>>();
  for (const { rule } of rules) {
    if (rule.serials === null) continue;
    const { scheme, from, to } = rule.serials;
    if (!cuts.has(scheme)) cuts.set(scheme, new Set());
    for (const end of [from, to]) if (end !== null) cuts.get(scheme)!.add(end);
  }
  return new Map([...cuts.keys()].sort(byText).map((scheme) => [scheme, [...cuts.get(scheme)!].sort(byText)]));
}

function holdsKey({ from, to }: SerialSpan, key: string): boolean {
  return (from === null || from <= key) && (to === null || key < to);
}

/** A piece is never cut by the span, so its lower end speaks for all of it. */
function coversSerial(span: SerialSpan | null, piece: SerialPiece): boolean {
  if (span === null) return true;
  if (piece === null || piece.scheme !== span.scheme) return false;
  const begins = span.from === null || (piece.from !== null && span.from <= piece.from);
  return begins && (span.to === null || (piece.to !== null && piece.to <= span.to));
}

function meets(asked: readonly OptionCondition[], setting: readonly OptionCondition[]): boolean {
  return asked.every(({ option, fitted }) => setting.some((one) => one.option === option && one.fitted === fitted));
}
