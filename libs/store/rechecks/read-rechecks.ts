import type { RecheckRow } from '../../usecases';
import type { Db } from '../db';
import { type Prisma } from '../generated/client';

type Row = Omit<RecheckRow, 'createdAt' | 'startedAt' | 'finishedAt' | 'now'> & {
  readonly createdAt: Date;
  readonly startedAt: Date | null;
  readonly finishedAt: Date | null;
  readonly now: Date;
};

/** Rechecks that meet the condition on `r`, newest first. */
export async function readRechecks(db: Db, where: Prisma.Sql, limit: number): Promise<readonly RecheckRow[]> {
  const rows = await db.$queryRaw<Row[]>`
    SELECT r.id, r.cause, r.source_id AS "sourceId", s.number AS bulletin, r.revision, r.scope, r.state, r.planned,
           r.judged, r.changed, r.flags_raised AS "flagsRaised", r.flags_cleared AS "flagsCleared",
           r.callbacks_opened AS "callbacksOpened", r.callbacks_closed AS "callbacksClosed", r.set_aside AS "setAside",
           ARRAY(SELECT 'Unit ' || c.from_unit || ': ' || COALESCE(c.problem, '') FROM recheck_chunk c
                 WHERE c.recheck_id = r.id AND c.state = 'set-aside' ORDER BY c.n LIMIT 20) AS "setAsideWhy",
           r.created_at AS "createdAt", r.started_at AS "startedAt", r.finished_at AS "finishedAt",
           clock_timestamp() AS now
    FROM recheck r LEFT JOIN source s ON s.id = r.source_id
    WHERE ${where} ORDER BY r.id DESC LIMIT ${limit}::int`;
  return rows.map((row) => ({
    ...row,
    createdAt: row.createdAt.getTime(),
    startedAt: row.startedAt?.getTime() ?? null,
    finishedAt: row.finishedAt?.getTime() ?? null,
    now: row.now.getTime(),
  }));
}
