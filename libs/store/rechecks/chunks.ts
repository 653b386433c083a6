import type { AppliedCounts, ChunkRow } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';

/** Takes a waiting chunk for this transaction; null when it is done or in another's hands. */
export async function takeChunk(db: Db, recheckId: number, n: number): Promise<ChunkRow | null> {
  const rows = await db.$queryRaw<ChunkRow[]>`
    SELECT recheck_id AS "recheckId", n, from_unit AS "fromUnit", to_unit AS "toUnit", units, tries
    FROM recheck_chunk WHERE recheck_id = ${recheckId}::int AND n = ${n}::int AND state = 'waiting'
    FOR UPDATE SKIP LOCKED`;
  return rows[0] ?? null;
}

/** Marks the chunk as done and adds its counts to the recheck's. */
export async function chunkDone(
  db: Db,
  recheckId: number,
  n: number,
  counts: AppliedCounts & { judged: number },
): Promise<void> {
  await db.$executeRaw`
    WITH done AS (
      UPDATE recheck_chunk SET state = 'done', judged = ${counts.judged}::int, changed = ${counts.changed}::int,
             done_at = clock_timestamp(), leased_until = NULL
      WHERE recheck_id = ${recheckId}::int AND n = ${n}::int)
    UPDATE recheck SET judged = judged + ${counts.judged}::int, changed = changed + ${counts.changed}::int,
           flags_raised = flags_raised + ${counts.flagsRaised}::int,
           flags_cleared = flags_cleared + ${counts.flagsCleared}::int,
           callbacks_opened = callbacks_opened + ${counts.callbacksOpened}::int,
           callbacks_closed = callbacks_closed + ${counts.callbacksClosed}::int
    WHERE id = ${recheckId}::int`;
}

/**
 * Counts a beginning, before and outside of the judging: what never comes to an end leaves this behind. Answers how many
 * beginnings there were without an end; null when the chunk is done or in another's hands.
 */
export async function beginChunk(db: Db, recheckId: number, n: number): Promise<number | null> {
  const rows = await db.$queryRaw<{ begun: number }[]>`
    UPDATE recheck_chunk SET begun = begun + 1
    WHERE id = (SELECT id FROM recheck_chunk WHERE recheck_id = ${recheckId}::int AND n = ${n}::int AND state = 'waiting'
                FOR UPDATE SKIP LOCKED)
    RETURNING begun`;
  return rows[0]?.begun ?? null;
}

/** An earlier beginning has not ended well, or has not ended yet. */
export async function begunBefore(db: Db, recheckId: number, n: number): Promise<boolean> {
  const rows = await db.$queryRaw<{ before: boolean }[]>`
    SELECT begun > 0 OR tries > 0 AS before FROM recheck_chunk WHERE recheck_id = ${recheckId}::int AND n = ${n}::int`;
  return rows[0]?.before ?? false;
}

/** Takes a beginning back that ended through no fault of the chunk. */
export async function forgetBeginning(db: Db, recheckId: number, n: number): Promise<void> {
  await db.$executeRaw`
    UPDATE recheck_chunk SET begun = GREATEST(0, begun - 1)
    WHERE id = (SELECT id FROM recheck_chunk WHERE recheck_id = ${recheckId}::int AND n = ${n}::int AND state = 'waiting'
                FOR UPDATE SKIP LOCKED)`;
}

export async function chunkFailed(db: Db, recheckId: number, n: number, problem: string): Promise<ChunkRow | null> {
  const rows = await db.$queryRaw<ChunkRow[]>`
    UPDATE recheck_chunk SET tries = tries + 1, begun = 0, problem = ${problem}, leased_until = NULL
    WHERE recheck_id = ${recheckId}::int AND n = ${n}::int AND state = 'waiting'
    RETURNING recheck_id AS "recheckId", n, from_unit AS "fromUnit", to_unit AS "toUnit", units, tries`;
  return rows[0] ?? null;
}

/** The units up to the first end stay; from there up to each next end, and to the old end, stand new chunks. */
export async function cutChunk(db: Db, chunk: ChunkRow, ends: readonly number[]): Promise<void> {
  const { recheckId, n, toUnit, units } = chunk;
  const named = [...units];
  const within = (from: Prisma.Sql, to: Prisma.Sql) =>
    Prisma.sql`ARRAY(SELECT u FROM unnest(${named}::int[]) u WHERE u > ${from} AND u <= ${to} ORDER BY u)`;
  const [first = toUnit, ...others] = ends;
  const rest = [...others, toUnit];
  await db.$executeRaw`
    UPDATE recheck_chunk SET to_unit = ${first}::int, units = ${within(Prisma.sql`0`, Prisma.sql`${first}::int`)}
    WHERE recheck_id = ${recheckId}::int AND n = ${n}::int`;
  // Numbers from the sequence of ids lie above those of the plan and are given once, whoever else cuts at the moment.
  await db.$executeRaw`
    INSERT INTO recheck_chunk (recheck_id, n, from_unit, to_unit, units)
    SELECT ${recheckId}::int, nextval('recheck_chunk_id_seq'), p.after + 1, p.upto,
           ${within(Prisma.sql`p.after`, Prisma.sql`p.upto`)}
    FROM (SELECT upto, lag(upto, 1, ${first}::int) OVER (ORDER BY upto) AS after
          FROM unnest(${rest}::int[]) AS e(upto)) p`;
}

/** Into how many pieces a chunk falls that cannot be judged whole: ten thousand units are down to one after four splits. */
const PIECES = 10;

/** The same units again in smaller chunks, so that in the end only the one that cannot be judged stays behind. */
export async function splitChunk(db: Db, { recheckId, n, fromUnit, toUnit, units }: ChunkRow): Promise<void> {
  const named = [...units];
  // The old number goes and is not given again, so a late bell for it finds nothing; numbers come as in `cutChunk`.
  await db.$executeRaw`DELETE FROM recheck_chunk WHERE recheck_id = ${recheckId}::int AND n = ${n}::int`;
  await db.$executeRaw`
    INSERT INTO recheck_chunk (recheck_id, n, from_unit, to_unit, units)
    SELECT ${recheckId}::int, nextval('recheck_chunk_id_seq'), min(unit_id), max(unit_id),
           CASE WHEN cardinality(${named}::int[]) = 0 THEN '{}' ELSE array_agg(unit_id ORDER BY unit_id) END
    FROM (SELECT unit_id, ntile(${PIECES}::int) OVER (ORDER BY unit_id) AS piece
          FROM (SELECT unit_id FROM install WHERE unit_id BETWEEN ${fromUnit}::int AND ${toUnit}::int
                UNION
                SELECT u.id FROM unit u JOIN recheck r ON r.id = ${recheckId}::int AND r.scope ? 'recompute'
                WHERE u.id BETWEEN ${fromUnit}::int AND ${toUnit}::int) u
          WHERE cardinality(${named}::int[]) = 0 OR unit_id = ANY(${named}::int[])) p
    GROUP BY piece ORDER BY piece`;
}

export async function setChunkAside(db: Db, recheckId: number, n: number): Promise<void> {
  await db.$executeRaw`
    UPDATE recheck_chunk SET state = 'set-aside', leased_until = NULL
    WHERE recheck_id = ${recheckId}::int AND n = ${n}::int`;
  await db.$executeRaw`UPDATE recheck SET set_aside = set_aside + 1 WHERE id = ${recheckId}::int`;
}
