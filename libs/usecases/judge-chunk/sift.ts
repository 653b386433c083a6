import { verdicts, type BulkJudge, type InstallColumns } from '../../fit-rules';
import { groupBy } from '../group-by';
import type { PlaceOfUnit } from '../judge-installs';
import {
  NOT_THERE,
  SCANNED,
  SCANNED_COLUMNS,
  type InstallScan,
  type InstallScans,
  type ScannedUnits,
} from '../ports/install-scan';
import type { LoadedRulebook } from '../rulebook';
import { ScanNumbers, type NumberedPlace } from './scan-numbers';

const [RIGHT, ALLOWED] = [verdicts.indexOf('right'), verdicts.indexOf('allowed')];

/** Taken hold of once: they are looked up for every row. */
const { unit: UNIT, position: POSITION, place: PLACE, part: PART, fittedOn: FITTED_ON, verdict: VERDICT } = SCANNED;
const [WIDTH, NO_PART] = [SCANNED_COLUMNS, NOT_THERE];

/** An install that is to be judged with its reasons. */
export interface Suspect extends PlaceOfUnit {
  /** By numbers its verdict is what it was, so nothing is likely to follow. */
  readonly stands: boolean;
}

/** Columns for the rows of one scan after the other: made anew for each, they would have the whole memory looked through. */
class Room implements InstallColumns {
  readonly slot: Int32Array;
  readonly part: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
  readonly fittedOn: Int32Array;
  readonly codes: Uint8Array;

  constructor(readonly size: number) {
    this.slot = new Int32Array(size);
    this.part = new Int32Array(size);
    this.builtFrom = new Int32Array(size);
    this.builtTo = new Int32Array(size);
    this.fittedOn = new Int32Array(size);
    this.codes = new Uint8Array(size);
  }
}

let room = new Room(0);

/**
 * Judges a scan by numbers alone and answers what is left: what is good and stays as it is, with nothing standing about
 * it, needs no more; everything else is to be judged with its reasons, under lock. In order of unit.
 */
export async function sift(scan: InstallScan, rulebook: LoadedRulebook, scans: InstallScans): Promise<Suspect[]> {
  const numbers = ScanNumbers.of(rulebook);
  await numbers.learn(scan, scans);
  const { bulk } = rulebook.judge;
  // From here to the end nobody else has a turn: one room serves all scans.
  if (room.size < scan.count) room = new Room(scan.count);
  fill(room, scan, numbers, bulk);
  bulk.judgeColumns(room, scan.count, room.codes);
  return left(scan, room.codes).sort((a, b) => a.unitId - b.unitId);
}

/**
 * Lays the scan out as the bulk judge takes it. A row that only judging with reasons can settle (a part told by its marks,
 * build dates in several stretches) has an empty span of build dates: it is judged undecided, so it is left.
 */
function fill(room: Room, { rows, count, units }: InstallScan, numbers: ScanNumbers, bulk: BulkJudge): void {
  const { slot, part, builtFrom, builtTo, fittedOn } = room;
  const unit = new UnitAtHand(units, bulk);
  for (let i = 0, at = 0; i < count; i++, at += WIDTH) {
    unit.goTo(rows[at + UNIT]!);
    const partId = rows[at + PART]!;
    const place = unit.isBuiltInOneSpan && partId !== NO_PART ? numbers.place(rows[at + POSITION]!) : undefined;
    if (place === undefined) {
      slot[i] = builtFrom[i] = builtTo[i] = 0;
      continue;
    }
    slot[i] = bulk.slotOfUnit(unit.slotsAt(place), place.order);
    part[i] = numbers.part(partId);
    builtFrom[i] = unit.builtFrom;
    builtTo[i] = unit.builtTo;
    fittedOn[i] = rows[at + FITTED_ON]!;
  }
}

/** The rows that are not good, not as they were, or have something standing about them. */
function left({ rows, count, standing }: InstallScan, codes: Uint8Array): Suspect[] {
  const standingOf = groupBy(standing, ({ unitId }) => unitId);
  const suspects: Suspect[] = [];
  let lastUnit = NO_PART;
  let about: readonly PlaceOfUnit[] | undefined;
  for (let i = 0, at = 0; i < count; i++, at += WIDTH) {
    const unitId = rows[at + UNIT]!;
    if (unitId !== lastUnit) about = standingOf.get((lastUnit = unitId));
    const code = codes[i]!;
    const stands = code === rows[at + VERDICT];
    const settled = stands && (code === RIGHT || code === ALLOWED);
    if (settled && about === undefined) continue;
    const here = { unitId, positionId: rows[at + POSITION]!, place: rows[at + PLACE]!, stands };
    if (!settled || about!.some(isAt(here))) suspects.push(here);
  }
  return suspects;
}

const isAt = (here: PlaceOfUnit) => (one: PlaceOfUnit) =>
  one.positionId === here.positionId && one.place === here.place;

/** The unit of the rows being read: they stand together and in order of unit, so it is seldom looked for. */
class UnitAtHand {
  isBuiltInOneSpan = false;
  builtFrom = 0;
  builtTo = 0;
  private id = NO_PART;
  /** Where it stands among the units. */
  private at = -1;
  private line = -1;
  private start = -1;

  constructor(
    private readonly units: ScannedUnits,
    private readonly bulk: BulkJudge,
  ) {}

  goTo(id: number): void {
    if (id === this.id) return;
    const { units } = this;
    this.id = id;
    this.line = -1;
    this.at = units.id[this.at + 1] === id ? this.at + 1 : indexOf(units, id);
    const [from, to] = this.at < 0 ? [0, 0] : [units.builtFrom[this.at]!, units.builtTo[this.at]!];
    this.isBuiltInOneSpan = from < to;
    this.builtFrom = from;
    this.builtTo = to;
  }

  /** Where the slots of the unit begin on the line of the place: looked for once, as a unit is of one line. */
  slotsAt({ line, lineNumber }: NumberedPlace): number {
    if (this.line !== lineNumber) {
      const { units, at } = this;
      const [scheme, key] = [units.serialScheme[at]!, units.serialKey[at]!];
      const serial = scheme === null ? null : { scheme, key };
      this.line = lineNumber;
      this.start = this.bulk.slotsOfUnit(lineNumber, {
        line,
        model: units.model[at]!,
        options: units.options[at]!,
        serial,
      });
    }
    return this.start;
  }
}

/** -1 for a unit that is not there any more. */
function indexOf({ id: ids, count }: ScannedUnits, id: number): number {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ids[middle]! < id) low = middle + 1;
    else high = middle;
  }
  return low < count && ids[low] === id ? low : -1;
}
