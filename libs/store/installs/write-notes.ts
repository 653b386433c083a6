import type { Closing, NoteAdd } from '../../usecases';
import type { Db } from '../db';

/** Opens notes, or opens them again; one per unit, source and place. */
export async function addNotes(db: Db, notes: readonly NoteAdd[]): Promise<void> {
  if (notes.length === 0) return;
  await db.$executeRaw`
    INSERT INTO unit_note (unit_id, source_id, position_id, place, detail)
    SELECT n."unitId", s.id, n."positionId", n.place, n.detail
    FROM jsonb_to_recordset(${JSON.stringify(notes)}::jsonb)
      AS n("unitId" int, source text, "positionId" int, place int, detail jsonb)
    JOIN source s ON s.key = n.source
    ON CONFLICT (unit_id, source_id, position_id, place) DO UPDATE
      SET detail = EXCLUDED.detail, opened_at = now(), closed_at = NULL, closed_why = NULL, closed_by = NULL,
          settled_part_id = NULL`;
}

export async function closeNotes(db: Db, closings: readonly Closing[]): Promise<void> {
  if (closings.length === 0) return;
  await db.$executeRaw`
    UPDATE unit_note n SET closed_at = now(), closed_why = c.why
    FROM jsonb_to_recordset(${JSON.stringify(closings)}::jsonb) AS c(id int, why text)
    WHERE n.id = c.id AND n.closed_at IS NULL`;
}
