import { daySet, type DaySet, type DaySpan } from '../../day';
import type { Supersession } from '../../part-number';
import { actions, barReasons, type FitRule, type Rulebook } from '../fit-rule';
import { sourceKinds, usualStanding, type Source } from '../source';
import type { UnitFacts } from '../unit-facts';
import type { PartQuestion } from '../verdict';
import type { SmallWorld } from './oracle';

/** A small world, so that spans, serials and parts collide often. Days run from 0 to 24, instants from 0 to 6. */
export const world: SmallWorld = {
  // No rule names the last model.
  models: ['m1', 'm2', 'm3', 'm4'],
  options: ['o1', 'o2'],
  schemes: ['s1', 's2'],
  // Rules never begin or end at '0', so that every stretch of the serial axis holds a key.
  keys: ['0', 'a', 'b', 'c', 'd', 'e', 'f'],
};
export const parts = ['M/1', 'M/2', 'M/3', 'M/4', 'M/5'];
const MODELS = world.models.slice(0, -1);
const POSITIONS = ['p1', 'p2'];
const CUT_KEYS = world.keys.slice(1);
const LAST_DAY = 24;
const LAST_INSTANT = 6;

/** A stream of numbers in [0, 1), the same for the same seed (mulberry32, public domain). */
export function stream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Draws rulebooks and questions from one stream. */
export class Draw {
  constructor(private readonly next: () => number) {}

  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }

  chance(probability: number): boolean {
    return this.next() < probability;
  }

  pick<T>(from: readonly T[]): T {
    return from[this.below(from.length)]!;
  }

  some<T>(from: readonly T[], probability: number): T[] {
    return from.filter(() => this.chance(probability));
  }

  span(last: number, open: number): DaySpan {
    const [a, b] = [this.below(last), this.below(last)];
    return {
      from: this.chance(open) ? -Infinity : Math.min(a, b),
      to: this.chance(open) ? Infinity : Math.max(a, b) + 1,
    };
  }

  rulebook(): Rulebook {
    const sources = Array.from({ length: 4 }, (_, i) => this.source(i));
    const drawn = Array.from({ length: 1 + this.below(7) }, (_, i) => this.rule(i, sources));
    const rules = this.chance(0.3) ? [...drawn, ...this.handover(sources)] : drawn;
    const supersessions = Array.from({ length: this.below(4) }, () => this.supersession());
    return { rules, sources, supersessions, standing: usualStanding };
  }

  question(): PartQuestion {
    const told = this.chance(0.85) ? 1 : this.below(4);
    return {
      unit: this.unit(),
      position: this.pick(POSITIONS),
      parts: Array.from({ length: told }, () => this.pick([...parts, 'M/unheard-of'])),
      fittedOn: this.chance(0.4) ? null : this.below(LAST_DAY),
    };
  }

  unit(): UnitFacts {
    const scheme = this.pick([...world.schemes, 's3']);
    const serial = this.chance(0.3) ? null : { scheme, key: this.chance(0.15) ? null : this.pick(world.keys) };
    const options = Object.fromEntries(this.some(world.options, 0.7).map((option) => [option, this.chance(0.5)]));
    return {
      line: this.chance(0.97) ? 'l1' : 'l2',
      model: this.chance(0.1) ? null : this.pick(world.models),
      options,
      serial,
      built: this.built(),
    };
  }

  built(): DaySet {
    if (this.chance(0.3)) {
      const day = this.below(LAST_DAY);
      return daySet([{ from: day, to: day + 1 }]);
    }
    return daySet(Array.from({ length: this.chance(0.02) ? 0 : 1 + this.below(2) }, () => this.span(LAST_DAY, 0)));
  }

  private source(i: number): Source {
    return {
      key: `source ${i}`,
      kind: this.pick(sourceKinds),
      publisher: 'Holm',
      number: `N${i}`,
      title: `paper ${i}`,
      issued: this.below(3),
      effective: null,
      received: 0,
    };
  }

  private rule(i: number, sources: readonly Source[]): FitRule {
    const [a, b] = [this.pick(CUT_KEYS), this.pick(CUT_KEYS)];
    const drawn: FitRule = {
      key: `r${i}`,
      version: 1,
      line: 'l1',
      models: this.chance(0.7) ? [] : this.some(MODELS, 0.5),
      options: this.some(world.options, 0.15).map((option) => ({ option, fitted: this.chance(0.6) })),
      positions: this.chance(0.7) ? [this.pick(POSITIONS)] : POSITIONS,
      built: this.span(LAST_DAY, 0.35),
      serials: this.chance(0.8) ? null : this.serials(a < b ? [a, b] : [b, a]),
      inForce: this.span(LAST_DAY, 0.5),
      known: this.span(LAST_INSTANT, 0.6),
      source: this.pick(sources).key,
      required: this.chance(0.75) ? this.pick(parts) : null,
      allowed: this.some(parts, 0.15),
      barred: this.some(parts, 0.12).map((part) => ({
        ...{ part, reason: this.pick(barReasons), note: '' },
        ...(this.chance(0.2) ? { voidsWarranty: true as const } : {}),
      })),
      action: this.pick(actions),
      replaces: this.chance(0.2) ? [`r${this.below(7)}`] : [],
    };
    const { required, allowed, barred, replaces } = drawn;
    const silent = required === null && allowed.length + barred.length + replaces.length === 0;
    return silent ? { ...drawn, required: this.pick(parts) } : drawn;
  }

  /** One paper gives way to another on some day: what was right turns outdated. */
  private handover(sources: readonly Source[]): FitRule[] {
    const on = this.below(LAST_DAY);
    const source = this.pick(sources).key;
    const wide = { models: [], options: [], serials: null, built: { from: -Infinity, to: Infinity }, source };
    return [
      { ...this.rule(8, sources), ...wide, inForce: { from: -Infinity, to: on }, required: this.pick(parts) },
      { ...this.rule(9, sources), ...wide, inForce: { from: on, to: Infinity }, required: this.pick(parts) },
    ];
  }

  private serials([a, b]: [string, string]): FitRule['serials'] {
    const open = a === b;
    return {
      scheme: this.pick(world.schemes),
      from: this.chance(0.3) ? null : a,
      to: open || this.chance(0.3) ? null : b,
    };
  }

  private supersession(): Supersession {
    const direction = this.pick(['one-way', 'one-way', 'both-ways', 'dead'] as const);
    const to = direction === 'dead' ? null : this.pick(parts);
    return { from: this.pick(parts), to, direction, known: this.span(LAST_INSTANT, 0.6) };
  }
}
