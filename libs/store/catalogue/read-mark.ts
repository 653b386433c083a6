import { STRENGTH_THRESHOLD, type ShopMark } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { STAMP } from '../rulebook/rulebook-store';

/** A mark as the question answers it; `now` in whole milliseconds. {@link markFrom} puts it in order. */
export interface MarkColumns {
  readonly catalogue: string;
  readonly revision: number | null;
  readonly stamp: string | null;
  readonly now: number;
  readonly threshold: unknown;
}

/** One short question; what the marks stand for is read where they have changed. */
export async function readMark(db: Db): Promise<ShopMark> {
  const rows = await db.$queryRaw<MarkColumns[]>(MARK);
  return markFrom(rows[0]!);
}

export function markFrom({ catalogue, revision, stamp, now, threshold }: MarkColumns): ShopMark {
  return { catalogue, rulebook: { revision: revision ?? 0, stamp: stamp ?? '', now }, threshold };
}

export const MARK = Prisma.sql`
    SELECT concat_ws(' ', d.oid, (SELECT sum(n) FROM catalogue_stamp)) AS catalogue,
           r.id AS revision, ${STAMP} AS stamp, floor(extract(epoch FROM clock_timestamp()) * 1000)::float8 AS now,
           (SELECT value FROM setting WHERE key = ${STRENGTH_THRESHOLD}) AS threshold
    FROM pg_database d LEFT JOIN LATERAL (SELECT id, at FROM rulebook_revision ORDER BY id DESC LIMIT 1) r ON TRUE
    WHERE d.datname = current_database()`;
