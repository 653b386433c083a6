import type { DaySpan } from '../../day';
import type { PartKey } from '../../part-number';
import type { RuleRef } from '../fit-rule';
import { byText } from '../prepared-rule';
import type { PieceWhere } from '../ruling';
import type { CutStretch } from '../ruling-for';
import type { UnitFacts } from '../unit-facts';
import { unitOf, type Course } from './courses';
import type { FindingCode } from './finding';

/** Something found in one position, before it is put into words. */
export interface PlaceFinding {
  readonly code: Extract<
    FindingCode,
    'gap' | 'disputed' | 'required-and-barred' | 'untellable-boundary' | 'dead-part' | 'unknown-part'
  >;
  readonly where: PieceWhere;
  readonly rules: readonly RuleRef[];
  readonly parts: readonly PartKey[];
  readonly example: UnitFacts;
}

type Code = PlaceFinding['code'];

/** What one stretch shows, without where. */
interface Shown {
  readonly code: Code;
  readonly built: DaySpan;
  readonly rules: readonly RuleRef[];
  readonly parts: readonly PartKey[];
}

/** How the audit looks at parts and boundaries. */
export interface PlaceChecks {
  readonly partProblem: (part: PartKey) => 'dead-part' | 'unknown-part' | null;
  readonly canTellApart: ((boundary: number) => boolean) | null;
}

/**
 * Everything wrong in one position, over every way a unit can be. What holds for every way alike is found once, without
 * naming model, serial or option.
 */
export function placeFindings(courses: readonly Course[], checks: PlaceChecks): readonly PlaceFinding[] {
  const shown = courses.map((course) => shownBy(course.stretches, checks));
  if (shown.every((all) => all.length === 0)) return [];
  const found = new Map<string, { shown: Shown; courses: Course[] }>();
  shown.forEach((all, i) => {
    for (const one of all) {
      const key = JSON.stringify([one.code, `${one.built.from} ${one.built.to}`, one.rules, one.parts]);
      const same = found.get(key);
      if (same) same.courses.push(courses[i]!);
      else found.set(key, { shown: one, courses: [courses[i]!] });
    }
  });
  return [...found.values()].flatMap(({ shown: one, courses: own }) =>
    own.length === courses.length ? [placed(one, own[0]!, true)] : own.map((course) => placed(one, course, false)),
  );
}

function placed({ code, built, rules, parts }: Shown, course: Course, everywhere: boolean): PlaceFinding {
  const where = everywhere ? { model: null, serial: null, options: [] } : course.where;
  return { code, where: { ...where, built: [built] }, rules, parts, example: unitOf(course, built) };
}

/** Neighbouring stretches that show the same are one. */
function shownBy(stretches: readonly CutStretch[], checks: PlaceChecks): readonly Shown[] {
  const all: Shown[] = [];
  let open: Shown[] = [];
  stretches.forEach((stretch, i) => {
    const here = shownIn(stretch, checks).map((one) => {
      const before = open.find((other) => sameBut(other, one));
      return before ? { ...one, built: { from: before.built.from, to: one.built.to } } : one;
    });
    all.push(...open.filter((one) => !here.some((other) => sameBut(other, one))));
    open = here;
    const before = stretches[i - 1];
    if (before && checks.canTellApart) all.push(...untellable(before, stretch, checks.canTellApart));
  });
  return [...all, ...open];
}

function sameBut(a: Shown, b: Shown): boolean {
  return a.code === b.code && refsText(a.rules) === refsText(b.rules) && a.parts.join() === b.parts.join();
}

function refsText(rules: readonly RuleRef[]): string {
  return rules.map(({ key, version }) => `${key} ${version}`).join();
}

function shownIn({ built, weighed }: CutStretch, { partProblem }: PlaceChecks): Shown[] {
  const { outcome, deciding } = weighed;
  if (outcome.kind === 'nothing-said') return [{ code: 'gap', built, rules: [], parts: [] }];
  if (outcome.kind === 'disputed') {
    const parts = [...new Set(outcome.sayings.flatMap(({ required, allowed }) => [required, ...allowed]))];
    const named = parts.filter((part) => part !== null).sort(byText);
    if (outcome.why === 'rules-tie') return [{ code: 'disputed', built, rules: deciding, parts: named }];
    const { required } = outcome.sayings[0]!;
    const barring = outcome.barred.filter(({ part }) => part === required).map(({ rule }) => rule);
    return [{ code: 'required-and-barred', built, rules: [...deciding, ...barring], parts: [required!] }];
  }
  const { required } = outcome.saying;
  const code = required === null ? null : partProblem(required);
  return code === null ? [] : [{ code, built, rules: deciding, parts: [required!] }];
}

function untellable(
  before: CutStretch,
  { built, weighed }: CutStretch,
  canTellApart: (boundary: number) => boolean,
): Shown[] {
  if (before.weighed.key === weighed.key || canTellApart(built.from)) return [];
  const rules = [...before.weighed.deciding, ...weighed.deciding];
  return [{ code: 'untellable-boundary', built: { from: built.from, to: built.from + 1 }, rules, parts: [] }];
}
