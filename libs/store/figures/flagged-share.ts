import type { Figures } from '../../contracts';
import type { FigureScope } from '../../usecases';
import type { Db } from '../db';
import { partJson, takenIn } from './scope-sql';

/** Tickets and flagged tickets, bench by bench; those at no bench together at the end of their location. */
export function flaggedByBench(db: Db, scope: FigureScope, zone: string): Promise<Figures['byBench']> {
  return db.$queryRaw`
    WITH ${takenIn(scope, zone)},
    flagged AS (SELECT DISTINCT f.ticket_id FROM flag f JOIN taken_in t ON t.id = f.ticket_id)
    SELECT b.name AS bench, l.name AS location, count(*)::int AS tickets, count(f.ticket_id)::int AS flagged
    FROM taken_in t JOIN location l ON l.id = t.location_id
    LEFT JOIN bench b ON b.id = t.bench_id LEFT JOIN flagged f ON f.ticket_id = t.id
    GROUP BY l.id, l.name, b.id, b.name ORDER BY l.name, b.name NULLS LAST, b.id`;
}

/** Places that held a part, and those of them with a flag about it; most flags first, then the greater share. */
export function flaggedByPart(db: Db, scope: FigureScope, most: number, zone: string): Promise<Figures['byPart']> {
  return db.$queryRaw`
    WITH ${takenIn(scope, zone)},
    flagged AS (
      SELECT DISTINCT f.ticket_id, f.position_id, f.place, f.part_id
      FROM flag f JOIN taken_in t ON t.id = f.ticket_id WHERE f.part_id IS NOT NULL),
    held AS (
      SELECT DISTINCT r.ticket_id, r.position_id, r.place, r.part_id
      FROM place_record r JOIN taken_in t ON t.id = r.ticket_id
      WHERE r.part_id IN (SELECT part_id FROM flagged)),
    shares AS (
      SELECT h.part_id, count(*)::int AS places, count(f.ticket_id)::int AS flagged
      FROM held h LEFT JOIN flagged f USING (ticket_id, position_id, place, part_id) GROUP BY h.part_id)
    SELECT ${partJson('p')} AS part, s.places, s.flagged
    FROM shares s JOIN part p ON p.id = s.part_id
    WHERE s.flagged > 0
    ORDER BY s.flagged DESC, s.flagged::float / s.places DESC, p.key LIMIT ${most}::int`;
}
