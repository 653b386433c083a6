import type { PlaceOfUnit, VerdictWrite } from '../../usecases';
import { arrayText } from '../array-text';
import type { Db } from '../db';
import { takeIds } from '../take-ids';

/**
 * Writes verdicts and their grounds, and a history row for each whose word changed; answers how many words did. Grounds
 * that are one object are written once.
 */
export async function writeVerdicts(
  db: Db,
  verdicts: readonly VerdictWrite[],
  { revision, recheckId }: { revision: number; recheckId: number | null },
): Promise<number> {
  if (verdicts.length === 0) return 0;
  const numbers = new Map<VerdictWrite['judgement'], number>();
  for (const { judgement } of verdicts) if (!numbers.has(judgement)) numbers.set(judgement, numbers.size);
  const ids = await takeIds(db, 'judgement', numbers.size);
  const column = (valueOf: (one: VerdictWrite) => number | string | null) => arrayText(verdicts.map(valueOf));
  return db.$executeRaw`
    WITH v AS MATERIALIZED (
      SELECT * FROM unnest(
        ${column((one) => one.unitId)}::int[], ${column((one) => one.positionId)}::int[],
        ${column((one) => one.place)}::int[], ${column((one) => one.ticketId)}::int[],
        ${column((one) => one.partId)}::int[], ${column((one) => one.from)}::text[],
        ${column((one) => one.to)}::text[], ${column((one) => ids[numbers.get(one.judgement)!]!)}::int[])
        AS v(unit_id, position_id, place, ticket_id, part_id, was, is_now, judgement_id)
    ), why AS (
      INSERT INTO judgement (id, body)
      SELECT (${arrayText(ids)}::int[])[w.n], w.body
      FROM jsonb_array_elements(${JSON.stringify([...numbers.keys()])}::jsonb) WITH ORDINALITY AS w(body, n)
    ), written AS (
      UPDATE install i
      SET verdict = v.is_now, judgement_id = v.judgement_id, judgement = NULL, asked_unit = NULL,
          judged_revision = ${revision}::int
      FROM v WHERE i.unit_id = v.unit_id AND i.position_id = v.position_id AND i.place = v.place
    )
    INSERT INTO verdict_change
      (unit_id, position_id, place, ticket_id, part_id, from_verdict, to_verdict, revision, recheck_id)
    SELECT unit_id, position_id, place, ticket_id, part_id, was, is_now, ${revision}::int, ${recheckId}::int
    FROM v WHERE was IS DISTINCT FROM is_now`;
}

/** Says under which revision these were found unchanged. */
export async function confirmVerdicts(db: Db, places: readonly PlaceOfUnit[], revision: number): Promise<void> {
  if (places.length === 0) return;
  const column = (name: keyof PlaceOfUnit) => arrayText(places.map((one) => one[name]));
  await db.$executeRaw`
    UPDATE install i SET judged_revision = ${revision}::int
    FROM unnest(${column('unitId')}::int[], ${column('positionId')}::int[], ${column('place')}::int[])
      AS v(unit_id, position_id, place)
    WHERE i.unit_id = v.unit_id AND i.position_id = v.position_id AND i.place = v.place
      AND i.judged_revision IS DISTINCT FROM ${revision}::int`;
}
