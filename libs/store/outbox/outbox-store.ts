import type { Bell, OutboxStore } from '../../usecases';
import type { Db } from '../db';

/** Told at commit, so that whoever waits need not wait for its next look. */
export const BELL_CHANNEL = 'revright_bell';

export function outboxStore(db: Db): OutboxStore {
  return {
    async add(bells) {
      if (bells.length === 0) return;
      await db.$executeRaw`
        INSERT INTO outbox (topic, payload)
        SELECT b.topic, b.payload FROM jsonb_to_recordset(${JSON.stringify(bells)}::jsonb) AS b(topic text, payload jsonb)`;
      await db.$queryRaw`SELECT 1 AS told FROM pg_notify(${BELL_CHANNEL}, '')`;
    },
    claim: (limit, leaseSeconds) => db.$queryRaw<Bell[]>`
      UPDATE outbox SET leased_until = now() + make_interval(secs => ${leaseSeconds}::int), tries = tries + 1
      WHERE id IN (
        SELECT id FROM outbox
        WHERE dispatched_at IS NULL AND (leased_until IS NULL OR leased_until < now())
        ORDER BY id LIMIT ${limit}::int FOR UPDATE SKIP LOCKED)
      RETURNING id, topic, payload`,
    async markDispatched(ids) {
      await db.$executeRaw`UPDATE outbox SET dispatched_at = now() WHERE id = ANY(${[...ids]}::int[])`;
    },
    async giveBack(ids) {
      await db.$executeRaw`
        UPDATE outbox SET leased_until = NULL WHERE id = ANY(${[...ids]}::int[]) AND dispatched_at IS NULL`;
    },
    sweepRung: () => db.$executeRaw`DELETE FROM outbox WHERE dispatched_at < now() - INTERVAL '1 hour'`,
  };
}
