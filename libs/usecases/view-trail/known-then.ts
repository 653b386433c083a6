import type { KnownOtherwise } from '../../contracts';
import type { KnownOfUnit } from '../build-days/index';
import type { KnownChange } from '../ports/trail-store';

/**
 * What was known of a unit when an entry of its trail was written: what is known today, with every later change undone,
 * the newest first. Answers the same object for entries between which nothing changed. What changed in the very
 * transaction of the entry counts from its own place on: the trail keeps the order in which things were done.
 */
export function knownThen(today: KnownOfUnit, changes: readonly KnownChange[]): (cursor: string) => KnownOfUnit {
  let known = today;
  const before = changes.map(({ cursor, before: was }) => ({ cursor, known: (known = { ...known, ...was }) }));
  return (cursor) => before.findLast((change) => isAfter(change.cursor, cursor))?.known ?? today;
}

const SIDES: readonly (readonly [KnownOtherwise, (known: KnownOfUnit) => unknown])[] = [
  ['line', ({ line }) => line?.id],
  ['model', ({ model }) => model?.number],
  ['options', ({ options }) => Object.entries(options).sort()],
  ['serial', ({ serialScheme, serialKey }) => [serialScheme, serialKey]],
  ['build-days', ({ built }) => built.map(({ from, to }) => [from, to])],
];

/** What of it is known otherwise in the second than in the first. */
export function knownOtherwise(then: KnownOfUnit, today: KnownOfUnit): KnownOtherwise[] {
  return SIDES.flatMap(([name, side]) => (JSON.stringify(side(then)) === JSON.stringify(side(today)) ? [] : [name]));
}

/** Whether one cursor of the trail stands after another: a place in the chain, and a part of that place. */
function isAfter(one: string, other: string): boolean {
  const [[place, part], [otherPlace, otherPart]] = [sidesOf(one), sidesOf(other)];
  return place === otherPlace ? part > otherPart : place > otherPlace;
}

function sidesOf(cursor: string): readonly [bigint, bigint] {
  const [place = '0', part = '0'] = cursor.split('.');
  return [BigInt(place), BigInt(part)];
}
