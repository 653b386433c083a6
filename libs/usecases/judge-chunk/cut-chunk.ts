import type { PlaceOfUnit } from '../judge-installs';
import { SCANNED, SCANNED_COLUMNS, type InstallScan } from '../ports/install-scan';

/** Installs that one transaction judges with reasons: enough to be quick, few enough to be short and to fit in memory. */
export const MOST_SUSPECTS = 3_000;

/**
 * The last unit of each piece but the last, so that no piece holds more suspects than that, unless one unit does. Empty
 * when they all fit. Suspects come in order of unit.
 */
export function endsOfPieces(suspects: readonly PlaceOfUnit[], most: number): readonly number[] {
  const ends: number[] = [];
  let begin = 0;
  for (let from = 0, to = 0; from < suspects.length; from = to) {
    const { unitId } = suspects[from]!;
    while (to < suspects.length && suspects[to]!.unitId === unitId) to++;
    if (to - begin <= most || begin === from) continue;
    ends.push(suspects[from - 1]!.unitId);
    begin = from;
  }
  return ends;
}

/** How many installs of the scan belong to units up to and with this one. */
export function countUpTo({ rows, count }: InstallScan, lastUnit: number): number {
  const [unit, width] = [SCANNED.unit, SCANNED_COLUMNS];
  let found = 0;
  for (let at = unit; at < count * width; at += width) if (rows[at]! <= lastUnit) found++;
  return found;
}
