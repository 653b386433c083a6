import { verdicts, type SlotFacts } from '../../fit-rules';
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
/** Only judging with reasons can tell. */
const CANNOT_TELL = -1;

/**
 * Judges a scan by numbers alone and answers what is left: what is good and stays as it is, with nothing standing about
 * it, needs no more; everything else is to be judged with its reasons, under lock. In order of unit.
 */
export async function sift(scan: InstallScan, rulebook: LoadedRulebook, scans: InstallScans): Promise<PlaceOfUnit[]> {
  const numbers = ScanNumbers.of(rulebook);
  await numbers.learn(scan, scans);
  const standing = byUnit(scan.standing);
  const suspects: PlaceOfUnit[] = [];
  const { rows, count } = scan;
  let unit: UnitAtHand = new UnitAtHand(NOT_THERE, undefined, undefined);
  for (let at = 0; at < count * SCANNED_COLUMNS; at += SCANNED_COLUMNS) {
    const unitId = rows[at + SCANNED.unit]!;
    if (unit.id !== unitId) unit = new UnitAtHand(unitId, scan.units.get(unitId), standing.get(unitId));
    const code = codeOf(rows, at, unit, numbers, rulebook);
    const isGood = code === RIGHT || code === ALLOWED;
    const settled = isGood && code === rows[at + SCANNED.verdict];
    if (settled && unit.standing === undefined) continue;
    const here = { unitId, positionId: rows[at + SCANNED.position]!, place: rows[at + SCANNED.place]! };
    if (!settled || unit.standsAt(here)) suspects.push(here);
  }
  return suspects.sort((a, b) => a.unitId - b.unitId);
}

/** The unit of the rows being read: they stand together, so it is looked up once for all of them. */
class UnitAtHand {
  private slotFacts: SlotFacts | null = null;

  constructor(
    readonly id: number,
    readonly unit: ScannedUnit | undefined,
    readonly standing: readonly PlaceOfUnit[] | undefined,
  ) {}

  standsAt({ positionId, place }: PlaceOfUnit): boolean {
    return this.standing?.some((one) => one.positionId === positionId && one.place === place) ?? false;
  }

  /** A unit is of one line, so its places ask with the same facts. */
  facts(line: string): SlotFacts {
    const { model, options, serial } = this.unit!;
    return (this.slotFacts ??= { line, model, options, serial });
  }
}

function codeOf(
  rows: Int32Array,
  at: number,
  unit: UnitAtHand,
  numbers: ScanNumbers,
  { judge: { bulk } }: LoadedRulebook,
): number {
  const part = rows[at + SCANNED.part]!;
  const placed: NumberedPlace | undefined = numbers.place(rows[at + SCANNED.position]!);
  const built = unit.unit?.built;
  if (part === NOT_THERE || placed === undefined || built?.length !== 1) return CANNOT_TELL;
  const { plainSlot, place, line } = placed;
  const slot = plainSlot >= 0 ? plainSlot : bulk.slotIn(place, unit.facts(line));
  const { from, to } = built[0]!;
  return bulk.verdictCode(slot, numbers.part(part), from, to, rows[at + SCANNED.fittedOn]!);
}

function byUnit(places: readonly PlaceOfUnit[]): ReadonlyMap<number, readonly PlaceOfUnit[]> {
  const grouped = new Map<number, PlaceOfUnit[]>();
  for (const one of places) {
    const list = grouped.get(one.unitId);
    if (list) list.push(one);
    else grouped.set(one.unitId, [one]);
  }
  return grouped;
}
