import type { Day } from '../../day';
import type { PartKey, Supersession } from '../../part-number';
import type { FitRule, Rulebook } from '../fit-rule';
import type { UnitFacts } from '../unit-facts';
import type { PartOutcome, PartQuestion, ThenVerdict, Verdict } from '../verdict';

/**
 * The rules of the trade followed word by word, day by day, with no thought of speed and no line shared with the
 * library: what the compiled path is checked against. Only for finite sets of build dates.
 */

/** One way the unit can be. */
interface Point {
  readonly line: string;
  readonly model: string;
  readonly options: Record<string, boolean>;
  readonly serial: { scheme: string; key: string } | null;
  readonly day: Day;
}

export interface OracleClock {
  readonly inForceOn: Day;
  readonly knownAt: number;
}

/** Everything an unknown serial or option can be, in the small world of a test. */
export interface SmallWorld {
  readonly models: readonly string[];
  readonly options: readonly string[];
  readonly schemes: readonly string[];
  readonly keys: readonly string[];
}

export function oracleVerdict(
  book: Rulebook,
  question: PartQuestion,
  world: SmallWorld,
  at: { today: Day; now: number },
): Verdict {
  const each = question.parts.map((part) => verdictOnPart(book, question, part, world, at));
  const different = new Set(each);
  return different.size === 1 ? each[0]! : 'undecided';
}

function verdictOnPart(
  book: Rulebook,
  { unit, position, fittedOn }: PartQuestion,
  part: PartKey,
  world: SmallWorld,
  { today, now }: { today: Day; now: number },
): Verdict {
  const points = pointsOf(unit, world);
  const outcomes = points.map((point) => outcomeAt(book, point, position, part, { inForceOn: today, knownAt: now }));
  const verdict = overAll(outcomes);
  if (verdict !== 'no') return verdict;
  const then = overAll(
    points.map((point) => outcomeAt(book, point, position, part, { inForceOn: fittedOn ?? point.day, knownAt: now })),
  );
  return then === 'right' || then === 'allowed' ? 'outdated' : 'wrong';
}

/** The verdict by the papers of one day, without looking back. */
export function oracleThen(
  book: Rulebook,
  question: PartQuestion,
  part: PartKey,
  world: SmallWorld,
  clock: OracleClock,
): ThenVerdict {
  return overAll(pointsOf(question.unit, world).map((point) => outcomeAt(book, point, question.position, part, clock)));
}

function overAll(outcomes: readonly PartOutcome[]): ThenVerdict {
  if (outcomes.length === 0) return 'undecided';
  if (outcomes.every((one) => one === 'required')) return 'right';
  if (outcomes.every((one) => one === 'required' || one === 'allowed')) return 'allowed';
  if (outcomes.every((one) => one === 'no')) return 'no';
  return outcomes.includes('disputed') ? 'disputed' : 'undecided';
}

function pointsOf(unit: UnitFacts, { models, options, schemes, keys }: SmallWorld): Point[] {
  let settings: Record<string, boolean>[] = [{}];
  for (const option of options) {
    const known = unit.options[option];
    const values = known === undefined ? [true, false] : [known];
    settings = settings.flatMap((setting) => values.map((value) => ({ ...setting, [option]: value })));
  }
  const ofScheme = (scheme: string) => keys.map((key) => ({ scheme, key }));
  let serials: Point['serial'][] = [...schemes.flatMap(ofScheme), null];
  if (unit.serial !== null) {
    const { scheme, key } = unit.serial;
    serials = key === null ? ofScheme(scheme) : [{ scheme, key }];
  }
  const days: Day[] = [];
  for (const { from, to } of unit.built) for (let day = from; day < to; day++) days.push(day);
  const { line } = unit;
  const possible = unit.model === null ? models : [unit.model];
  return days.flatMap((day) =>
    possible.flatMap((model) =>
      serials.flatMap((serial) => settings.map((setting) => ({ line, model, options: setting, serial, day }))),
    ),
  );
}

