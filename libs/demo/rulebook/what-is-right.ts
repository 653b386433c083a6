import { parseDay, type Day } from '../../day';
import { usualStanding, type FitRuleFile, type SourceFile } from '../../fit-rules';
import type { PartKey } from '../../part-number';
import type { UnitTruth } from '../demo-shop';

/** What the papers of a day say to someone who knows everything about the unit. */
export interface RightPart {
  readonly required: PartKey;
  readonly allowed: readonly PartKey[];
  readonly barred: readonly PartKey[];
}

export interface WhatIsRight {
  /**
   * The right part by the papers in force on a day, of those the shop knew at an instant (null: whether it knew them
   * or not). Null where no paper requires one.
   */
  (
    unit: { line: string; model: string; truth: UnitTruth },
    position: string,
    on: Day,
    knownAt: number | null,
  ): RightPart | null;
}

interface Sharp {
  readonly file: FitRuleFile;
  readonly built: readonly [number, number];
  readonly inForce: readonly [number, number];
  readonly known: readonly [number, number];
  readonly rank: number;
}

/**
 * The demo's own short reckoning, for a unit whose build day, options and serial are known for certain, as its maker
 * knows them. It serves only to say what a works or a careful technician fitted; the product never sees it.
 */
export function whatIsRight(rules: readonly FitRuleFile[], sources: readonly SourceFile[]): WhatIsRight {
  const byPlace = new Map<string, Sharp[]>();
  for (const file of rules) {
    const sharp = sharpen(
      file,
      sources.find(({ key }) => key === file.source)!,
    );
    for (const position of file.positions) append(byPlace, `${file.line} ${position}`, sharp);
  }
  return (unit, position, on, knownAt) => {
    const covering = (byPlace.get(`${unit.line} ${position}`) ?? []).filter((sharp) =>
      covers(sharp, unit, on, knownAt),
    );
    const replaced = new Set(covering.flatMap(({ file }) => file.replaces));
    const left = covering.filter(({ file }) => !replaced.has(file.key));
    const deciding = left.filter(({ file }) => file.required !== null).sort((a, b) => b.rank - a.rank)[0];
    if (!deciding) return null;
    const { required, allowed } = deciding.file;
    return { required: required!, allowed, barred: left.flatMap(({ file }) => file.barred.map(({ part }) => part)) };
  };
}

function sharpen(file: FitRuleFile, source: SourceFile): Sharp {
  return {
    file,
    built: span(file.built),
    inForce: span(file.inForce),
    known: [instant(file.known.from, -Infinity), instant(file.known.to, Infinity)],
    rank: usualStanding[source.kind] * 1_000_000 + parseDay(source.issued)!,
  };
}

function covers(
  { file, built, inForce, known }: Sharp,
  { model, truth }: { model: string; truth: UnitTruth },
  on: Day,
  knownAt: number | null,
): boolean {
  if (knownAt === null ? known[1] !== Infinity : !within(known, knownAt)) return false;
  if (!within(inForce, on) || !within(built, truth.built)) return false;
  if (file.models.length > 0 && !file.models.includes(model)) return false;
  if (file.options.some(({ option, fitted }) => (truth.options[option] ?? false) !== fitted)) return false;
  const { serials } = file;
  if (serials === null) return true;
  if (serials.scheme !== truth.serial.scheme) return false;
  return (serials.from ?? '') <= truth.serial.key && (serials.to === null || truth.serial.key < serials.to);
}

const within = ([from, to]: readonly [number, number], value: number): boolean => from <= value && value < to;
const span = ({ from, to }: { from: string | null; to: string | null }): [number, number] => [
  from === null ? -Infinity : parseDay(from)!,
  to === null ? Infinity : parseDay(to)!,
];
const instant = (text: string | null, open: number): number => (text === null ? open : Date.parse(text));

function append<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
