import type { PlaceOfUnit, VerdictWrite } from '../../usecases';
import type { Db } from '../db';

/** Writes verdicts and their grounds, and a history row for each whose word changed; answers how many words did. */
export async function writeVerdicts(
  db: Db,
  verdicts: readonly VerdictWrite[],
  { revision, recheckId }: { revision: number; recheckId: number | null },
): Promise<number> {
  if (verdicts.length === 0) return 0;
  return db.$executeRaw`
    WITH v AS MATERIALIZED (
      SELECT * FROM jsonb_to_recordset(${JSON.stringify(verdicts)}::jsonb)
        AS v("unitId" int, "positionId" int, place int, "ticketId" int, "partId" int, "from" text, "to" text, judgement jsonb)
    ), written AS (
      UPDATE install i SET verdict = v."to", judgement = v.judgement, judged_revision = ${revision}::int
      FROM v WHERE i.unit_id = v."unitId" AND i.position_id = v."positionId" AND i.place = v.place
    )
    INSERT INTO verdict_change
      (unit_id, position_id, place, ticket_id, part_id, from_verdict, to_verdict, revision, recheck_id)
    SELECT v."unitId", v."positionId", v.place, v."ticketId", v."partId", v."from", v."to", ${revision}::int, ${recheckId}::int
    FROM v WHERE v."from" IS DISTINCT FROM v."to"`;
}

/** Says under which revision these were found unchanged. */
export async function confirmVerdicts(db: Db, places: readonly PlaceOfUnit[], revision: number): Promise<void> {
  if (places.length === 0) return;
  await db.$executeRaw`
    UPDATE install i SET judged_revision = ${revision}::int
    FROM jsonb_to_recordset(${JSON.stringify(places)}::jsonb) AS v("unitId" int, "positionId" int, place int)
    WHERE i.unit_id = v."unitId" AND i.position_id = v."positionId" AND i.place = v.place
      AND i.judged_revision IS DISTINCT FROM ${revision}::int`;
}
