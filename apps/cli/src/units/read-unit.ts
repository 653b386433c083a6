import {
  EvidenceSchema,
  MOST_PIECES,
  evidenceOfUnit,
  inferBuildDays,
  serialOfUnit,
  type Evidence,
} from '../../../../libs/build-date';
import type { Day, DaySet } from '../../../../libs/day';
import { readUnitFacts, type UnitFacts } from '../../../../libs/fit-rules';
import type { Book, BookLine } from '../files/read-book';
import { someOf, type Problems } from './problem';
import { builtOfValues, optionsOfValues, textOfValue, type Values } from './read-values';
import { readShape, sayShape } from '../../../../libs/shape';

/** A unit as a row gives it. The serial's key is worked out only when a rule asks for it. */
export interface GivenUnit {
  readonly line: string;
  readonly model: string | null;
  readonly options: Readonly<Record<string, boolean>>;
  readonly built: DaySet;
  facts(): UnitFacts;
}

/**
 * Reads a unit from a row or from options: `line`, `model`, `options`, `serial`, and its build date (`built`,
 * `built_from`, `built_to`; where none is given, from the serial, the line's production and `evidence`). JSON rows may
 * hold `facts` instead, whole. Null when something is wrong; every problem is noted.
 */
export function readUnit(values: Values, book: Book, today: Day, problems: Problems): GivenUnit | null {
  if (values.facts !== undefined) return unitOfFacts(values.facts, problems);
  const before = problems.all.length;
  const line = readLine(values, book, problems);
  const model = readModel(values, line, problems);
  const options = readOptions(values, line, problems);
  const serial = textOfValue(values, 'serial', problems);
  const given = builtOfValues(values, problems);
  const evidence = readEvidence(values, problems);
  if (line === null || problems.all.length > before) return null;
  const entry = line.known?.entry ?? null;
  const all = evidenceOfUnit({ line: entry, serial }, evidence);
  const built = given ?? inferBuildDays(all, book.shop, today);
  let facts: UnitFacts | null = null;
  return {
    line: line.code,
    model,
    options,
    built,
    facts: () => (facts ??= { line: line.code, model, options, built, serial: settledSerial() }),
  };

  function settledSerial(): UnitFacts['serial'] {
    return serialOfUnit({ line: entry, serial }, all, built, book.shop, today);
  }
}

function unitOfFacts(value: unknown, problems: Problems): GivenUnit | null {
  const read = readUnitFacts(value);
  if (read.ok) return { ...read.value, facts: () => read.value };
  for (const { field, message } of read.problems) problems.add(field === '' ? 'facts' : `facts.${field}`, message);
  return null;
}

export interface NamedLine {
  readonly code: string;
  /** Null in a rulebook that lists no lines: then any name will do. */
  readonly known: BookLine | null;
}

/** The product line of a row, known to the rulebook unless it lists none. */
export function readLine(values: Values, { lines }: Book, problems: Problems): NamedLine | null {
  const code = textOfValue(values, 'line', problems);
  if (code === null)
    return problems.add('line', `nothing stands here; give the product line, such as ${exampleOf(lines)}.`);
  const known = lines.get(code) ?? null;
  if (known === null && lines.size > 0)
    return problems.add('line', `"${code}" is no product line of this rulebook; it has ${someOf(lines.keys())}.`);
  return { code, known };
}

function exampleOf(lines: ReadonlyMap<string, unknown>): string {
  return [...lines.keys()][0] ?? 'its code';
}

function readModel(values: Values, line: NamedLine | null, problems: Problems): string | null {
  const model = textOfValue(values, 'model', problems);
  const models = line?.known?.models;
  if (model === null || !models || models.size === 0 || models.has(model)) return model;
  return problems.add('model', `"${model}" is no model of ${line.code}; it has ${someOf(models)}.`);
}

function readOptions(values: Values, line: NamedLine | null, problems: Problems): Record<string, boolean> {
  const options = optionsOfValues(values, problems);
  const known = line?.known?.options;
  const strange = known ? Object.keys(options).find((one) => !known.has(one)) : undefined;
  if (strange !== undefined)
    problems.add('options', `"${strange}" is no option of ${line!.code}; it has ${someOf(known!) || 'none'}.`);
  return options;
}

/** The `evidence` of a row: a list of pieces as libs/build-date reads them; an id may be left out. */
export function readEvidence(values: Values, problems: Problems): readonly Evidence[] {
  const { evidence } = values;
  if (evidence === undefined || evidence === null || evidence === '') return [];
  if (!Array.isArray(evidence) || evidence.length > MOST_PIECES) {
    problems.add('evidence', `must be a list of at most ${MOST_PIECES} pieces; see docs/formats.md.`);
    return [];
  }
  return evidence.flatMap((piece: unknown, i) => {
    const read = readShape(EvidenceSchema, { id: `evidence ${i + 1}`, ...(piece as object) });
    if (read.ok) return [read.value];
    const [one] = read.problems;
    problems.add(['evidence', i + 1, ...one.path].join('.'), sayShape(one));
    return [];
  });
}
