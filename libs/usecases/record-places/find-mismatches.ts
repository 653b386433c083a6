import { placeName } from '../browse-catalogue/index';
import type { FlagStore, PlaceRecordRow, PositionRow } from '../ports/index';
import { judgeRecord, positionById, recordAt, type WholeTicket } from '../view-ticket/index';

type Mismatch = Parameters<FlagStore['putMismatches']>[2][number];

/** A slip between shelf and machine: to look at, milder than a part that is wrong. */
const SEVERITY = 2;

/**
 * Places where a part was left that nobody picked for the position, and that did not come in with the unit: the wrong
 * bag was opened, or the pick was not recorded.
 */
export function findMismatches(whole: WholeTicket): Mismatch[] {
  return whole.records.flatMap((left) => {
    const position = positionById(whole, left.positionId);
    if (left.side !== 'left' || left.partId === null || !position) return [];
    const picked = pickedFor(whole, position);
    if (picked.includes(left.partId)) return [];
    if (recordAt(whole, position.id, left.place, 'found')?.partId === left.partId) return [];
    return [mismatch(whole, position, left, picked)];
  });
}

function pickedFor({ picks }: WholeTicket, position: PositionRow): number[] {
  return picks
    .filter(({ positionId, purpose, state }) => positionId === position.id && purpose === 'fit' && state !== 'returned')
    .map(({ partId }) => partId);
}

function mismatch(
  whole: WholeTicket,
  position: PositionRow,
  left: PlaceRecordRow,
  picked: readonly number[],
): Mismatch {
  const number = (id: number) => whole.partsById.get(id)!.number;
  const wanted =
    picked.length === 0 ? 'none was picked' : `picked was ${[...new Set(picked)].map(number).join(' or ')}`;
  return {
    positionId: position.id,
    place: left.place,
    partId: left.partId,
    verdict: judgeRecord(whole, left)?.verdict ?? 'undecided',
    severity: SEVERITY,
    reason: {
      kind: 'mismatch',
      rule: null,
      source: null,
      required: picked[0] === undefined ? null : whole.partsById.get(picked[0])!.key,
      barredWhy: null,
      action: null,
      sentence: `${position.name}, ${placeName(position, left.place)}: ${number(left.partId!)} was fitted, ${wanted}.`,
      strength: null,
    },
  };
}
