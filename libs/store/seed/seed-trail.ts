import type { Db } from '../db';
import { Prisma } from '../generated/client';

/** What a row holds now of that which it did not hold before, as the trail keeps a change: [before, after]. */
const changed = (was: Prisma.Sql, now: Prisma.Sql): Prisma.Sql => Prisma.sql`
  (SELECT jsonb_object_agg(n.key, jsonb_build_array((${was})->n.key, n.value)) FROM jsonb_each(${now}) n
   WHERE n.value IS DISTINCT FROM (${was})->n.key)`;

/** Owners and units are written down with the unit's first ticket, by whoever opened it. */
const TAKEN_IN = Prisma.sql`
  SELECT f.at, f.person_id, 1 AS rank, 'insert' AS act, 'owner' AS noun, o.id, NULL::int AS unit_id, audit_without(to_jsonb(o), ARRAY['name', 'phone', 'email', 'address']) AS change
  FROM owner o JOIN LATERAL (SELECT p.at, p.person_id FROM opened p WHERE p.owner_id = o.id ORDER BY p.at LIMIT 1) f ON TRUE
  UNION ALL
  SELECT f.at, f.person_id, 2, 'insert', 'unit', u.id, u.id, to_jsonb(u) FROM unit u JOIN first_visit f ON f.unit_id = u.id
  UNION ALL
  SELECT greatest(e.recorded_at, f.at), coalesce(e.recorded_by, f.person_id), 3, 'insert', 'evidence', e.id, e.unit_id, to_jsonb(e)
  FROM evidence e JOIN first_visit f ON f.unit_id = e.unit_id`;

/** A ticket as it was opened; then each step of its history, in what it changed. */
const TICKETS = Prisma.sql`
  SELECT p.at, p.person_id, 4, 'insert', 'ticket', t.id, t.unit_id,
         audit_without(to_jsonb(t) || '{"stage": "intake", "closed_at": null, "handed_over": false, "hold_reason": null, "cancel_reason": null,
           "labour_minutes": 0, "labour_minor": 0, "labour_lines": [], "safety_checks": []}', ARRAY['authorisation'])
  FROM ticket t JOIN opened p ON p.ticket_id = t.id
  UNION ALL
  SELECT e.at, e.person_id, 5, 'update', 'ticket', t.id, t.unit_id, CASE e.kind
           WHEN 'moved' THEN jsonb_build_object('stage', jsonb_build_array(e.data->'from', e.data->'to'))
             || CASE WHEN e.data->>'to' = 'repair' AND t.safety_checks <> '{}'
                     THEN jsonb_build_object('safety_checks', jsonb_build_array('[]'::jsonb, t.safety_checks)) ELSE '{}' END
           WHEN 'authorised' THEN '{"authorisation": "not kept here"}'
           WHEN 'held' THEN jsonb_build_object('hold_reason', jsonb_build_array(NULL, t.hold_reason))
           WHEN 'cancelled' THEN jsonb_build_object('closed_at', jsonb_build_array(NULL, t.closed_at),
                                                    'cancel_reason', jsonb_build_array(NULL, t.cancel_reason))
           WHEN 'handed-over' THEN jsonb_build_object('closed_at', jsonb_build_array(NULL, t.closed_at),
                                                      'handed_over', '[false, true]'::jsonb) END
  FROM ticket_event e JOIN ticket t ON t.id = e.ticket_id
  WHERE e.kind IN ('moved', 'authorised', 'held', 'cancelled', 'handed-over')
  UNION ALL
  SELECT l.at, l.person_id, 6, 'update', 'ticket', t.id, t.unit_id, jsonb_build_object(
           'labour_minutes', jsonb_build_array(0, t.labour_minutes), 'labour_minor', jsonb_build_array(0, t.labour_minor),
           'labour_lines', jsonb_build_array('[]'::jsonb, t.labour_lines))
  FROM ticket t JOIN LATERAL (
    SELECT s.at, s.person_id FROM (
      SELECT e.at, e.person_id FROM estimate e WHERE e.ticket_id = t.id
      UNION ALL SELECT e.at, e.person_id FROM ticket_event e
                WHERE e.ticket_id = t.id AND e.kind = 'moved' AND e.data->>'to' = 'parts-selection') s
    ORDER BY s.at LIMIT 1) l ON TRUE
  WHERE t.labour_minutes > 0
  UNION ALL
  SELECT e.at, e.person_id, 7, 'insert', 'estimate', e.id, t.unit_id, to_jsonb(e) FROM estimate e JOIN ticket t ON t.id = e.ticket_id`;

/** What was found and left, and the parts from the shelf: picked, then fitted or given along. */
const PARTS = Prisma.sql`
  SELECT r.recorded_at, r.recorded_by, 8, 'insert', 'place_record', r.id, r.unit_id, to_jsonb(r) FROM place_record r
  UNION ALL
  SELECT k.picked_at, k.picked_by, 9, 'insert', 'pick', k.id, t.unit_id, to_jsonb(k) || '{"state": "picked"}'
  FROM pick k JOIN ticket t ON t.id = k.ticket_id
  UNION ALL
  SELECT d.at, d.person_id, 10, 'update', 'pick', k.id, t.unit_id, jsonb_build_object('state', jsonb_build_array('picked', k.state))
  FROM pick k JOIN ticket t ON t.id = k.ticket_id JOIN LATERAL (
    SELECT e.at, e.person_id FROM ticket_event e
    WHERE e.ticket_id = t.id AND e.kind = ANY (CASE k.state WHEN 'given' THEN ARRAY['handed-over'] ELSE ARRAY['left', 'handed-over'] END)
    ORDER BY e.at LIMIT 1) d ON TRUE
  WHERE k.state <> 'picked'`;

