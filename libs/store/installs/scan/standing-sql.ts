/**
 * Places about which something stands, of units in a range of ids. Reasons are looked up call by call, behind a fence: a
 * bulletin under way makes far more of them than the database has counted, and it would read all there are each time.
 */
export const STANDING = (range: (column: string) => string): string => `
  SELECT unit_id AS "unitId", position_id AS "positionId", place FROM flag
  WHERE ${range('unit_id')} AND state IN ('open', 'sent-back')
  UNION
  SELECT c.unit_id, r.position_id, r.place
  FROM callback c, LATERAL (SELECT * FROM callback_reason r WHERE r.callback_id = c.id AND r.withdrawn_at IS NULL OFFSET 0) r
  WHERE ${range('c.unit_id')} AND c.state IN ('open', 'booked')
  UNION
  SELECT unit_id, position_id, place FROM unit_note WHERE ${range('unit_id')} AND closed_at IS NULL`;
