import { daySet } from '../day';
import { clip, readShape, sayShape, valueAt, type ShapeProblem } from '../shape';
import type { FitRule, Rulebook } from './fit-rule';
import { fitRuleFile, rulebookFile, unitFactsFile, type RulebookFile } from './fit-rule-file';
import type { UnitFacts } from './unit-facts';
import { ruleFromFile, rulebookFromFile, unitFromFile } from './wire';

/** What is wrong with a file: which entry, which field of it, and one sentence with the value and what is accepted. */
export interface FileProblem {
  /** `rule FR-12`, `source SB-7`, `supersession 3`; `rulebook` or `unit` for the whole. */
  readonly place: string;
  readonly field: string;
  readonly message: string;
}

export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly FileProblem[] };

/** Reads one fit rule. A bad one is refused with every field that is wrong. */
export function readFitRule(file: unknown): Read<FitRule> {
  const read = readShape(fitRuleFile, file);
  if (read.ok) return { ok: true, value: ruleFromFile(read.value) };
  return { ok: false, problems: read.problems.map((one) => problemOf(one, entryName('rule', file, 0))) };
}

/**
 * Reads a whole rulebook: each entry by itself, then what ties them together (every source there, no key and version
 * twice, no two versions of a rule known at one instant).
 */
export function readRulebook(file: unknown): Read<Rulebook> {
  const read = readShape(rulebookFile, file);
  if (!read.ok) return { ok: false, problems: read.problems.map((one) => rulebookProblem(one, file)) };
  const problems = [...twiceProblems(read.value), ...sourceProblems(read.value)];
  if (problems.length > 0) return { ok: false, problems };
  const rulebook = rulebookFromFile(read.value);
  const overlaps = knownOverlaps(rulebook.rules);
  return overlaps.length > 0 ? { ok: false, problems: overlaps } : { ok: true, value: rulebook };
}

/** Reads a unit's facts; spans of build dates may come in any order and may overlap. */
export function readUnitFacts(file: unknown): Read<UnitFacts> {
  const read = readShape(unitFactsFile, file);
  if (!read.ok) return { ok: false, problems: read.problems.map((one) => problemOf(one, 'unit')) };
  const unit = unitFromFile(read.value);
  return { ok: true, value: { ...unit, built: daySet(unit.built) } };
}

/** A problem as one sentence. */
export function sayFileProblem({ place, field, message }: FileProblem): string {
  return field === '' ? `${place}: ${message}` : `${place}, ${field}: ${message}`;
}

function rulebookProblem(one: ShapeProblem, file: unknown): FileProblem {
  const [list, index, ...path] = one.path;
  const kind = { rules: 'rule', sources: 'source', supersessions: 'supersession' }[String(list)];
  if (kind === undefined || typeof index !== 'number') return problemOf(one, 'rulebook');
  return problemOf(one, entryName(kind, valueAt(file, [list!, index]), index), path);
}

function problemOf(one: ShapeProblem, place: string, path = one.path): FileProblem {
  return { place, field: path.join('.'), message: sayShape(one) };
}

function entryName(kind: string, entry: unknown, index: number): string {
  const key = valueAt(entry, ['key']);
  return typeof key === 'string' && key !== '' ? `${kind} ${clip(key)}` : `${kind} ${index + 1}`;
}

function twiceProblems({ rules, sources }: RulebookFile): FileProblem[] {
  const names = [
    ...rules.map(({ key, version }) => ({ place: `rule ${key}`, name: `version ${version}`, field: 'version' })),
    ...sources.map(({ key }) => ({ place: `source ${key}`, name: 'the key', field: 'key' })),
  ];
  const seen = new Set<string>();
  return names.flatMap(({ place, name, field }) => {
    const twice = seen.has(`${place} ${name}`);
    seen.add(`${place} ${name}`);
    return twice ? [{ place, field, message: `${name} stands here twice; each may stand once.` }] : [];
  });
}

function sourceProblems({ rules, sources }: RulebookFile): FileProblem[] {
  const known = new Set(sources.map(({ key }) => key));
  return rules
    .filter(({ source }) => !known.has(source))
    .map(({ key, source }) => ({
      place: `rule ${key}`,
      field: 'source',
      message: `"${clip(source)}" will not do: no source of this rulebook has that key.`,
    }));
}

function knownOverlaps(rules: readonly FitRule[]): FileProblem[] {
  const sorted = [...rules].sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.known.from - b.known.from));
  return sorted.flatMap((rule, i) => {
    const before = sorted[i - 1];
    if (before?.key !== rule.key || before.known.to <= rule.known.from) return [];
    const message = `versions ${before.version} and ${rule.version} are known at the same time; the earlier must end first.`;
    return [{ place: `rule ${rule.key}`, field: 'known', message }];
  });
}
