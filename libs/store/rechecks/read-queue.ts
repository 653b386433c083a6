import type { QueueState } from '../../usecases';
import type { Db } from '../db';

/** How much work waits and for how long, and which workers hold a line to the database. */
export async function readQueue(db: Db): Promise<QueueState> {
  const rows = await db.$queryRaw<Omit<QueueState, 'workers'>[]>`
    SELECT b.waiting AS "bellsWaiting", b.age AS "oldestBellSeconds",
           c.waiting AS "chunksWaiting", c.held AS "chunksHeld", GREATEST(c.age, r.age) AS "oldestWorkSeconds",
           r.planned AS "rechecksPlanned", r.running AS "rechecksRunning", r.done AS "rechecksDone",
           r.judged AS "installsJudged", r.aside AS "setAside"
    FROM (SELECT count(*)::int AS waiting, COALESCE(extract(epoch FROM clock_timestamp() - min(created_at)), 0)::float8 AS age
          FROM outbox WHERE dispatched_at IS NULL) b,
         (SELECT count(*) FILTER (WHERE k.leased_until IS NULL OR k.leased_until < now())::int AS waiting,
                 count(*) FILTER (WHERE k.leased_until >= now())::int AS held,
                 COALESCE(extract(epoch FROM clock_timestamp() - min(h.created_at)), 0)::float8 AS age
          FROM recheck_chunk k JOIN recheck h ON h.id = k.recheck_id WHERE k.state = 'waiting') c,
         (SELECT count(*) FILTER (WHERE state = 'planned')::int AS planned,
                 count(*) FILTER (WHERE state = 'running')::int AS running,
                 count(*) FILTER (WHERE state = 'done')::int AS done,
                 COALESCE(extract(epoch FROM clock_timestamp() - min(created_at) FILTER (WHERE state = 'planned')), 0)::float8 AS age,
                 COALESCE(sum(judged), 0)::float8 AS judged, COALESCE(sum(set_aside), 0)::float8 AS aside
          FROM recheck) r`;
  const names = await db.$queryRaw<{ name: string }[]>`
    SELECT DISTINCT application_name AS name FROM pg_stat_activity
    WHERE datname = current_database() AND application_name LIKE 'revright worker %' ORDER BY 1`;
  const workers = names.flatMap(({ name }) => {
    const found = /^revright worker (\S+) x(\d+)$/.exec(name);
    return found ? [{ name: found[1]!, concurrency: Number(found[2]) }] : [];
  });
  return { ...rows[0]!, workers };
}
