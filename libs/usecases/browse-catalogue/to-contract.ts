import { writeTradeNumber } from '../../part-number';
import type { LineSummary, Part, PartRef, Position } from '../../contracts';
import type { LineRow, PartRow, PositionRow, TradeNumberRow } from '../ports/index';

export function toPosition(row: PositionRow): Position {
  const { id, code, name, assembly, places, placeNames, sketchX, sketchY } = row;
  return { id, code, name, assembly, places, placeNames: [...placeNames], sketchX, sketchY, shear: row.joint !== null };
}

export function toLineSummary({ id, code, name, kind, maker, models, options, producedFrom, producedUntil }: LineRow) {
  return {
    id,
    code,
    name,
    kind,
    maker: { code: maker.code, name: maker.name },
    models: [...models],
    options: [...options],
    producedFrom,
    producedUntil,
  } satisfies LineSummary;
}

export function toPart(
  { id, key, number, name, maker, listed, priceMinor }: PartRow,
  all: readonly TradeNumberRow[],
): Part {
  const tradeNumbers = all
    .filter(({ partId }) => partId === id)
    .map(({ gtin, pack }) => ({ number: writeTradeNumber(gtin), pack }));
  return { id, key, number, name, maker, listed, priceMinor, tradeNumbers };
}

export function toPartRef({ key, number, name }: PartRow): PartRef {
  return { key, number, name };
}

/** What a place of a position is called; its number where nobody named it. */
export function placeName(position: Pick<PositionRow, 'placeNames'>, place: number): string {
  return position.placeNames[place - 1] ?? `place ${place}`;
}
