import { type Day, type DaySet, type DaySpan } from '../day';
import { boundariesOf, notNeededIn } from './boundaries';
import type { Branch, KeyedPiece } from './branch';
import type { Rulebook } from './fit-rule';
import { stretchAt, type Stretches } from './position-table';
import { RulebookHistory } from './rulebook-history';
import type { Ground, PieceWhere, Ruling, RulingPiece } from './ruling';
import type { UnitFacts } from './unit-facts';
import type { Weighed } from './weighed';

/** The rulebook by the papers in force on one day, as known at one instant. */
export interface CompiledRulebook {
  readonly inForceOn: Day;
  /** Epoch milliseconds. */
  readonly knownAt: number;
  readonly history: RulebookHistory;
}

/** Compiles a rulebook for one day in force and one instant of knowledge. Build it once, ask it often. */
export function compileRulebook(
  rulebook: Rulebook,
  at: { readonly inForceOn: Day; readonly knownAt: number },
): CompiledRulebook {
  return { ...at, history: new RulebookHistory(rulebook) };
}

/**
 * The answer for a unit and a position: what is required, allowed and barred, the rules that decide and those that lost
 * and why, and how it depends on what is not known of the unit.
 */
export function rulingFor(compiled: CompiledRulebook, unit: UnitFacts, position: string): Ruling {
  const { inForceOn, knownAt } = compiled;
  const variants = compiled.history.book(unit.line, position).variantsOf(unit, inForceOn, knownAt);
  const branches = variants.map(({ stretches, where, ...variant }): Branch => {
    return { ...variant, model: where.model, pieces: joined(stretchesWithin(stretches, unit.built), where) };
  });
  const pieces = branches.flatMap(({ pieces: own }) => own.map(({ piece }) => piece));
  const keys = new Set(branches.flatMap(({ pieces: own }) => own.map(({ key }) => key)));
  const boundaries = boundariesOf(branches);
  const settled = keys.size === 1 && pieces[0]!.outcome.kind === 'decided';
  const notNeeded = pieces.length === 0 ? [] : notNeededIn(boundaries, unit, optionsCut(pieces));
  return { position, inForceOn, knownAt, pieces, settled, boundaries, notNeeded };
}

function optionsCut(pieces: readonly RulingPiece[]): readonly string[] {
  return [...new Set(pieces.flatMap(({ where }) => where.options.map(({ option }) => option)))].sort();
}

/** One stretch, or what is left of it inside the possible build dates. */
export interface CutStretch {
  readonly built: DaySpan;
  readonly weighed: Weighed;
}

/** The stretches that the possible build dates meet, cut to them, in order. */
export function stretchesWithin(stretches: Stretches, built: DaySet): CutStretch[] {
  const cut: CutStretch[] = [];
  for (const span of built) {
    for (let i = stretchAt(stretches, span.from); i < stretches.starts.length; i++) {
      const from = Math.max(span.from, stretches.starts[i]!);
      const to = Math.min(span.to, stretches.starts[i + 1] ?? Infinity);
      if (from >= to) break;
      cut.push({ built: { from, to }, weighed: stretches.weighed[i]! });
    }
  }
  return cut;
}

function joined(cut: readonly CutStretch[], where: Omit<PieceWhere, 'built'>): KeyedPiece[] {
  const runs: CutStretch[][] = [];
  for (const one of cut) {
    const run = runs[runs.length - 1];
    if (run && run[0]!.weighed.key === one.weighed.key) run.push(one);
    else runs.push([one]);
  }
  return runs.map((run) => ({
    key: run[0]!.weighed.key,
    piece: { where: { ...where, built: daysOf(run) }, outcome: joinedOutcome(run), grounds: run.map(groundOf) },
  }));
}

/** Days of the run; stretches that touch become one span. */
function daysOf(run: readonly CutStretch[]): DaySet {
  const days: DaySpan[] = [];
  for (const { built } of run) {
    const last = days[days.length - 1];
    if (last?.to === built.from) days[days.length - 1] = { from: last.from, to: built.to };
    else days.push(built);
  }
  return days;
}

/** What the first stretch says, with the bars of all of them: a reader must see every bar that holds somewhere here. */
function joinedOutcome(run: readonly CutStretch[]): RulingPiece['outcome'] {
  const first = run[0]!.weighed.outcome;
  if (run.length === 1) return first;
  const bars = run.flatMap(({ weighed }) => weighed.outcome.barred);
  const sameBar = (a: (typeof bars)[number]) => `${a.rule.key} ${a.rule.version} ${a.part} ${a.reason}`;
  const barred = bars.filter((bar, i) => bars.findIndex((other) => sameBar(other) === sameBar(bar)) === i);
  return { ...first, barred };
}

function groundOf({ built, weighed }: CutStretch): Ground {
  const { deciding, overridden, lifted, outcome } = weighed;
  return { built, deciding, overridden, barred: outcome.barred, lifted };
}
