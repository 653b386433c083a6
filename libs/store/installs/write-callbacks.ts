import type { ReasonAdd, ReasonClosing } from '../../usecases';
import { arrayText } from '../array-text';
import type { Db } from '../db';

/**
 * Opens a callback for each unit that has none open, and puts the reasons on it; answers how many were opened. What several
 * of them say in one object (of one source and action) is sent once.
 */
export async function addReasons(db: Db, reasons: readonly ReasonAdd[], recheckId: number | null): Promise<number> {
  if (reasons.length === 0) return 0;
  const owners = new Map(reasons.map(({ unitId, ownerId }) => [unitId, ownerId]));
  const urgent = new Set(reasons.filter(({ action }) => action === 'stop-use').map(({ unitId }) => unitId));
  const units = [...owners.keys()];
  const opened = await db.$executeRaw`
    INSERT INTO callback (unit_id, owner_id, location_id, urgent, recheck_id)
    SELECT u.unit_id, o.id, o.location_id, u.urgent, ${recheckId}::int
    FROM unnest(${arrayText(units)}::int[], ${arrayText([...owners.values()])}::int[],
                ${arrayText(units.map((id) => (urgent.has(id) ? 't' : 'f')))}::boolean[])
      AS u(unit_id, owner_id, urgent)
    -- Nobody is left to be called about the unit of an owner who was forgotten.
    JOIN owner o ON o.id = u.owner_id AND o.erased_at IS NULL
    ORDER BY 1
    ON CONFLICT (unit_id) WHERE state IN ('open', 'booked') DO NOTHING`;
  const said = new Map<ReasonAdd['detail'], Pick<ReasonAdd, 'source' | 'action' | 'detail'>>();
  for (const { source, action, detail } of reasons) said.set(detail, { source, action, detail });
  const numbers = new Map([...said.keys()].map((detail, n) => [detail, n + 1]));
  const column = (valueOf: (one: ReasonAdd) => number | string | null) => arrayText(reasons.map(valueOf));
  await db.$executeRaw`
    INSERT INTO callback_reason (callback_id, source_id, position_id, place, part_id, verdict, action, detail, recheck_id)
    SELECT c.id, d.source_id, r.position_id, r.place, r.part_id, r.verdict, d.action, d.detail, ${recheckId}::int
    FROM unnest(${column((one) => one.unitId)}::int[], ${column((one) => one.positionId)}::int[],
                ${column((one) => one.place)}::int[], ${column((one) => one.partId)}::int[],
                ${column((one) => one.verdict)}::text[], ${column((one) => numbers.get(one.detail)!)}::int[])
      AS r(unit_id, position_id, place, part_id, verdict, said)
    JOIN (SELECT w.n, s.id AS source_id, w.one->>'action' AS action, w.one->'detail' AS detail
          FROM jsonb_array_elements(${JSON.stringify([...said.values()])}::jsonb) WITH ORDINALITY AS w(one, n)
          JOIN source s ON s.key = w.one->>'source') d ON d.n = r.said
    JOIN LATERAL (SELECT c.id FROM callback c WHERE c.unit_id = r.unit_id AND c.state IN ('open', 'booked') OFFSET 0) c ON TRUE
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
  const { whys, numbers } = numbered(closings);
  await db.$executeRaw`
    UPDATE callback_reason r SET withdrawn_at = now(), withdrawn_why = (${whys}::text[])[c.n],
           recheck_id = COALESCE(${recheckId}::int, r.recheck_id)
    FROM unnest(${arrayText(closings.map(({ id }) => id))}::int[],
                ${arrayText(closings.map(({ why }) => numbers.get(why)!))}::int[]) AS c(id, n)
    WHERE r.id = c.id AND r.withdrawn_at IS NULL`;
  return closeEmptied(db, closings, recheckId);
}

/** Each callback is told once of each way in which reasons of it ended: mostly they all end in one. */
async function closeEmptied(db: Db, closings: readonly ReasonClosing[], recheckId: number | null): Promise<number> {
  const ends = new Map(closings.map((one) => [`${one.callbackId} ${one.mended} ${one.why}`, one]));
  const column = (valueOf: (one: ReasonClosing) => number | string) => arrayText([...ends.values()].map(valueOf));
  const { whys, numbers } = numbered(closings);
  return db.$executeRaw`
    UPDATE callback k
    SET state = e.state, closed_at = now(), closed_why = e.why, version = k.version + 1,
        recheck_id = COALESCE(${recheckId}::int, k.recheck_id)
    FROM (
      SELECT c.callback_id, CASE WHEN bool_and(c.mended) THEN 'settled' ELSE 'withdrawn' END AS state,
             string_agg(DISTINCT (${whys}::text[])[c.n], ' ') AS why
      FROM unnest(${column((one) => one.callbackId)}::int[], ${column((one) => (one.mended ? 't' : 'f'))}::boolean[],
                  ${column(({ why }) => numbers.get(why)!)}::int[]) AS c(callback_id, mended, n)
      GROUP BY c.callback_id
    ) e
    WHERE k.id = e.callback_id AND k.state = 'open'
      AND NOT EXISTS (SELECT 1 FROM callback_reason l WHERE l.callback_id = k.id AND l.withdrawn_at IS NULL)`;
}

/** The sentences the closings have in common, numbered from one. */
function numbered(closings: readonly ReasonClosing[]): {
  readonly whys: string[];
  readonly numbers: ReadonlyMap<string, number>;
} {
  const whys = [...new Set(closings.map(({ why }) => why))];
  return { whys, numbers: new Map(whys.map((why, n) => [why, n + 1])) };
}
