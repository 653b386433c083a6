import { STRENGTH_THRESHOLD, type ShopMark } from '../../usecases';
import type { Db } from '../db';
import { STAMP } from '../rulebook/rulebook-store';

/** One short question; what the marks stand for is read where they have changed. */
export async function readMark(db: Db): Promise<ShopMark> {
  const rows = await db.$queryRaw<
    { catalogue: string; revision: number | null; stamp: string | null; now: Date; threshold: unknown }[]
  >`
    SELECT concat_ws(' ', d.oid, (SELECT sum(n) FROM catalogue_stamp)) AS catalogue,
           r.id AS revision, ${STAMP} AS stamp, clock_timestamp() AS now,
           (SELECT value FROM setting WHERE key = ${STRENGTH_THRESHOLD}) AS threshold
    FROM pg_database d LEFT JOIN LATERAL (SELECT id, at FROM rulebook_revision ORDER BY id DESC LIMIT 1) r ON TRUE
    WHERE d.datname = current_database()`;
  const { catalogue, revision, stamp, now, threshold } = rows[0]!;
  return { catalogue, rulebook: { revision: revision ?? 0, stamp: stamp ?? '', now: now.getTime() }, threshold };
}
