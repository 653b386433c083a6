import type { Closing, FlagRaise } from '../../usecases';
import type { Db } from '../db';

/** Clears flags that are still open or were sent back; answers how many. */
export async function clearFlags(db: Db, closings: readonly Closing[], recheckId: number | null): Promise<number> {
  if (closings.length === 0) return 0;
  return db.$executeRaw`
    UPDATE flag f SET state = 'cleared', decided_at = now(), decision_why = c.why, version = f.version + 1,
           recheck_id = COALESCE(${recheckId}::int, f.recheck_id)
    FROM jsonb_to_recordset(${JSON.stringify(closings)}::jsonb) AS c(id int, why text)
    WHERE f.id = c.id AND f.state IN ('open', 'sent-back')`;
}

/**
 * Raises flags. A place has at most one open flag: one about a mismatch with the picked parts gives way to the verdict.
 * Answers how many were raised.
 */
export async function raiseFlags(db: Db, flags: readonly FlagRaise[], recheckId: number | null): Promise<number> {
  if (flags.length === 0) return 0;
  return db.$executeRaw`
    INSERT INTO flag
      (ticket_id, location_id, unit_id, position_id, place, part_id, verdict, severity, reason, recheck_id)
    SELECT f."ticketId", t.location_id, f."unitId", f."positionId", f.place, f."partId", f.verdict, f.severity, f.reason,
           ${recheckId}::int
    FROM jsonb_to_recordset(${JSON.stringify(flags)}::jsonb)
      AS f("ticketId" int, "unitId" int, "positionId" int, place int, "partId" int, verdict text, severity int,
           reason jsonb)
    JOIN ticket t ON t.id = f."ticketId"
    ON CONFLICT (ticket_id, position_id, place) WHERE state = 'open' DO UPDATE
      SET part_id = EXCLUDED.part_id, verdict = EXCLUDED.verdict, severity = EXCLUDED.severity,
          reason = EXCLUDED.reason, recheck_id = EXCLUDED.recheck_id, version = flag.version + 1`;
}
