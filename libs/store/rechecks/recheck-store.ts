import type { RecheckStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import {
  beginChunk,
  begunBefore,
  chunkDone,
  chunkFailed,
  cutChunk,
  forgetBeginning,
  setChunkAside,
  splitChunk,
  takeChunk,
} from './chunks';
import { planRecheck } from './plan-recheck';
import { readRechecks } from './read-rechecks';
import { readQueue } from './read-queue';
import { ringChunks } from './ring-chunks';

export function recheckStore(db: Db, zone: string): RecheckStore {
  return {
    async insert({ cause, sourceId, revision, scope, requestedBy }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO recheck (cause, source_id, revision, scope, requested_by)
        VALUES (${cause}, ${sourceId}::int, ${revision}::int, ${JSON.stringify(scope)}::jsonb, ${requestedBy}::int)
        RETURNING id`;
      return rows[0]!.id;
    },
    find: async (id) => (await readRechecks(db, Prisma.sql`r.id = ${id}::int`, 1))[0] ?? null,
    newest: (limit) => readRechecks(db, Prisma.sql`TRUE`, limit),
    ofSource: async (sourceId) => (await readRechecks(db, Prisma.sql`r.source_id = ${sourceId}::int`, 1))[0] ?? null,
    async takePlanned(id) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT id FROM recheck WHERE id = ${id}::int AND state = 'planned' FOR UPDATE SKIP LOCKED`;
      return rows.length === 0 ? null : (await readRechecks(db, Prisma.sql`r.id = ${id}::int`, 1))[0]!;
    },
    plan: (id, scope, cut) => planRecheck(db, id, scope, { ...cut, zone }),
    ring: (id, atOnce) => ringChunks(db, id, atOnce),
    begunBefore: (id, n) => begunBefore(db, id, n),
    beginChunk: (id, n) => beginChunk(db, id, n),
    forgetBeginning: (id, n) => forgetBeginning(db, id, n),
    takeChunk: (id, n) => takeChunk(db, id, n),
    chunkDone: (id, n, counts) => chunkDone(db, id, n, counts),
    chunkFailed: (id, n, problem) => chunkFailed(db, id, n, problem),
    cutChunk: (chunk, ends) => cutChunk(db, chunk, ends),
    splitChunk: (chunk) => splitChunk(db, chunk),
    setChunkAside: (id, n) => setChunkAside(db, id, n),
    async finishIfAllDone(id) {
      const finished = await db.$executeRaw`
        UPDATE recheck SET state = 'done', finished_at = clock_timestamp()
        WHERE id = ${id}::int AND state = 'running'
          AND NOT EXISTS (SELECT 1 FROM recheck_chunk WHERE recheck_id = ${id}::int AND state = 'waiting')`;
      return finished === 1;
    },
    queue: () => readQueue(db),
    unfinished: () => db.$queryRaw`
      SELECT id, state FROM recheck
      WHERE state = 'running' OR (state = 'planned' AND created_at < now() - INTERVAL '10 seconds') ORDER BY id`,
    async staleUnits(limit) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT DISTINCT i.unit_id AS id
        FROM ticket t JOIN install i ON i.unit_id = t.unit_id
        WHERE (t.closed_at IS NULL OR t.closed_at > now() - INTERVAL '1 hour')
          AND (i.judged_revision IS NULL
               OR i.judged_revision < (SELECT max(revision) FROM recheck WHERE state = 'done'))
          AND NOT EXISTS (SELECT 1 FROM recheck WHERE state <> 'done')
        ORDER BY id LIMIT ${limit}::int`;
      return rows.map(({ id }) => id);
    },
  };
}
