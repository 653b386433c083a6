import type { Db } from '../db';
import type { IdsByKey } from './insert-rows';

/** How many of the calls that earlier papers asked for are still to be made; the others were made long ago. */
const CALLS_LEFT = 6;

/**
 * The shop was open before today: flags and callbacks are as old as what led to them, most calls were made, and a
 * manager has let a few doubtful parts go out.
 */
export async function seedPast(db: Db, person: IdsByKey): Promise<void> {
  const [manager, counter] = [person.of('bram'), person.of('rosa')];
  await datePast(db);
  await clearPastFlags(db, manager);
  await acceptFlags(db, manager);
  await settleCallbacks(db, counter);
}

async function datePast(db: Db): Promise<void> {
  await db.$executeRaw`
    UPDATE flag f SET opened_at = r.recorded_at
    FROM place_record r
    WHERE r.ticket_id = f.ticket_id AND r.position_id = f.position_id AND r.place = f.place AND r.side = 'found'`;
  await db.$executeRaw`
    UPDATE callback_reason r SET opened_at = greatest(s.published_at, i.closed_at) + interval '2 hours'
    FROM source s, (SELECT i.unit_id, i.position_id, i.place, t.closed_at FROM install i JOIN ticket t ON t.id = i.ticket_id) i,
         callback c
    WHERE s.id = r.source_id AND c.id = r.callback_id
      AND i.unit_id = c.unit_id AND i.position_id = r.position_id AND i.place = r.place`;
  await db.$executeRaw`
    UPDATE callback c SET opened_at = r.opened_at
    FROM (SELECT callback_id, min(opened_at) AS opened_at FROM callback_reason GROUP BY callback_id) r
    WHERE r.callback_id = c.id`;
}

/** On tickets that are about to be handed over, the mild flags were accepted. */
async function acceptFlags(db: Db, manager: number): Promise<void> {
  await db.$executeRaw`
    UPDATE flag f
    SET state = 'accepted', decided_by = ${manager}::int, decided_at = f.opened_at + interval '1 hour', version = 2,
        decision_why = 'Owner knows and wants it so until the right part is in.',
        accepted_until = (f.opened_at + interval '60 days')::date,
        decided_revision = (SELECT max(id) FROM rulebook_revision)
    FROM ticket t
    WHERE t.id = f.ticket_id AND t.stage = 'handover' AND t.closed_at IS NULL AND f.severity <= 3`;
}

/** On tickets that are closed, a part that was flagged was replaced before the unit left. */
async function clearPastFlags(db: Db, manager: number): Promise<void> {
  await db.$executeRaw`
    UPDATE flag f SET state = 'cleared', decided_by = ${manager}::int, decided_at = t.closed_at, version = 2,
                      decision_why = 'The part was taken out.'
    FROM ticket t WHERE t.id = f.ticket_id AND t.closed_at IS NOT NULL`;
}

async function settleCallbacks(db: Db, counter: number): Promise<void> {
  await db.$executeRaw`
    UPDATE callback c
    SET state = 'settled', version = 2, closed_at = least(c.opened_at + interval '6 days', now()),
        closed_why = CASE c.id % 3 WHEN 0 THEN 'Owner declined: the unit is kept for spares.'
                                   WHEN 1 THEN 'Part sent: the owner fits it.'
                                   ELSE 'Unit gone: sold to an unknown buyer.' END
    WHERE c.id NOT IN (SELECT id FROM callback ORDER BY opened_at DESC, id LIMIT ${CALLS_LEFT}::int)`;
  await db.$executeRaw`
    INSERT INTO callback_attempt (callback_id, at, person_id, how, outcome, note)
    SELECT c.id, c.closed_at - interval '1 hour', ${counter}::int, 'phone', 'reached', ''
    FROM callback c WHERE c.state = 'settled'`;
  await db.$executeRaw`
    INSERT INTO callback_attempt (callback_id, at, person_id, how, outcome, note)
    SELECT c.id, c.opened_at + interval '1 day', ${counter}::int, 'phone', 'no-answer', 'Try in the evening.'
    FROM callback c WHERE c.state = 'open' AND c.id % 2 = 0 AND c.opened_at + interval '1 day' < now()`;
  // A few of the calls are for another day, and an owner here and there wants no letters or no e-mails.
  await db.$executeRaw`
    UPDATE callback SET next_on = current_date + 3 WHERE state = 'open' AND id = (SELECT max(c.id) FROM callback c JOIN owner o ON o.id = c.owner_id
      WHERE c.state = 'open' AND o.location_id = (SELECT max(id) FROM location))`;
  await db.$executeRaw`
    UPDATE owner SET declined = CASE WHEN id % 2 = 0 THEN ARRAY['letter'] ELSE ARRAY['email'] END WHERE consent AND id % 9 = 4`;
}
