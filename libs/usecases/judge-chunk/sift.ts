import { columnDay, verdicts, type BulkJudge, type InstallColumns, type SlotFacts } from '../../fit-rules';
import { groupBy } from '../group-by';
import type { PlaceOfUnit } from '../judge-installs';
import {
  NOT_THERE,
  SCANNED,
  SCANNED_COLUMNS,
  type InstallScan,
  type InstallScans,
  type ScannedUnit,
} from '../ports/install-scan';
import type { LoadedRulebook } from '../rulebook';
import { ScanNumbers, type NumberedPlace } from './scan-numbers';

const [RIGHT, ALLOWED] = [verdicts.indexOf('right'), verdicts.indexOf('allowed')];

/**
 * Judges a scan by numbers alone and answers what is left: what is good and stays as it is, with nothing standing about
 * it, needs no more; everything else is to be judged with its reasons, under lock. In order of unit.
 */
export async function sift(scan: InstallScan, rulebook: LoadedRulebook, scans: InstallScans): Promise<PlaceOfUnit[]> {
  const numbers = ScanNumbers.of(rulebook);
  await numbers.learn(scan, scans);
  const { bulk } = rulebook.judge;
  const codes = new Uint8Array(scan.count);
  bulk.judgeColumns(columnsOf(scan, numbers, bulk), scan.count, codes);
  return left(scan, codes).sort((a, b) => a.unitId - b.unitId);
}

/**
 * The scan as the bulk judge takes it. A row that only judging with reasons can settle (a part told by its marks, build
 * dates in several stretches) keeps the empty span of build dates it begins with: it is judged undecided, so it is left.
 */
function columnsOf({ rows, count, units }: InstallScan, numbers: ScanNumbers, bulk: BulkJudge): InstallColumns {
  const [slot, part, builtFrom, builtTo, fittedOn] = Array.from({ length: 5 }, () => new Int32Array(count)) as [
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
  ];
  let unit = new UnitAtHand(NOT_THERE, undefined);
  for (let i = 0, at = 0; i < count; i++, at += SCANNED_COLUMNS) {
    const unitId = rows[at + SCANNED.unit]!;
    if (unit.id !== unitId) unit = new UnitAtHand(unitId, units.get(unitId));
    const place = numbers.place(rows[at + SCANNED.position]!);
    const partId = rows[at + SCANNED.part]!;
    const built = unit.unit?.built;
    if (partId === NOT_THERE || place === undefined || built?.length !== 1) continue;
    slot[i] = bulk.slotOfUnit(unit.slotsAt(place, bulk), place.order);
    part[i] = numbers.part(partId);
    builtFrom[i] = columnDay(built[0]!.from);
    builtTo[i] = columnDay(built[0]!.to);
    fittedOn[i] = rows[at + SCANNED.fittedOn]!;
  }
  return { slot, part, builtFrom, builtTo, fittedOn };
}

/** The rows that are not good, not as they were, or have something standing about them. */
function left({ rows, count, standing }: InstallScan, codes: Uint8Array): PlaceOfUnit[] {
  const standingOf = groupBy(standing, ({ unitId }) => unitId);
  const suspects: PlaceOfUnit[] = [];
  for (let i = 0, at = 0; i < count; i++, at += SCANNED_COLUMNS) {
    const code = codes[i]!;
    const settled = (code === RIGHT || code === ALLOWED) && code === rows[at + SCANNED.verdict];
    const unitId = rows[at + SCANNED.unit]!;
    const about = standingOf.get(unitId);
    if (settled && about === undefined) continue;
    const here = { unitId, positionId: rows[at + SCANNED.position]!, place: rows[at + SCANNED.place]! };
    if (!settled || about!.some(isAt(here))) suspects.push(here);
  }
  return suspects;
}

const isAt = (here: PlaceOfUnit) => (one: PlaceOfUnit) =>
  one.positionId === here.positionId && one.place === here.place;

/** The unit of the rows being read: they stand together, so it is looked up once for all of them. */
class UnitAtHand {
  private line = -1;
  private start = -1;

  constructor(
    readonly id: number,
    readonly unit: ScannedUnit | undefined,
  ) {}

  /** Where the slots of the unit begin on the line of the place: looked for once, as a unit is of one line. */
  slotsAt({ line, lineNumber }: NumberedPlace, bulk: BulkJudge): number {
    if (this.line !== lineNumber) {
      const { model, options, serial } = this.unit!;
      const facts: SlotFacts = { line, model, options, serial };
      this.line = lineNumber;
      this.start = bulk.slotsOfUnit(lineNumber, facts);
    }
    return this.start;
  }
}
