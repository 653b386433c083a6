import type { Day } from '../../day';
import { writeSerial } from '../../build-date';
import type { Calendar } from '../calendar';
import type { DemoOwner, DemoUnit, UnitTruth } from '../demo-shop';
import type { LineRoom } from '../lines/line-room';
import { schemeUsedOn } from '../makers/serial-schemes';
import type { Chance } from '../prng';
import { serialKeyOf, type Shelf } from '../rulebook/rules-of-line';
import { evidenceOf, plateOf } from './evidence-of-unit';

/** How many units of each line the shop knows; 1,200 in all. */
const COUNTS: Readonly<Record<string, number>> = {
  DRIFTBREAK: 300,
  LOAMER: 220,
  STAVEWRIGHT: 110,
  TWIGMAW: 150,
  SEDGELINE: 100,
  SODTURN: 140,
  BOUGHFALL: 90,
  FALLOWSWEEP: 90,
};

export interface UnitRoom extends Shelf {
  readonly owners: readonly DemoOwner[];
}

/** All units, line by line. The first `owners.length` units go round all owners, so that nobody owns nothing. */
export function makeUnits(lines: readonly LineRoom[], room: UnitRoom, chance: Chance): DemoUnit[] {
  const units: DemoUnit[] = [];
  for (const line of lines) {
    for (let n = 0; n < (COUNTS[line.code] ?? 0); n++) units.push(makeUnit(line, units.length, room, chance));
  }
  return units;
}

function makeUnit(line: LineRoom, index: number, room: UnitRoom, chance: Chance): DemoUnit {
  const { calendar, schemes, owners } = room;
  const built = buildDay(line, calendar, chance);
  const scheme = schemeUsedOn(schemes, line.maker, built);
  const sequence = chance.whole(1, 950);
  const truth: UnitTruth = {
    built,
    options: Object.fromEntries(line.options.map(({ code }) => [code, chance.happens(0.35)])),
    serial: { scheme: scheme.id, key: serialKeyOf(scheme, { day: built, sequence }, room) },
  };
  const written = writeSerial(scheme, built, { sequence });
  const readable = !chance.happens(line.code === 'DRIFTBREAK' ? 0.04 : 0.09);
  const serial = readable ? written : null;
  const model = chance.oneOf(line.models).number;
  const firstSeen = firstSeenOn(built, calendar, chance);
  const known = { line, serial, built, firstSeen, calendar };
  const evidence = evidenceOf(known, chance);
  return {
    index,
    owner: index < owners.length ? index : chance.whole(0, owners.length - 1),
    line: line.code,
    model,
    serial,
    serialAbsent: readable
      ? null
      : chance.oneOf(['plate worn smooth', 'plate painted over', 'plate missing', 'plate rusted through']),
    options: optionsAsKnown(truth.options, chance),
    plate: plateOf(known, model, evidence),
    evidence,
    firstSeen,
    truth,
  };
}

/** Machines come to the shop mostly when they are three to nine years old; of a line made for long, older ones too. */
function buildDay(line: LineRoom, { ago, back }: Calendar, chance: Chance): Day {
  const [from, to] = [line.producedFrom, Math.min(line.producedUntil ?? Infinity, back(150))];
  const [youngFrom, youngTo] = [Math.max(from, ago(9, 1)), Math.min(to, ago(2, 3))];
  const longMade = to - from > 18 * 365;
  return chance.happens(longMade ? 0.25 : 0.78) ? chance.whole(youngFrom, youngTo - 1) : chance.whole(from, to - 1);
}

function firstSeenOn(built: Day, { back }: Calendar, chance: Chance): Day {
  const opening = back(4 * 365);
  return Math.min(Math.max(built + chance.whole(60, 1500), opening + chance.whole(0, 900)), back(20));
}

/** Whether an option is fitted is noted on most units, not on all. */
function optionsAsKnown(options: Readonly<Record<string, boolean>>, chance: Chance): Record<string, boolean> {
  return Object.fromEntries(Object.entries(options).filter(() => chance.happens(0.82)));
}
