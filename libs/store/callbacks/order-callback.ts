import { REVIEW_SOURCE, type CallbackStore } from '../../usecases';
import type { Db } from '../db';

type Order = Parameters<CallbackStore['order']>[0];

/** Opens a callback for the unit by a manager's order, or adds the reason to the one that is open. */
export async function orderCallback(db: Db, order: Order): Promise<number> {
  const { unitId, positionId, place, partId, verdict, sentence } = order;
  await db.$executeRaw`
    INSERT INTO source (key, kind, publisher, number, title, issued, received, state)
    VALUES (${REVIEW_SOURCE}, 'shop-finding', 'the shop', 'review', 'Manager''s review', current_date, current_date, 'published')
    ON CONFLICT (key) DO NOTHING`;
  await db.$executeRaw`
    INSERT INTO callback (unit_id, owner_id) SELECT id, owner_id FROM unit WHERE id = ${unitId}::int
    ON CONFLICT (unit_id) WHERE state IN ('open', 'booked') DO NOTHING`;
  const rows = await db.$queryRaw<{ id: number }[]>`
    INSERT INTO callback_reason (callback_id, source_id, position_id, place, part_id, verdict, action, detail)
    SELECT c.id, s.id, ${positionId}::int, ${place}::int, ${partId}::int, ${verdict}, 'call-back',
           ${JSON.stringify({ rule: '', required: null, sentence })}::jsonb
    FROM callback c, source s
    WHERE c.unit_id = ${unitId}::int AND c.state IN ('open', 'booked') AND s.key = ${REVIEW_SOURCE}
    ON CONFLICT (callback_id, source_id, position_id, place) DO UPDATE
      SET part_id = EXCLUDED.part_id, verdict = EXCLUDED.verdict, withdrawn_at = NULL, withdrawn_why = NULL
    RETURNING callback_id AS id`;
  return rows[0]!.id;
}
