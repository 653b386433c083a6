import type { Db } from '../db';
import { BELL_CHANNEL } from '../outbox/outbox-store';

/**
 * Orders bells for waiting chunks, first come first, so that at most `atOnce` of the recheck are under way; a chunk
 * whose last bell is older than its lease counts as not under way and is rung again. Answers how many were ordered.
 */
export async function ringChunks(db: Db, recheckId: number, atOnce: number): Promise<number> {
  const rung = await db.$executeRaw`
    WITH next AS (
      SELECT id FROM recheck_chunk
      WHERE recheck_id = ${recheckId}::int AND state = 'waiting' AND (leased_until IS NULL OR leased_until < now())
      ORDER BY n
      LIMIT GREATEST(0, ${atOnce}::int - (
        SELECT count(*) FROM recheck_chunk
        WHERE recheck_id = ${recheckId}::int AND state = 'waiting' AND leased_until >= now()))
      FOR UPDATE SKIP LOCKED
    ),
    rung AS (
      UPDATE recheck_chunk c SET leased_until = now() + INTERVAL '10 seconds' FROM next
      WHERE c.id = next.id RETURNING c.recheck_id, c.n
    )
    INSERT INTO outbox (topic, payload)
    SELECT 'judge-chunk', jsonb_build_object('recheckId', recheck_id, 'n', n) FROM rung`;
  if (rung > 0) await db.$queryRaw`SELECT 1 AS told FROM pg_notify(${BELL_CHANNEL}, '')`;
  return rung;
}
