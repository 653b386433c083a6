import type { Figures } from '../../contracts';
import type { FigureScope } from '../../usecases';
import type { Db } from '../db';
import { takenIn } from './scope-sql';

/** Days within which a build date counts as settled: the longest month. */
const SETTLED_DAYS = 31;

/** Units by line and by how well their build date is known; lines with the most that is not known first. */
export function unsettledBuildDates(db: Db, scope: FigureScope, zone: string): Promise<Figures['unsettled']> {
  return db.$queryRaw`
    WITH ${takenIn(scope, zone)},
    known AS (
      SELECT u.line_id, CASE WHEN isempty(u.built) THEN 'contradicted'
                             WHEN u.built_to - u.built_from <= ${SETTLED_DAYS}::int THEN 'settled'
                             WHEN u.built = multirange(range_merge(u.built)) THEN 'longer' ELSE 'several' END AS how
      FROM unit u WHERE u.id IN (SELECT unit_id FROM taken_in)),
    counted AS (
      SELECT line_id, count(*)::int AS units, count(*) FILTER (WHERE how = 'settled')::int AS settled,
             count(*) FILTER (WHERE how = 'longer')::int AS longer,
             count(*) FILTER (WHERE how = 'several')::int AS several,
             count(*) FILTER (WHERE how = 'contradicted')::int AS contradicted
      FROM known GROUP BY line_id)
    SELECT l.name AS line, c.units, c.settled, c.longer,
           c.several AS "severalRuns", c.contradicted
    FROM counted c LEFT JOIN product_line l ON l.id = c.line_id
    ORDER BY c.units - c.settled DESC, l.name, l.id`;
}
