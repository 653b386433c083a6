import { STAGE_NAMES, type Figures } from '../../contracts';
import type { FigureScope } from '../../usecases';
import type { Db } from '../db';
import { at, within } from './scope-sql';

/**
 * A stay ends with a move on, a move back or the handover, and began with the move before it or with the opening. A
 * cancelled ticket's last stay is none. All stages, in their order.
 */
export function timeInStage(db: Db, scope: FigureScope, zone: string): Promise<Figures['stages']> {
  return db.$queryRaw`
    WITH stay AS (
      SELECT CASE WHEN e.kind = 'handed-over' THEN 'handover' ELSE e.data->>'from' END AS stage,
             extract(epoch FROM e.at - began.at) / 3600 AS hours
      FROM ticket_event e JOIN ticket t ON t.id = e.ticket_id
      CROSS JOIN LATERAL (
        SELECT max(b.at) AS at FROM ticket_event b
        WHERE b.ticket_id = e.ticket_id AND b.kind IN ('opened', 'moved', 'moved-back') AND (b.at, b.id) < (e.at, e.id)
      ) began
      WHERE e.kind IN ('moved', 'moved-back', 'handed-over') AND ${within('e.at', scope, zone)}
        AND ${at('t.location_id', scope.locationId)})
    SELECT s.stage, count(stay.hours)::int AS stays,
           round((percentile_cont(0.5) WITHIN GROUP (ORDER BY stay.hours))::numeric, 1)::float AS "medianHours",
           round((percentile_cont(0.9) WITHIN GROUP (ORDER BY stay.hours))::numeric, 1)::float AS "longHours"
    FROM unnest(${[...STAGE_NAMES]}::text[]) WITH ORDINALITY AS s(stage, n) LEFT JOIN stay ON stay.stage = s.stage
    GROUP BY s.stage, s.n ORDER BY s.n`;
}