/** What a flag says of itself until somebody has decided, and a call until it is closed. */
const FLAG_AS_RAISED = Prisma.sql`'{"state": "open", "version": 1, "decided_by": null, "decided_at": null, "decision_why": null,
    "accepted_until": null, "decided_revision": null}'::jsonb`;
const CALL_AS_OPENED = Prisma.sql`'{"state": "open", "version": 1, "closed_at": null, "closed_why": null}'::jsonb`;

/** Flags as they were raised by what was recorded, and decided; calls as they were opened, tried and closed. */
const FOLLOWED = Prisma.sql`
  SELECT f.opened_at, (SELECT r.recorded_by FROM place_record r WHERE r.ticket_id = f.ticket_id AND r.position_id = f.position_id
           AND r.place = f.place AND r.side = 'found'), 11, 'insert', 'flag', f.id, f.unit_id, to_jsonb(f) || ${FLAG_AS_RAISED}
  FROM flag f
  UNION ALL
  SELECT f.decided_at, f.decided_by, 12, 'update', 'flag', f.id, f.unit_id,
         ${changed(Prisma.sql`to_jsonb(f) || ${FLAG_AS_RAISED}`, Prisma.sql`to_jsonb(f)`)}
  FROM flag f WHERE f.decided_at IS NOT NULL
  UNION ALL
  SELECT c.opened_at, NULL, 13, 'insert', 'callback', c.id, c.unit_id, to_jsonb(c) || ${CALL_AS_OPENED} FROM callback c
  UNION ALL
  SELECT c.closed_at, (SELECT max(a.person_id) FROM callback_attempt a WHERE a.callback_id = c.id), 16, 'update', 'callback', c.id, c.unit_id,
         ${changed(Prisma.sql`to_jsonb(c) || ${CALL_AS_OPENED}`, Prisma.sql`to_jsonb(c)`)}
  FROM callback c WHERE c.closed_at IS NOT NULL
  UNION ALL
  SELECT r.opened_at, NULL, 14, 'insert', 'callback_reason', r.id, c.unit_id, to_jsonb(r)
  FROM callback_reason r JOIN callback c ON c.id = r.callback_id
  UNION ALL
  SELECT a.at, a.person_id, 15, 'insert', 'callback_attempt', a.id, c.unit_id, audit_without(to_jsonb(a), ARRAY['note'])
  FROM callback_attempt a JOIN callback c ON c.id = a.callback_id
  UNION ALL
  SELECT v.at, NULL, 17, 'insert', 'verdict_change', v.id, v.unit_id, to_jsonb(v) FROM verdict_change v`;

/**
 * Writes the shop's story into the trail, as work writes it: who did what, in the order and at the time in which it is told
 * to have been done, each row with the hash of the one before. What the trail says a row was, and became, is what the row
 * is: where the story does not tell how it came about it was so from the start. The first verdicts are of the moment of
 * loading, as they truly are. One statement, since each row has to wait for the one before it; the row that says that all
 * of it was loaded comes last.
 */
export async function seedTrail(db: Db): Promise<void> {
  await db.$executeRaw`SELECT pg_advisory_xact_lock(4780005)`;
  await db.$executeRaw`
    CREATE TEMP TABLE told ON COMMIT DROP AS
    WITH opened AS (
      SELECT e.at, e.person_id, t.id AS ticket_id, t.unit_id, t.owner_id
      FROM ticket_event e JOIN ticket t ON t.id = e.ticket_id WHERE e.kind = 'opened'
    ), first_visit AS (
      SELECT DISTINCT ON (unit_id) unit_id, at, person_id FROM opened ORDER BY unit_id, at
    ), story AS (${TAKEN_IN} UNION ALL ${TICKETS} UNION ALL ${PARTS} UNION ALL ${FOLLOWED})
    SELECT row_number() OVER (ORDER BY at, rank, id) + (SELECT coalesce(max(e.id), 0) FROM audit_entry e) AS place,
           date_trunc('milliseconds', at) AS at, person_id, act, noun, id::text AS row_key, unit_id, change
    FROM story WHERE change IS NOT NULL`;
  await db.$executeRaw(CHAINED);
}

const CHAINED = Prisma.sql`
  DO $chain$
  DECLARE
    entry audit_entry;
    told record;
  BEGIN
    SELECT max(r.id) INTO entry.revision FROM rulebook_revision r;
    entry.row_hash := coalesce((SELECT e.row_hash FROM audit_entry e ORDER BY e.id DESC LIMIT 1), sha256(''));
    FOR told IN SELECT * FROM pg_temp.told ORDER BY place LOOP
      entry.id := told.place;
      entry.at := told.at;
      entry.person_id := told.person_id;
      entry.act := told.act;
      entry.noun := told.noun;
      entry.row_key := told.row_key;
      entry.unit_id := told.unit_id;
      entry.change := told.change;
      entry.prev_hash := entry.row_hash;
      entry.row_hash := sha256(entry.prev_hash || convert_to(audit_canonical(entry), 'UTF8'));
      INSERT INTO audit_entry SELECT entry.*;
    END LOOP;
  END $chain$`;
