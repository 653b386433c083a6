import type { TouchedPlace } from '../../contracts';
import { sayBarReason } from '../../fit-rules';
import { placeName } from '../browse-catalogue/to-contract';
import type { PartRow, PositionRow, Tables, TouchedRow } from '../ports/index';
import { namingOf, partRefOf } from '../rule-on-unit/index';
import type { Papers, WholeUnit } from '../view-unit/index';

const MOST = 200;

/** Where the unit was worked on and with which parts, newest first, and which paper speaks against one of them today. */
export async function touchedPlaces(
  tables: Pick<Tables, 'units'>,
  whole: WholeUnit,
  papers: Pick<Papers, 'partsByIds'>,
): Promise<TouchedPlace[]> {
  const rows = await tables.units.touched(whole.unit.id, MOST);
  const parts = await papers.partsByIds([...new Set(rows.map(({ partId }) => partId))]);
  const byId = new Map(parts.map((part) => [part.id, part]));
  return rows.flatMap((row) => viewOf(whole, row, byId.get(row.partId)));
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
