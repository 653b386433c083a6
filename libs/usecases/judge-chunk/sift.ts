import { verdicts, type BulkJudge } from '../../fit-rules';
import type { PlaceOfUnit } from '../judge-installs';
import type { InstallScan, InstallScans, PlacedPosition } from '../ports/install-scan';
import type { LoadedRulebook } from '../rulebook';

/** What numbers mean to one rulebook: kept for as long as it is. */
interface Numbers {
  positions: ReadonlyMap<number, PlacedPosition & { readonly plainSlot: number; readonly place: number }>;
  /** Index of a part in the bulk judge by part id. */
  readonly parts: Map<number, number>;
}

const kept = new WeakMap<LoadedRulebook, Numbers>();
const [RIGHT, ALLOWED] = [verdicts.indexOf('right'), verdicts.indexOf('allowed')];

/** How many installs were judged by numbers, and those that are to be judged with reasons. */
export interface Sifted {
  readonly judged: number;
  readonly suspects: readonly PlaceOfUnit[];
}

/**
 * Judges a scan by numbers alone. What is good and stays as it is, with nothing standing about it, needs no more;
 * everything else is to be judged with its reasons, under lock.
 */
export async function sift(scan: InstallScan, rulebook: LoadedRulebook, scans: InstallScans): Promise<Sifted> {
  const numbers = await numbersFor(scan, rulebook, scans);
  const standing = new Set(scan.standing.map(keyOf));
  const suspects: PlaceOfUnit[] = [];
  const { unitId, positionId, place, verdict } = scan;
  for (let i = 0; i < scan.count; i++) {
    const code = codeOf(scan, i, numbers, rulebook.judge.bulk);
    const settled = (code === RIGHT || code === ALLOWED) && code === verdict[i];
    if (settled && standing.size === 0) continue;
    const at = { unitId: unitId[i]!, positionId: positionId[i]!, place: place[i]! };
    if (!settled || standing.has(keyOf(at))) suspects.push(at);
  }
  return { judged: scan.count, suspects };
}

const keyOf = ({ unitId, positionId, place }: PlaceOfUnit): string => `${unitId} ${positionId} ${place}`;

/** The verdict as a number; -1 where only judging with reasons can tell. */
function codeOf(scan: InstallScan, i: number, { positions, parts }: Numbers, bulk: BulkJudge): number {
  const at = positions.get(scan.positionId[i]!);
  const part = parts.get(scan.partId[i]!);
  const unit = scan.units.get(scan.unitId[i]!);
  if (!at || part === undefined || !unit || unit.built.length !== 1) return -1;
  const { from, to } = unit.built[0]!;
  const slot = at.plainSlot >= 0 ? at.plainSlot : bulk.slotIn(at.place, { ...unit, line: at.line });
  return bulk.verdictCode(slot, part, from, to, scan.fittedOn[i]!);
}

async function numbersFor(scan: InstallScan, rulebook: LoadedRulebook, scans: InstallScans): Promise<Numbers> {
  let numbers = kept.get(rulebook);
  if (!numbers || scan.positionId.some((id) => !numbers!.positions.has(id))) {
    numbers = { positions: await placed(rulebook, scans), parts: numbers?.parts ?? new Map<number, number>() };
    kept.set(rulebook, numbers);
  }
  const { parts } = numbers;
  const missing = [...new Set(scan.partId)].filter((id) => id !== 0 && !parts.has(id));
  if (missing.length > 0) {
    for (const [id, key] of await scans.partKeys(missing)) parts.set(id, rulebook.judge.bulk.partIndex(key));
  }
  return numbers;
}

async function placed({ judge: { bulk } }: LoadedRulebook, scans: InstallScans): Promise<Numbers['positions']> {
  return new Map(
    [...(await scans.positions())].map(([id, { line, position }]) => [
      id,
      { line, position, place: bulk.placeOf(line, position), plainSlot: bulk.plainSlotOf(line, position) },
    ]),
  );
}
