import type { Db } from '../db';
import { looseParts } from '../installs/loose-parts';
import { Prisma } from '../generated/client';

/** Brings what the unit holds in step with its newest records, in one statement. */
export async function refreshInstalls(db: Db, unitId: number, zone: string): Promise<void> {
  await db.$executeRaw(holdings(Prisma.sql`= ${unitId}`, zone));
}

/** The same for many units, with one statement. */
export async function refreshMany(db: Db, unitIds: readonly number[], zone: string): Promise<void> {
  await db.$executeRaw(holdings(Prisma.sql`= ANY(${[...unitIds]}::int[])`, zone));
}

/**
 * Brings what the chosen units (`= 7`, `= ANY(...)`) hold in step with their newest records. The newest record of a
 * place is that of the latest ticket, what was left there before what was found; a place left out says nothing, a
 * missing part leaves the place empty, and so does one that sheared so that nothing of it tells what it was. Beside
 * them stand the loose parts. A row whose part, candidates or fitting day changed loses its verdict, since that was
 * given to something else.
 */
export function holdings(units: Prisma.Sql, zone: string): Prisma.Sql {
  return Prisma.sql`
    WITH newest AS (
      SELECT DISTINCT ON (r.unit_id, r.position_id, r.place)
             r.unit_id, r.id, r.ticket_id, r.position_id, r.place, r.part_id, r.candidates, r.condition, r.marks,
             (r.fitted_on - DATE '1970-01-01') AS fitted_on
      FROM place_record r JOIN ticket t ON t.id = r.ticket_id
      WHERE r.unit_id ${units} AND r.left_out_why IS NULL
      ORDER BY r.unit_id, r.position_id, r.place, t.opened_at DESC, t.id DESC, (r.side = 'left') DESC
    ),
    holds AS (
      SELECT unit_id, id, ticket_id, position_id, place, part_id, candidates, fitted_on FROM newest
      WHERE condition IS DISTINCT FROM 'missing'
        AND (part_id IS NOT NULL OR marks IS NOT NULL OR cardinality(candidates) > 0)
      UNION ALL
      SELECT k.unit_id, l.id, l.ticket_id, l.position_id, l.place, l.part_id, l.candidates, l.fitted_on
      FROM (${looseParts(Prisma.sql`t.unit_id ${units}`, zone)}) l JOIN ticket k ON k.id = l.ticket_id
    ),
    gone AS (
      DELETE FROM install i
      WHERE i.unit_id ${units}
        AND NOT EXISTS (SELECT FROM holds h WHERE h.unit_id = i.unit_id AND h.position_id = i.position_id AND h.place = i.place)
    )
    INSERT INTO install (unit_id, location_id, position_id, place, record_id, ticket_id, line_id, part_id, candidates, fitted_on,
                         built_from, built_to)
    SELECT u.id, u.location_id, h.position_id, h.place, h.id, h.ticket_id, p.line_id, h.part_id, h.candidates, h.fitted_on,
           u.built_from, u.built_to
    FROM holds h JOIN unit u ON u.id = h.unit_id JOIN position p ON p.id = h.position_id
    ON CONFLICT (unit_id, position_id, place) DO UPDATE SET
      record_id = excluded.record_id, ticket_id = excluded.ticket_id, part_id = excluded.part_id,
      candidates = excluded.candidates, fitted_on = excluded.fitted_on,
      verdict = CASE WHEN (install.part_id, install.candidates, install.fitted_on)
                          IS NOT DISTINCT FROM (excluded.part_id, excluded.candidates, excluded.fitted_on)
                     THEN install.verdict END,
      judgement = CASE WHEN (install.part_id, install.candidates, install.fitted_on)
                            IS NOT DISTINCT FROM (excluded.part_id, excluded.candidates, excluded.fitted_on)
                       THEN install.judgement END,
      judgement_id = CASE WHEN (install.part_id, install.candidates, install.fitted_on)
                               IS NOT DISTINCT FROM (excluded.part_id, excluded.candidates, excluded.fitted_on)
                          THEN install.judgement_id END,
      asked_unit = CASE WHEN (install.part_id, install.candidates, install.fitted_on)
                             IS NOT DISTINCT FROM (excluded.part_id, excluded.candidates, excluded.fitted_on)
                        THEN install.asked_unit END,
      judged_revision = CASE WHEN (install.part_id, install.candidates, install.fitted_on)
                                  IS NOT DISTINCT FROM (excluded.part_id, excluded.candidates, excluded.fitted_on)
                             THEN install.judged_revision END`;
}
