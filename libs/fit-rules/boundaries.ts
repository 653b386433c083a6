import { measureOf } from '../day';
import type { Branch, KeyedPiece } from './branch';
import type { OptionCondition } from './fit-rule';
import type { Boundary, NotNeeded } from './ruling';
import type { UnitFacts } from './unit-facts';

/** Every boundary that parts two outcomes: on the build date, the serial, an option, the model. Each once. */
export function boundariesOf(branches: readonly Branch[]): readonly Boundary[] {
  if (branches.length === 1) return builtBoundaries(branches);
  const inScheme = serialBoundaries(branches);
  const serial = inScheme.length > 0 ? inScheme : schemeBoundary(branches);
  return [...builtBoundaries(branches), ...serial, ...optionBoundaries(branches), ...modelBoundary(branches)];
}

/** The unknown facts that part no outcomes. Options count only where the rules ask for them. */
export function notNeededIn(
  boundaries: readonly Boundary[],
  { built, serial, model }: UnitFacts,
  optionsCut: readonly string[],
): readonly NotNeeded[] {
  const cut = new Set(boundaries.map((one) => (one.axis === 'option' ? `option ${one.option}` : one.axis)));
  const needless: NotNeeded[] = [];
  if (measureOf(built) > 1 && !cut.has('built')) needless.push({ fact: 'build-date' });
  const serialUnknown = (serial?.key ?? null) === null;
  if (serialUnknown && !cut.has('serial') && !cut.has('serial-scheme')) needless.push({ fact: 'serial' });
  if (model === null && !cut.has('model')) needless.push({ fact: 'model' });
  for (const option of optionsCut) if (!cut.has(`option ${option}`)) needless.push({ fact: 'option', option });
  return needless;
}

function builtBoundaries(branches: readonly Branch[]): Boundary[] {
  const found = new Map<number, Boundary>();
  for (const { pieces } of branches) {
    for (let i = 1; i < pieces.length; i++) {
      const before = pieces[i - 1]!.piece.where.built;
      const at = pieces[i]!.piece.where.built[0]!.from;
      found.set(at, { axis: 'built', at, after: before[before.length - 1]!.to - 1 });
    }
  }
  return [...found.keys()].sort((a, b) => a - b).map((at) => found.get(at)!);
}

/** The branch as text: two branches with the same text give every build date the same outcome. */
function course(pieces: readonly KeyedPiece[]): string {
  return pieces.map(({ key, piece }) => `${piece.where.built[0]!.from} ${key}`).join('\n');
}

/** Model and options: what must be equal for two branches to differ in their serial alone. */
function settingOf({ model, options }: Branch): string {
  return JSON.stringify([model, options]);
}

function serialBoundaries(branches: readonly Branch[]): Boundary[] {
  const found = new Map<string, Boundary>();
  for (const branch of branches) {
    const { serial } = branch;
    if (serial === null || serial.to === null) continue;
    const { scheme, to: at } = serial;
    const next = branches.find(
      (other) => other.serial?.scheme === scheme && other.serial.from === at && settingOf(other) === settingOf(branch),
    );
    if (next && course(next.pieces) !== course(branch.pieces)) {
      found.set(`${scheme}\n${at}`, { axis: 'serial', scheme, at });
    }
  }
  return [...found.keys()].sort().map((key) => found.get(key)!);
}

/** No cut inside a scheme parts outcomes, but the schemes do among themselves. */
function schemeBoundary(branches: readonly Branch[]): Boundary[] {
  const courses = new Map<string, string>();
  for (const branch of branches) {
    const setting = settingOf(branch);
    const seen = courses.get(setting);
    if (seen === undefined) courses.set(setting, course(branch.pieces));
    else if (seen !== course(branch.pieces)) {
      const schemes = new Set(branches.flatMap(({ serial }) => (serial === null ? [] : [serial.scheme])));
      return [{ axis: 'serial-scheme', schemes: [...schemes].sort() }];
    }
  }
  return [];
}

function optionBoundaries(branches: readonly Branch[]): Boundary[] {
  const names = new Set(branches.flatMap(({ options }) => options.map(({ option }) => option)));
  return [...names]
    .sort()
    .filter((name) => branches.some((branch) => flipsAt(branch, name, branches)))
    .map((option) => ({ axis: 'option', option }));
}

/** True when turning the option round, and nothing else, changes the outcomes. */
function flipsAt(branch: Branch, name: string, branches: readonly Branch[]): boolean {
  const turned = { ...branch, options: branch.options.map((one) => (one.option === name ? turn(one) : one)) };
  const other = branches.find((one) => serialOf(one) === serialOf(branch) && settingOf(one) === settingOf(turned));
  return other !== undefined && course(other.pieces) !== course(branch.pieces);
}

function turn({ option, fitted }: OptionCondition): OptionCondition {
  return { option, fitted: !fitted };
}

function serialOf({ serial }: Branch): string {
  return serial === null ? '' : `${serial.scheme}\n${serial.from ?? ''}`;
}

/** Some model has outcomes that another has not. */
function modelBoundary(branches: readonly Branch[]): Boundary[] {
  const courses = new Map<string, Set<string>>();
  for (const { model, pieces } of branches) {
    const name = model === null || model === 'another-model' ? '' : model.only;
    const own = courses.get(name) ?? new Set();
    courses.set(name, own.add(course(pieces)));
  }
  const different = new Set([...courses.values()].map((own) => [...own].sort().join('\n\n')));
  return different.size > 1
    ? [{ axis: 'model', models: [...courses.keys()].filter((name) => name !== '').sort() }]
    : [];
}
