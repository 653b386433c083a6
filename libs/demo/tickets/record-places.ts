import type { Day } from '../../day';
import type { PartKey } from '../../part-number';
import { instantAt } from '../calendar';
import type { DemoLine, DemoPart, DemoPosition, DemoRecord, DemoUnit } from '../demo-shop';
import type { Chance } from '../prng';
import { packOf } from '../rulebook/part-keys';
import type { WhatIsRight } from '../rulebook/what-is-right';
import { conditionOf, lookedAt, type HeldParts } from './held-parts';

/** What the recording of a ticket needs. */
export interface RecordRoom {
  readonly parts: ReadonlyMap<PartKey, DemoPart>;
  readonly right: WhatIsRight;
  readonly held: HeldParts;
  readonly chance: Chance;
}

const NOTHING = {
  part: null,
  partText: null,
  pack: null,
  marks: null,
  candidates: [],
  fittedOn: null,
  leftOutWhy: null,
};
/** Where the kept bulletin looks, nobody made a mistake, so that its count stays what it should be. */
const CAREFUL = 'AUG-PIN';

/** As found: every place of a position, in the order of its places. */
export function recordFound(unit: DemoUnit, position: DemoPosition, at: number, room: RecordRoom): DemoRecord[] {
  return position.placeNames.map((_, index) => foundIn(unit, position, index + 1, at, room));
}

function foundIn(unit: DemoUnit, position: DemoPosition, place: number, at: number, room: RecordRoom): DemoRecord {
  const base = { position: position.code, place, side: 'found' as const, at };
  const held = room.held.in(unit, position, place);
  const condition = held.part === null ? 'missing' : conditionOf(position, room.chance);
  if (held.part === null || condition === 'missing') return { ...base, ...NOTHING, condition: 'missing' };
  const part = room.parts.get(held.part)!;
  const seen = held.fittedOn === null && room.chance.happens(0.09) ? lookedAt(part, position, room.parts) : null;
  if (seen) return { ...base, ...NOTHING, ...seen, condition };
  return {
    ...base,
    ...NOTHING,
    part: part.key,
    partText: typed(part, room.chance),
    pack: 1,
    condition,
    fittedOn: held.fittedOn,
  };
}

/**
 * As left: what was not sound or not right by the papers the shop had that day is replaced by the right part; the
 * rest stays. Now and then someone leaves what was there, or takes the part the old list names.
 */
export function recordLeft(
  unit: DemoUnit,
  position: DemoPosition,
  found: readonly DemoRecord[],
  at: number,
  day: Day,
  room: RecordRoom,
): DemoRecord[] {
  const answer = room.right(unit, position.code, day, instantAt(day, 23));
  const careless = position.code !== CAREFUL && room.chance.happens(0.02);
  return found.map((record) => {
    const keeps = record.condition === 'sound' && record.part !== null;
    const good = answer === null || record.part === answer.required || answer.allowed.includes(record.part ?? '');
    if (keeps && (good || careless)) return { ...record, side: 'left', at };
    const fitted = careless ? position.parts[0]! : (answer?.required ?? record.part ?? position.parts[0]!);
    const part = room.parts.get(fitted)!;
    room.held.put(unit, position, record.place, { part: fitted, fittedOn: day });
    const bag = position.joint !== null && room.chance.happens(0.3) ? 10 : 1;
    const partText = bag === 1 ? part.number : packOf(part.maker, part.number, bag);
    return {
      ...record,
      ...NOTHING,
      side: 'left',
      part: fitted,
      partText,
      pack: bag,
      condition: 'sound',
      fittedOn: day,
      at,
    };
  });
}

/** Places nobody looked at on this ticket, each with the reason. */
export function recordLeftOut(line: DemoLine, done: ReadonlySet<string>, at: number): DemoRecord[] {
  return line.positions
    .filter(({ code }) => !done.has(code))
    .flatMap(({ code, placeNames }) =>
      placeNames.map((_, index) => ({
        position: code,
        place: index + 1,
        side: 'found' as const,
        ...NOTHING,
        condition: null,
        leftOutWhy: 'not part of this job',
        at,
      })),
    );
}

/** People type numbers in many ways; all mean the same part. */
function typed({ number }: DemoPart, chance: Chance): string {
  return chance.weighted([
    [number, 7],
    [number.toLowerCase(), 1],
    [number.replace(/[-.]/g, ' '), 1],
    [number.replace(/[-.]/g, ''), 1],
  ]);
}
