import type { WebhookDelivery, WebhookPayload, WebhookView } from '../../contracts';
import type { DueDelivery, WebhookStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { iso } from '../tickets/iso';

const WEBHOOK = Prisma.sql`
  SELECT h.id, h.url, h.events, h.active, ${iso('h.created_at')} AS "createdAt", p.name AS "createdBy", h.version,
         (SELECT count(*)::int FROM webhook_delivery d
          WHERE d.webhook_id = h.id AND d.state IN ('waiting', 'sending')) AS waiting,
         (SELECT count(*)::int FROM webhook_delivery d
          WHERE d.webhook_id = h.id AND d.state = 'set-aside') AS "setAside"
  FROM webhook h LEFT JOIN person p ON p.id = h.created_by`;

export function webhookStore(db: Db): WebhookStore {
  return {
    list: () => db.$queryRaw<WebhookView[]>`${WEBHOOK} ORDER BY h.id`,
    async byId(id) {
      const rows = await db.$queryRaw<WebhookView[]>`${WEBHOOK} WHERE h.id = ${id}::int`;
      return rows[0] ?? null;
    },
    async insert({ url, events, personId }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO webhook (url, events, sealed, created_by)
        VALUES (${url}, ${[...events]}::text[], '', ${personId}::int) RETURNING id`;
      return rows[0]!.id;
    },
    async seal(id, sealed) {
      await db.$executeRaw`UPDATE webhook SET sealed = ${sealed} WHERE id = ${id}::int`;
    },
    sealed: () => db.$queryRaw<{ id: number; sealed: string }[]>`SELECT id, sealed FROM webhook ORDER BY id`,
    async reseal(id, was, sealed) {
      const kept = await db.$executeRaw`
        UPDATE webhook SET sealed = ${sealed} WHERE id = ${id}::int AND sealed = ${was}`;
      return kept === 1;
    },
    async change(id, version, { url = null, events = null, active = null }) {
      const changed = await db.$executeRaw`
        UPDATE webhook SET url = coalesce(${url}::text, url), events = coalesce(${events}::text[], events),
               active = coalesce(${active}::boolean, active), fails = 0, quiet_until = NULL, version = version + 1
        WHERE id = ${id}::int AND version = ${version}::int`;
      return changed === 1;
    },
    async renewSecret(id, version, sealed) {
      const renewed = await db.$executeRaw`
        UPDATE webhook SET sealed = ${sealed}, version = version + 1 WHERE id = ${id}::int AND version = ${version}::int`;
      return renewed === 1;
    },
    async remove(id) {
      return (await db.$executeRaw`DELETE FROM webhook WHERE id = ${id}::int`) === 1;
    },
    async tryOut(id) {
      // The address first, and held: what is removed meanwhile has nothing on its way.
      const put = await db.$executeRaw`
        WITH heard AS (
          UPDATE webhook SET quiet_until = NULL WHERE id = ${id}::int RETURNING id
        ), event AS (
          INSERT INTO webhook_event (type, data) SELECT 'trial', jsonb_build_object('webhookId', id) FROM heard RETURNING id
        )
        INSERT INTO webhook_delivery (webhook_id, event_id) SELECT heard.id, event.id FROM heard, event`;
      return put === 1;
    },
    async forgetOld(days) {
      await db.$executeRaw`
        DELETE FROM webhook_event e WHERE e.at < now() - make_interval(days => ${days}::int) AND NOT EXISTS (
          SELECT FROM webhook_delivery d WHERE d.event_id = e.id AND d.state IN ('waiting', 'sending'))`;
    },
    ...deliveries(db),
  };
}

function deliveries(db: Db): Pick<WebhookStore, 'deliveries' | 'again' | 'claim' | 'delivered' | 'failed'> {
  return {
    deliveries: (id, most) => db.$queryRaw<WebhookDelivery[]>`
      SELECT d.id, 'evt_' || e.id AS "eventId", e.type, ${iso('e.at')} AS at, d.state, d.tries,
             CASE WHEN d.state = 'waiting' THEN ${iso('d.next_try_at')} END AS "nextTryAt", d.status, d.problem,
             ${iso('d.ended_at')} AS "endedAt"
      FROM webhook_delivery d JOIN webhook_event e ON e.id = d.event_id
      WHERE d.webhook_id = ${id}::int ORDER BY d.state = 'set-aside' DESC, d.id DESC LIMIT ${most}::int`,
    async again(id, deliveryId) {
      const put = await db.$executeRaw`
        WITH heard AS (UPDATE webhook SET quiet_until = NULL WHERE id = ${id}::int)
        UPDATE webhook_delivery
        SET state = 'waiting', tries = 0, next_try_at = now(), status = NULL, problem = NULL, ended_at = NULL
        WHERE id = ${deliveryId}::int AND webhook_id = ${id}::int AND state IN ('delivered', 'set-aside')`;
      return put === 1;
    },
    async claim(leaseSeconds) {
      const rows = await db.$queryRaw<(Omit<DueDelivery, 'payload'> & { payload: unknown })[]>`
        UPDATE webhook_delivery d SET state = 'sending', tries = d.tries + 1,
               leased_until = now() + make_interval(secs => ${leaseSeconds}::int)
        FROM webhook h, webhook_event e
        WHERE h.id = d.webhook_id AND e.id = d.event_id AND d.id = (
          SELECT w.id FROM webhook_delivery w JOIN webhook o ON o.id = w.webhook_id
          WHERE o.active AND (o.quiet_until IS NULL OR o.quiet_until <= now())
            AND (w.state = 'waiting' AND w.next_try_at <= now() OR w.state = 'sending' AND w.leased_until < now())
            AND o.id NOT IN (SELECT l.webhook_id FROM webhook_delivery l
                             WHERE l.state = 'sending' AND l.leased_until >= now()
                             GROUP BY l.webhook_id HAVING count(*) >= 2)
          ORDER BY w.next_try_at, w.id LIMIT 1 FOR UPDATE OF w SKIP LOCKED)
        RETURNING d.id, h.id AS "webhookId", h.url, h.sealed, e.id AS "eventId", d.tries,
                  jsonb_build_object('type', e.type, 'timestamp', ${iso('e.at')}, 'data', e.data) AS payload`;
      const [due] = rows;
      return due ? { ...due, payload: due.payload as WebhookPayload } : null;
    },
    async delivered({ id, webhookId, tries }, status) {
      await db.$executeRaw`
        WITH heard AS (UPDATE webhook SET fails = 0, quiet_until = NULL WHERE id = ${webhookId}::int AND fails > 0)
        UPDATE webhook_delivery SET state = 'delivered', status = ${status}::int, problem = NULL, ended_at = now()
        WHERE id = ${id}::int AND state = 'sending' AND tries = ${tries}::int`;
    },
    async failed({ id, webhookId, tries }, status, problem, afterSeconds) {
      await db.$executeRaw`
        WITH unheard AS (
          UPDATE webhook SET fails = fails + 1,
                 quiet_until = now() + least(power(2, least(fails, 10)), 60) * interval '1 second'
          WHERE id = ${webhookId}::int)
        UPDATE webhook_delivery
        SET state = CASE WHEN ${afterSeconds}::int IS NULL THEN 'set-aside' ELSE 'waiting' END,
            status = ${status}::int, problem = ${problem},
            next_try_at = now() + make_interval(secs => coalesce(${afterSeconds}::int, 0)),
            ended_at = CASE WHEN ${afterSeconds}::int IS NULL THEN now() END
        WHERE id = ${id}::int AND state = 'sending' AND tries = ${tries}::int`;
    },
  };
}
