import type { ReasonAdd, ReasonClosing } from '../../usecases';
import type { Db } from '../db';

/** Opens a callback for each unit that has none open, and puts the reasons on it; answers how many were opened. */
export async function addReasons(db: Db, reasons: readonly ReasonAdd[], recheckId: number | null): Promise<number> {
  if (reasons.length === 0) return 0;
  const owners = new Map(reasons.map(({ unitId, ownerId }) => [unitId, ownerId]));
  const urgent = new Set(reasons.filter(({ action }) => action === 'stop-use').map(({ unitId }) => unitId));
  const units = [...owners.keys()];
  const opened = await db.$executeRaw`
    INSERT INTO callback (unit_id, owner_id, location_id, urgent, recheck_id)
    SELECT u.unit_id, o.id, o.location_id, u.urgent, ${recheckId}::int
    FROM unnest(${units}::int[], ${[...owners.values()]}::int[], ${units.map((id) => urgent.has(id))}::boolean[])
      AS u(unit_id, owner_id, urgent)
    -- Nobody is left to be called about the unit of an owner who was forgotten.
    JOIN owner o ON o.id = u.owner_id AND o.erased_at IS NULL
    ORDER BY 1
    ON CONFLICT (unit_id) WHERE state IN ('open', 'booked') DO NOTHING`;
  await db.$executeRaw`
    INSERT INTO callback_reason (callback_id, source_id, position_id, place, part_id, verdict, action, detail, recheck_id)
    SELECT c.id, s.id, r."positionId", r.place, r."partId", r.verdict, r.action, r.detail, ${recheckId}::int
    FROM jsonb_to_recordset(${JSON.stringify(reasons)}::jsonb)
      AS r("unitId" int, source text, "positionId" int, place int, "partId" int, verdict text, action text, detail jsonb)
    JOIN source s ON s.key = r.source
    JOIN callback c ON c.unit_id = r."unitId" AND c.state IN ('open', 'booked')
    ON CONFLICT (callback_id, source_id, position_id, place) DO UPDATE
      SET part_id = EXCLUDED.part_id, verdict = EXCLUDED.verdict, action = EXCLUDED.action, detail = EXCLUDED.detail,
          opened_at = now(), withdrawn_at = NULL, withdrawn_why = NULL, recheck_id = EXCLUDED.recheck_id`;
  if (urgent.size > 0) await markUrgent(db, [...urgent], recheckId);
  return opened;
}

/** Calls that were open before and were not urgent yet. */
async function markUrgent(db: Db, unitIds: readonly number[], recheckId: number | null): Promise<void> {
  await db.$executeRaw`
    UPDATE callback SET urgent = TRUE, version = version + 1, recheck_id = COALESCE(${recheckId}::int, recheck_id)
    WHERE unit_id = ANY(${[...unitIds]}::int[]) AND state IN ('open', 'booked') AND NOT urgent`;
}

/** Withdraws reasons, and closes open callbacks that have none left; answers how many were closed. */
export async function withdrawReasons(
  db: Db,
  closings: readonly ReasonClosing[],
  recheckId: number | null,
): Promise<number> {
  if (closings.length === 0) return 0;
  const rows = JSON.stringify(closings);
  await db.$executeRaw`
    UPDATE callback_reason r SET withdrawn_at = now(), withdrawn_why = c.why,
           recheck_id = COALESCE(${recheckId}::int, r.recheck_id)
    FROM jsonb_to_recordset(${rows}::jsonb) AS c(id int, why text)
    WHERE r.id = c.id AND r.withdrawn_at IS NULL`;
  return db.$executeRaw`
    UPDATE callback k
    SET state = e.state, closed_at = now(), closed_why = e.why, version = k.version + 1,
        recheck_id = COALESCE(${recheckId}::int, k.recheck_id)
    FROM (
      SELECT r.callback_id, CASE WHEN bool_and(c.mended) THEN 'settled' ELSE 'withdrawn' END AS state,
             string_agg(DISTINCT c.why, ' ') AS why
      FROM jsonb_to_recordset(${rows}::jsonb) AS c(id int, why text, mended boolean)
      JOIN callback_reason r ON r.id = c.id
      GROUP BY r.callback_id
    ) e
    WHERE k.id = e.callback_id AND k.state = 'open'
      AND NOT EXISTS (SELECT 1 FROM callback_reason l WHERE l.callback_id = k.id AND l.withdrawn_at IS NULL)`;
}
