import type { BenchStore } from '../../usecases';
import type { Db } from '../db';

/** Room between two ranks: twenty tickets can be put into one gap before the list is numbered anew. */
const STEP = 1_048_576;

/**
 * Gives the ticket a bench and a rank. Its rank lies between its neighbours', so that a move writes one row; where no
 * number is left between them the list is numbered anew first. The version rises only when the bench is another one:
 * a new order on the same bench must not refuse what somebody is just writing on the ticket.
 */
export const putOnBench =
  (db: Db): BenchStore['put'] =>
  async (ticketId, benchId, before) => {
    if (benchId === null) {
      await write(db, ticketId, null, null);
      return true;
    }
    const rank = await rankFor(db, ticketId, benchId, before);
    if (rank === null) return false;
    const free = rank === 'no room' ? await rankAfterSpreading(db, ticketId, benchId, before) : rank;
    await write(db, ticketId, benchId, String(free));
    return true;
  };

/** Ranks travel as text: they are wider than the plain numbers of this language. */
type Rank = bigint | 'no room' | null;

async function rankFor(db: Db, ticketId: number, benchId: number, before: number | null): Promise<Rank> {
  const rows = await db.$queryRaw<{ low: string | null; high: string | null }[]>`
    WITH list AS (SELECT id, bench_rank AS rank FROM ticket
                  WHERE bench_id = ${benchId} AND closed_at IS NULL AND id <> ${ticketId}),
         high AS (SELECT rank FROM list WHERE id = ${before}::int)
    SELECT (SELECT max(rank)::text FROM list WHERE ${before}::int IS NULL OR rank < (SELECT rank FROM high)) AS low,
           (SELECT rank::text FROM high) AS high`;
  const low = rows[0]!.low === null ? null : BigInt(rows[0]!.low);
  if (before === null) return (low ?? 0n) + BigInt(STEP);
  if (rows[0]!.high === null) return null;
  const high = BigInt(rows[0]!.high);
  if (low === null) return high - BigInt(STEP);
  return high - low < 2n ? 'no room' : (low + high) / 2n;
}

/** The new numbers lie above every old one, so that no two are ever the same on the way. */
async function rankAfterSpreading(db: Db, ticketId: number, benchId: number, before: number | null): Promise<Rank> {
  await db.$executeRaw`
    UPDATE ticket t SET bench_rank = n.rank
    FROM (SELECT id, max(bench_rank) OVER () + row_number() OVER (ORDER BY bench_rank) * ${STEP}::bigint AS rank
          FROM ticket WHERE bench_id = ${benchId} AND closed_at IS NULL) n
    WHERE t.id = n.id`;
  return rankFor(db, ticketId, benchId, before);
}

async function write(db: Db, ticketId: number, benchId: number | null, rank: string | null): Promise<void> {
  await db.$executeRaw`
    UPDATE ticket SET bench_id = ${benchId}::int, bench_rank = ${rank}::bigint,
           version = version + (bench_id IS DISTINCT FROM ${benchId}::int)::int
    WHERE id = ${ticketId}`;
}
