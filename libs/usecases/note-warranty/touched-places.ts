import type { TouchedPlace } from '../../contracts';
import { sayBarReason } from '../../fit-rules';
import { placeName } from '../browse-catalogue/to-contract';
import type { PartRow, PositionRow, TouchedRow } from '../ports/index';
import { namingOf, partRefOf } from '../rule-on-unit/index';
import type { WholeUnit } from '../view-unit/index';

/** Most of them that are shown. */
export const MOST_TOUCHED = 200;

/** Where the unit was worked on and with which parts, newest first, and which paper speaks against one of them today. */
export function touchedPlaces(
  whole: WholeUnit,
  rows: readonly TouchedRow[],
  partsById: ReadonlyMap<number, PartRow>,
): TouchedPlace[] {
  return onceEach(rows).flatMap((row) => viewOf(whole, row, partsById.get(row.partId)));
}

/** What was fitted on one day and left as it was by later tickets is told once, by the ticket it was done on. */
function onceEach(rows: readonly TouchedRow[]): readonly TouchedRow[] {
  const told = new Map<string, TouchedRow>();
  for (const row of rows) told.set([row.positionId, row.place, row.partId, row.on].join(' '), row);
  return [...told.values()];
}

function viewOf(whole: WholeUnit, row: TouchedRow, part: PartRow | undefined): TouchedPlace[] {
  const position = whole.positionList.find(({ id }) => id === row.positionId);
  if (!position || !part) return [];
  const place = placeName(position, row.place);
  return [
    {
      position: position.code,
      where: place.includes(position.name) ? place : `${position.name}, ${place}`,
      part: partRefOf(part.key, new Map([[part.key, part]])),
      ticket: { id: row.ticketId, number: row.ticket },
      on: row.on,
      barred: sayBarred(whole, position, part),
    },
  ];
}

/** What the papers of today bar in that position, for some of what the unit can be, is in its ruling already. */
function sayBarred(whole: WholeUnit, position: PositionRow, part: PartRow): string | null {
  const { positions, positionList, rulebook, rulings } = whole;
  const pieces = rulings[positionList.indexOf(position)]?.pieces ?? [];
  const bar = pieces.flatMap(({ outcome }) => outcome.barred).find((one) => one.part === part.key);
  if (!bar) return null;
  const naming = namingOf({ positions, rulebook, partsByKey: new Map([[part.key, part]]) });
  return `${sayBarReason(bar)}, by ${naming.rule(bar.rule)}`;
}
