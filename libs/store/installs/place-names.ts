import type { PlaceNames, PlaceOfUnit } from '../../usecases';
import type { Db } from '../db';

/** Names for some places, in the order given. */
export function placeNames(db: Db, places: readonly PlaceOfUnit[]): Promise<PlaceNames[]> {
  return db.$queryRaw<PlaceNames[]>`
    SELECT u.id AS "unitId", p.id AS "positionId", (v.item->>'place')::int AS place,
           concat_ws(' ', l.name, m.number, u.serial) AS unit, o.name AS owner, p.name AS position,
           place_word(p.place_names, (v.item->>'place')::int) AS "placeName"
    FROM jsonb_array_elements(${JSON.stringify(places)}::jsonb) WITH ORDINALITY AS v(item, n)
    JOIN unit u ON u.id = (v.item->>'unitId')::int
    JOIN owner o ON o.id = u.owner_id
    JOIN position p ON p.id = (v.item->>'positionId')::int
    LEFT JOIN product_line l ON l.id = u.line_id
    LEFT JOIN model m ON m.id = u.model_id
    ORDER BY v.n`;
}
