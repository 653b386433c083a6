import { Prisma } from '../generated/client';
import { UNIT_NAME } from '../units/unit-name';

/** The columns of a ticket's card, and the tables they come from (t, u, o, l, k, m, b). */
export const CARD = Prisma.sql`
  t.id, t.number, t.stage, ${UNIT_NAME} AS unit, u.serial,
  o.name AS owner, t.promised_on::text AS "promisedOn", t.hold_reason AS "onHold", t.version,
  CASE WHEN b.id IS NULL THEN NULL ELSE json_build_object('id', b.id, 'code', b.code) END AS bench,
  (SELECT count(*)::int FROM flag f WHERE f.ticket_id = t.id AND f.state = 'open') AS "openFlags",
  (SELECT (array['right', 'allowed', 'undecided', 'disputed', 'outdated', 'wrong'])[max(array_position(
            array['right', 'allowed', 'undecided', 'disputed', 'outdated', 'wrong'], i.verdict))]
   FROM install i WHERE i.unit_id = t.unit_id) AS worst,
  (SELECT json_build_object('parts', json_agg(wp.number ORDER BY w.id), 'here', bool_and(w.woken_at IS NOT NULL))
   FROM part_wait w JOIN part wp ON wp.id = w.part_id
   WHERE w.ticket_id = t.id AND w.ended_at IS NULL HAVING count(*) > 0) AS waits`;

export const CARD_TABLES = Prisma.sql`
  ticket t JOIN unit u ON u.id = t.unit_id JOIN owner o ON o.id = t.owner_id
  LEFT JOIN product_line l ON l.id = u.line_id LEFT JOIN maker k ON k.id = l.maker_id
  LEFT JOIN model m ON m.id = u.model_id LEFT JOIN bench b ON b.id = t.bench_id`;
