/** Places about which something stands, of units in a range of ids. */
export const STANDING = (range: (column: string) => string): string => `
  SELECT unit_id AS "unitId", position_id AS "positionId", place FROM flag
  WHERE ${range('unit_id')} AND state IN ('open', 'sent-back')
  UNION
  SELECT c.unit_id, r.position_id, r.place FROM callback c JOIN callback_reason r ON r.callback_id = c.id
  WHERE ${range('c.unit_id')} AND c.state IN ('open', 'booked') AND r.withdrawn_at IS NULL
  UNION
  SELECT unit_id, position_id, place FROM unit_note WHERE ${range('unit_id')} AND closed_at IS NULL`;
