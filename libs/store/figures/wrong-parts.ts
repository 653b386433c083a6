import type { Figures } from '../../contracts';
import type { FigureScope } from '../../usecases';
import type { Db } from '../db';
import { at, partJson, within } from './scope-sql';

/** Parts by the number of places in which they were flagged; a place flagged twice for one matter counts once. */
export function wrongParts(db: Db, scope: FigureScope, most: number, zone: string): Promise<Figures['wrongParts']> {
  return db.$queryRaw`
    WITH flagged AS (
      SELECT DISTINCT f.ticket_id, f.position_id, f.place, f.part_id, f.verdict, f.reason->>'required' AS required
      FROM flag f JOIN ticket t ON t.id = f.ticket_id
      WHERE ${within('f.opened_at', scope, zone)} AND f.verdict IN ('wrong', 'outdated') AND f.part_id IS NOT NULL
        AND ${at('t.location_id', scope.locationId)})
    SELECT ${partJson('p')} AS part, CASE WHEN q.id IS NOT NULL THEN ${partJson('q')} END AS required, f.verdict,
           count(*)::int AS places
    FROM flagged f JOIN part p ON p.id = f.part_id LEFT JOIN part q ON q.key = f.required
    GROUP BY p.id, q.id, f.verdict ORDER BY places DESC, p.key, q.key, f.verdict LIMIT ${most}::int`;
}
