import type { KeptAnswer, KeptAnswerStore } from '../../usecases';
import type { Db } from '../db';

interface Row {
  fingerprint: string;
  status: number | null;
  body: unknown;
}

export function keptAnswerStore(db: Db): KeptAnswerStore {
  return {
    async begin({ personId, key, fingerprint }, at, forgottenBefore) {
      await db.$executeRaw`DELETE FROM kept_answer WHERE begun_at < ${new Date(forgottenBefore)}`;
      const begun = await db.$executeRaw`
        INSERT INTO kept_answer (person_id, key, fingerprint, begun_at)
        VALUES (${personId}::int, ${key}, ${fingerprint}, ${new Date(at)}) ON CONFLICT DO NOTHING`;
      if (begun === 1) return { state: 'new' };
      const rows = await db.$queryRaw<Row[]>`
        SELECT fingerprint, status, body FROM kept_answer WHERE person_id = ${personId}::int AND key = ${key}`;
      return standingOf(rows[0], fingerprint);
    },
    async keep({ personId, key }, status, body) {
      await db.$executeRaw`
        UPDATE kept_answer SET status = ${status}::int, body = ${JSON.stringify(body)}::jsonb
        WHERE person_id = ${personId}::int AND key = ${key}`;
    },
    async forget({ personId, key }) {
      await db.$executeRaw`DELETE FROM kept_answer WHERE person_id = ${personId}::int AND key = ${key}`;
    },
  };
}

/** One that was given free in this very moment counts as running: asking once more claims it. */
function standingOf(row: Row | undefined, fingerprint: string): KeptAnswer {
  if (!row) return { state: 'running' };
  if (row.fingerprint !== fingerprint) return { state: 'other' };
  return row.status === null ? { state: 'running' } : { state: 'answered', status: row.status, body: row.body };
}
