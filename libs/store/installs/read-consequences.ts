import type { StandingConsequences, StandingFlag, StandingNote, StandingReason } from '../../usecases';
import { arrayText, numbersOf, wordsOf } from '../array-text';
import type { Db } from '../db';

/** Flags, callback reasons and notes that earlier judgements of these units led to. */
export async function readConsequences(db: Db, unitIds: readonly number[]): Promise<StandingConsequences> {
  const ids = arrayText(unitIds);
  const flags = await db.$queryRaw<StandingFlag[]>`
    SELECT id, ticket_id AS "ticketId", unit_id AS "unitId", position_id AS "positionId", place, part_id AS "partId",
           verdict, severity, state, accepted_until - DATE '1970-01-01' AS "acceptedUntil", reason->>'rule' AS rule,
           COALESCE(reason->>'kind', 'verdict') AS kind
    FROM flag WHERE unit_id = ANY(${ids}::int[]) AND state <> 'cleared' ORDER BY id`;
  const reasons = await readReasons(db, ids);
  const noteRows = await db.$queryRaw<(StandingNote & { settled: boolean; settledPart: number | null })[]>`
    SELECT n.id, n.unit_id AS "unitId", n.position_id AS "positionId", n.place, s.key AS source,
           n.closed_at IS NULL AS open, n.closed_by IS NOT NULL AS settled, n.settled_part_id AS "settledPart"
    FROM unit_note n JOIN source s ON s.id = n.source_id
    WHERE n.unit_id = ANY(${ids}::int[]) ORDER BY n.id`;
  const notes = noteRows.map(({ settled, settledPart, ...note }) =>
    settled && !note.open ? { ...note, settledAbout: settledPart } : note,
  );
  return { flags, reasons, notes };
}

/** A column of the reasons each, as one text; and the keys of their sources. */
interface ReasonColumns {
  readonly ids: string | null;
  readonly callbackIds: string | null;
  readonly live: string | null;
  readonly withdrawn: string | null;
  readonly unitIds: string | null;
  readonly positionIds: string | null;
  readonly places: string | null;
  readonly partIds: string | null;
  readonly sourceIds: string | null;
  readonly sources: string | null;
}

/** Column by column, and each call's reasons looked up by the call: a withdrawal reads as many as the bulletin had. */
async function readReasons(db: Db, unitIds: string): Promise<readonly StandingReason[]> {
  const rows = await db.$queryRaw<ReasonColumns[]>`
    WITH standing AS MATERIALIZED (
      SELECT r.*, c.unit_id, c.state IN ('open', 'booked') AS live
      FROM callback c,
           LATERAL (SELECT r.id, r.callback_id, r.withdrawn_at IS NOT NULL AS withdrawn, r.position_id, r.place, r.part_id, r.source_id
                    FROM callback_reason r WHERE r.callback_id = c.id OFFSET 0) r
      WHERE c.unit_id = ANY(${unitIds}::int[]) ORDER BY r.id)
    SELECT array_agg(id)::text AS ids, array_agg(callback_id)::text AS "callbackIds", array_agg(live)::text AS live,
           array_agg(withdrawn)::text AS withdrawn, array_agg(unit_id)::text AS "unitIds",
           array_agg(position_id)::text AS "positionIds", array_agg(place)::text AS places, array_agg(part_id)::text AS "partIds",
           array_agg(source_id)::text AS "sourceIds",
           (SELECT json_agg(json_build_array(s.id, s.key))::text FROM source s
            WHERE s.id IN (SELECT source_id FROM standing)) AS sources
    FROM standing`;
  return reasonsOf(rows[0]!);
}

function reasonsOf(columns: ReasonColumns): readonly StandingReason[] {
  const { ids, callbackIds, unitIds, positionIds, places, partIds, sourceIds } = columns;
  const sources = new Map(JSON.parse(columns.sources ?? '[]') as readonly (readonly [id: number, key: string])[]);
  const [id, callbackId, unitId, positionId, place, sourceId] = [
    ids,
    callbackIds,
    unitIds,
    positionIds,
    places,
    sourceIds,
  ].map((text) => numbersOf(text) as number[]);
  const [partId, live, withdrawn] = [numbersOf(partIds), wordsOf(columns.live), wordsOf(columns.withdrawn)];
  return id!.map((one, n) => ({
    id: one,
    callbackId: callbackId![n]!,
    live: live[n] === 't',
    withdrawn: withdrawn[n] === 't',
    unitId: unitId![n]!,
    positionId: positionId![n]!,
    place: place![n]!,
    partId: partId[n]!,
    source: sources.get(sourceId![n]!)!,
  }));
}
