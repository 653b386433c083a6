import type { DaySpan } from '../../day';
import type { PositionBook } from '../rulebook-history';
import { stretchesWithin, type CutStretch } from '../ruling-for';
import type { PieceWhere } from '../ruling';
import type { SlotFacts, UnitFacts } from '../unit-facts';
import type { AuditLine } from './finding';

/** One way a unit of the line can be, its build date aside, with the stretches of its production span in order. */
export interface Course {
  /** Facts of a unit that is this way. */
  readonly facts: SlotFacts;
  readonly where: Omit<PieceWhere, 'built'>;
  readonly stretches: readonly CutStretch[];
}

/**
 * Every way a unit of the line can be that the rules of the position can tell apart. One course where they tell none.
 * Names of models and schemes that the line does not have are left out, and so is "another one" where there is none.
 */
export function coursesOf(
  book: PositionBook,
  line: AuditLine,
  at: { readonly inForceOn: number; readonly knownAt: number },
): readonly Course[] {
  const unknown: SlotFacts = { line: line.line, model: null, options: {}, serial: null };
  const variants = book.variantsOf(unknown, at.inForceOn, at.knownAt);
  const [models, schemes] = [new Set<string>(), new Set<string>()];
  for (const { where } of variants) {
    if (where.model !== null && where.model !== 'another-model') models.add(where.model.only);
    if (where.serial !== null && where.serial !== 'another-scheme') schemes.add(where.serial.scheme);
  }
  const anotherModel = line.models.length === 0 ? 'another' : line.models.find((model) => !models.has(model));
  const anotherScheme = line.schemes.length === 0 ? null : line.schemes.find((scheme) => !schemes.has(scheme));
  return variants.flatMap(({ where, stretches }) => {
    const model = modelFor(where, line, anotherModel);
    const serial = serialFor(where, line, anotherScheme);
    if (model === undefined || serial === undefined) return [];
    const options = Object.fromEntries(where.options.map(({ option, fitted }) => [option, fitted]));
    const facts = { line: line.line, model, options, serial };
    return [{ facts, where, stretches: stretchesWithin(stretches, [line.production]) }];
  });
}

/** A unit that is this way and was built in the span. */
export function unitOf({ facts }: Course, built: DaySpan): UnitFacts {
  const day = built.from !== -Infinity ? built.from : built.to !== Infinity ? built.to - 1 : 0;
  return { ...facts, built: [{ from: day, to: day + 1 }] };
}

/** Undefined: the line has no such model. */
function modelFor(
  { model }: Omit<PieceWhere, 'built'>,
  line: AuditLine,
  another: string | undefined,
): string | undefined {
  if (model === null) return line.models[0] ?? 'any';
  if (model === 'another-model') return another;
  return line.models.length === 0 || line.models.includes(model.only) ? model.only : undefined;
}

/** Undefined: the line has no such scheme. Null: a unit that bears no serial of any scheme named. */
function serialFor(
  { serial }: Omit<PieceWhere, 'built'>,
  line: AuditLine,
  another: string | null | undefined,
): UnitFacts['serial'] | undefined {
  if (serial === null) return null;
  if (serial === 'another-scheme')
    return another === null || another === undefined ? another : { scheme: another, key: '0' };
  if (line.schemes.length > 0 && !line.schemes.includes(serial.scheme)) return undefined;
  return { scheme: serial.scheme, key: serial.from ?? '' };
}