function covers(rule: FitRule, point: Point, position: string, { inForceOn, knownAt }: OracleClock): boolean {
  const known = rule.known.from <= knownAt && knownAt < rule.known.to;
  const inForce = rule.inForce.from <= inForceOn && inForceOn < rule.inForce.to;
  const model = rule.models.length === 0 || rule.models.includes(point.model);
  const options = rule.options.every(({ option, fitted }) => point.options[option] === fitted);
  const built = rule.built.from <= point.day && point.day < rule.built.to;
  return (
    known &&
    inForce &&
    rule.line === point.line &&
    model &&
    options &&
    built &&
    rule.positions.includes(position) &&
    serialFits(rule, point)
  );
}

function serialFits({ serials }: FitRule, { serial }: Point): boolean {
  if (serials === null) return true;
  if (serial === null || serial.scheme !== serials.scheme) return false;
  return (serials.from === null || serials.from <= serial.key) && (serials.to === null || serial.key < serials.to);
}

function outcomeAt(book: Rulebook, point: Point, position: string, part: PartKey, clock: OracleClock): PartOutcome {
  const covering = book.rules.filter((rule) => covers(rule, point, position, clock));
  const left = covering.filter(
    (rule) => !covering.some((other) => other.key !== rule.key && other.replaces.includes(rule.key)),
  );
  const standing = (rule: FitRule) => book.standing[book.sources.find(({ key }) => key === rule.source)!.kind];
  const issued = (rule: FitRule) => book.sources.find(({ key }) => key === rule.source)!.issued;
  const names = (rule: FitRule, one: PartKey) => rule.required === one || rule.allowed.includes(one);
  const isBarred = (one: PartKey) =>
    left.some(
      (rule) =>
        rule.barred.some((bar) => bar.part === one) &&
        !left.some((over) => standing(over) > standing(rule) && names(over, one)),
    );

  let deciding = left.filter((rule) => rule.required !== null || rule.allowed.length > 0);
  const highest = Math.max(...deciding.map(standing));
  deciding = deciding.filter((rule) => standing(rule) === highest);
  const latest = Math.max(...deciding.map(issued));
  deciding = deciding.filter((rule) => issued(rule) === latest);

  if (deciding.length === 0) return isBarred(part) ? 'no' : 'nothing-said';
  if (isBarred(part)) return deciding.some((rule) => rule.required === part) ? 'disputed' : 'no';
  const said = deciding.map((rule): PartOutcome => {
    if (rule.required !== null && swaps(book.supersessions, rule.required, part, clock.knownAt)) {
      return isBarred(rule.required) ? 'disputed' : 'required';
    }
    const named = [...(rule.required === null ? [] : [rule.required]), ...rule.allowed];
    return named.some((one) => follows(book.supersessions, one, part, clock.knownAt)) ? 'allowed' : 'no';
  });
  return said.every((one) => one === said[0]) ? said[0]! : 'disputed';
}

/** True when the two are one part, or each may replace the other, over any number of steps. */
function swaps(all: readonly Supersession[], a: PartKey, b: PartKey, knownAt: number): boolean {
  return closure(all, a, knownAt, true).has(b);
}

/** True when `b` is `a` or may replace it, over any number of steps. */
function follows(all: readonly Supersession[], a: PartKey, b: PartKey, knownAt: number): boolean {
  return closure(all, a, knownAt, false).has(b);
}

function closure(all: readonly Supersession[], start: PartKey, knownAt: number, bothWaysOnly: boolean): Set<PartKey> {
  const reached = new Set([start]);
  for (let before = -1; before !== reached.size;) {
    before = reached.size;
    for (const { from, to, direction, known } of all) {
      if (!(known.from <= knownAt && knownAt < known.to) || to === null || direction === 'dead') continue;
      if (reached.has(from) && (!bothWaysOnly || direction === 'both-ways')) reached.add(to);
      if (reached.has(to) && direction === 'both-ways') reached.add(from);
    }
  }
  return reached;
}
