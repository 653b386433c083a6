import type { StandingConsequences, StandingFlag, StandingNote, StandingReason } from '../../usecases';
import { arrayText } from '../array-text';
import type { Db } from '../db';

/** Flags, callback reasons and notes that earlier judgements of these units led to. */
export async function readConsequences(db: Db, unitIds: readonly number[]): Promise<StandingConsequences> {
  const ids = arrayText(unitIds);
  const flags = await db.$queryRaw<StandingFlag[]>`
    SELECT id, ticket_id AS "ticketId", unit_id AS "unitId", position_id AS "positionId", place, part_id AS "partId",
           verdict, severity, state, accepted_until - DATE '1970-01-01' AS "acceptedUntil", reason->>'rule' AS rule,
           COALESCE(reason->>'kind', 'verdict') AS kind
    FROM flag WHERE unit_id = ANY(${ids}::text::int[]) AND state <> 'cleared' ORDER BY id`;
  const reasonRows = await db.$queryRaw<{ all: string | null }[]>`
    SELECT json_agg(json_build_array(r.id, r.callback_id, c.state IN ('open', 'booked'), r.withdrawn_at IS NOT NULL, c.unit_id,
                                     r.position_id, r.place, r.part_id, r.source) ORDER BY r.id)::text AS all
    FROM callback c, LATERAL (SELECT r.*, (SELECT s.key FROM source s WHERE s.id = r.source_id) AS source
                              FROM callback_reason r WHERE r.callback_id = c.id OFFSET 0) r
    WHERE c.unit_id = ANY(${ids}::text::int[])`;
  const reasons = (JSON.parse(reasonRows[0]!.all ?? '[]') as ReasonTuple[]).map(reasonOf);
  const noteRows = await db.$queryRaw<(StandingNote & { settled: boolean; settledPart: number | null })[]>`
    SELECT n.id, n.unit_id AS "unitId", n.position_id AS "positionId", n.place, s.key AS source,
           n.closed_at IS NULL AS open, n.closed_by IS NOT NULL AS settled, n.settled_part_id AS "settledPart"
    FROM unit_note n JOIN source s ON s.id = n.source_id
    WHERE n.unit_id = ANY(${ids}::text::int[]) ORDER BY n.id`;
  const notes = noteRows.map(({ settled, settledPart, ...note }) =>
    settled && !note.open ? { ...note, settledAbout: settledPart } : note,
  );
  return { flags, reasons, notes };
}

type ReasonTuple = readonly [
  id: number,
  callbackId: number,
  live: boolean,
  withdrawn: boolean,
  unitId: number,
  positionId: number,
  place: number,
  partId: number | null,
  source: string,
];

/** Read as tuples: a withdrawal reads as many as the bulletin had. */
function reasonOf(tuple: ReasonTuple): StandingReason {
  const [id, callbackId, live, withdrawn, unitId, positionId, place, partId, source] = tuple;
  return { id, callbackId, live, withdrawn, unitId, positionId, place, partId, source };
}
