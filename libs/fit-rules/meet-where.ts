import { intersectionOf } from '../day';
import type { OptionCondition, SerialSpan } from './fit-rule';
import { byText } from './prepared-rule';
import type { PieceWhere } from './ruling';

/** What "another model" and "another scheme" leave out: the names that the pieces beside them bear. */
export interface NamedBeside {
  readonly models: ReadonlySet<string>;
  readonly schemes: ReadonlySet<string>;
}

/** The names that a set of pieces bears. */
export function namedBeside(pieces: readonly { readonly where: PieceWhere }[]): NamedBeside {
  const [models, schemes] = [new Set<string>(), new Set<string>()];
  for (const { where } of pieces) {
    if (where.model !== null && where.model !== 'another-model') models.add(where.model.only);
    if (where.serial !== null && where.serial !== 'another-scheme') schemes.add(where.serial.scheme);
  }
  return { models, schemes };
}

/** Where two pieces of different cuts both lie, or null when they share no unit. */
export function meetOfWhere(
  a: PieceWhere,
  b: PieceWhere,
  besideA: NamedBeside,
  besideB: NamedBeside,
): PieceWhere | null {
  const built = intersectionOf(a.built, b.built);
  const model = meetOfModels(a.model, b.model, besideA.models, besideB.models);
  const serial = meetOfSerials(a.serial, b.serial, besideA.schemes, besideB.schemes);
  const options = meetOfOptions(a.options, b.options);
  if (built.length === 0 || model === undefined || serial === undefined || options === undefined) return null;
  return { built, model, serial, options };
}

type Model = PieceWhere['model'];
type Serial = PieceWhere['serial'];

/** Undefined: no model is both. */
function meetOfModels(a: Model, b: Model, namedA: ReadonlySet<string>, namedB: ReadonlySet<string>): Model | undefined {
  if (a === null || b === null) return a ?? b;
  if (a === 'another-model') return b === 'another-model' || !namedA.has(b.only) ? b : undefined;
  if (b === 'another-model') return namedB.has(a.only) ? undefined : a;
  return a.only === b.only ? a : undefined;
}

function meetOfSerials(
  a: Serial,
  b: Serial,
  namedA: ReadonlySet<string>,
  namedB: ReadonlySet<string>,
): Serial | undefined {
  if (a === null || b === null) return a ?? b;
  if (a === 'another-scheme') return b === 'another-scheme' || !namedA.has(b.scheme) ? b : undefined;
  if (b === 'another-scheme') return namedB.has(a.scheme) ? undefined : a;
  return a.scheme === b.scheme ? meetOfSpans(a, b) : undefined;
}

function meetOfSpans(a: SerialSpan, b: SerialSpan): SerialSpan | undefined {
  const from = a.from === null || (b.from !== null && b.from > a.from) ? b.from : a.from;
  const to = a.to === null || (b.to !== null && b.to < a.to) ? b.to : a.to;
  return from !== null && to !== null && from >= to ? undefined : { scheme: a.scheme, from, to };
}

function meetOfOptions(
  a: readonly OptionCondition[],
  b: readonly OptionCondition[],
): readonly OptionCondition[] | undefined {
  const settings = new Map(a.map(({ option, fitted }) => [option, fitted]));
  for (const { option, fitted } of b) {
    if ((settings.get(option) ?? fitted) !== fitted) return undefined;
    settings.set(option, fitted);
  }
  return [...settings.keys()].sort(byText).map((option) => ({ option, fitted: settings.get(option)! }));
}
