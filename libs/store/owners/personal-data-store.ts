import type { PersonalData, Retention } from '../../contracts';
import type { ErasableOwner, PersonalDataStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { eraseOwner } from './erase-owner';
import { iso } from '../tickets/iso';
import { UNIT_NAME } from '../units/unit-name';

const UNIT_TABLES = Prisma.sql`unit u LEFT JOIN product_line l ON l.id = u.line_id LEFT JOIN maker k ON k.id = l.maker_id
  LEFT JOIN model m ON m.id = u.model_id`;
const inSight = (sight: number | null) => Prisma.sql`(${sight}::int IS NULL OR o.location_id = ${sight}::int)`;

export function personalDataStore(db: Db): PersonalDataStore {
  return {
    async of(ownerId, sight) {
      const rows = await db.$queryRaw<PersonalData[]>`
        SELECT jsonb_build_object('id', o.id, 'name', o.name, 'phone', o.phone, 'email', o.email, 'address', o.address,
                 'consent', o.consent, 'location', s.name, 'erasedAt', ${iso('o.erased_at')}, 'version', o.version) AS owner,
               ${unitsOf(ownerId)} AS units, ${ticketsOf(ownerId)} AS tickets, ${callbacksOf(ownerId)} AS callbacks
        FROM owner o JOIN location s ON s.id = o.location_id WHERE o.id = ${ownerId}::int AND ${inSight(sight)}`;
      return rows[0] ?? null;
    },
    async lock(ownerId, sight) {
      const rows = await db.$queryRaw<ErasableOwner[]>`
        SELECT o.id, o.version, o.erased_at IS NOT NULL AS erased,
               (SELECT t.number FROM ticket t WHERE t.owner_id = o.id AND t.closed_at IS NULL LIMIT 1) AS "openTicket",
               EXISTS (SELECT FROM callback c WHERE c.owner_id = o.id AND c.state IN ('open', 'booked') AND c.urgent)
                 AS "urgentCall"
        FROM owner o WHERE o.id = ${ownerId}::int AND ${inSight(sight)} FOR UPDATE`;
      return rows[0] ?? null;
    },
    erase: (ownerId) => eraseOwner(db, ownerId),
    async due(before, most) {
      const rows = await db.$queryRaw<(Retention['due'][number] & { count: number })[]>`
        SELECT o.id, o.name, s.name AS location, max(t.closed_at)::date::text AS "lastSeenOn", (count(*) OVER ())::int AS count
        FROM owner o JOIN location s ON s.id = o.location_id JOIN ticket t ON t.owner_id = o.id
        WHERE o.erased_at IS NULL
          AND NOT EXISTS (SELECT FROM callback c WHERE c.owner_id = o.id AND c.state IN ('open', 'booked'))
        GROUP BY o.id, s.name
        HAVING bool_and(t.closed_at < ${new Date(before)}) AND count(*) = count(t.closed_at)
        ORDER BY max(t.closed_at), o.id LIMIT ${most}::int`;
      return { owners: rows.map(({ count: _, ...owner }) => owner), count: rows[0]?.count ?? 0 };
    },
  };
}

const unitsOf = (ownerId: number) => Prisma.sql`coalesce((
  SELECT jsonb_agg(jsonb_build_object('id', u.id, 'name', ${UNIT_NAME}, 'serial', u.serial) ORDER BY u.id)
  FROM ${UNIT_TABLES} WHERE u.owner_id = ${ownerId}::int), '[]'::jsonb)`;

const ticketsOf = (ownerId: number) => Prisma.sql`coalesce((
  SELECT jsonb_agg(jsonb_build_object('id', t.id, 'number', t.number, 'unit', ${UNIT_NAME}, 'complaint', t.complaint,
           'openedOn', t.opened_at::date::text, 'closedOn', t.closed_at::date::text,
           'authorisation', CASE WHEN t.authorisation IS NOT NULL THEN
             jsonb_build_object('by', t.authorisation->>'by', 'how', t.authorisation->>'how') END,
           'photos', coalesce((
             SELECT jsonb_agg(jsonb_build_object('name', p.name, 'takenOn', p.taken_at::date::text, 'stage', p.stage,
                                                 'caption', p.caption) ORDER BY p.id)
             FROM photo p WHERE p.ticket_id = t.id AND p.removed_at IS NULL), '[]'::jsonb)) ORDER BY t.id)
  FROM ticket t JOIN (${UNIT_TABLES}) ON u.id = t.unit_id WHERE t.owner_id = ${ownerId}::int), '[]'::jsonb)`;

const callbacksOf = (ownerId: number) => Prisma.sql`coalesce((
  SELECT jsonb_agg(jsonb_build_object('id', c.id, 'unit', ${UNIT_NAME}, 'state', c.state, 'urgent', c.urgent,
           'openedOn', c.opened_at::date::text, 'closedOn', c.closed_at::date::text, 'attempts', coalesce((
             SELECT jsonb_agg(jsonb_build_object('on', a.at::date::text, 'how', a.how, 'outcome', a.outcome,
                                                 'note', a.note) ORDER BY a.id)
             FROM callback_attempt a WHERE a.callback_id = c.id), '[]'::jsonb), 'mails', coalesce((
             SELECT jsonb_agg(jsonb_build_object('on', coalesce(e.sent_at, e.queued_at)::date::text, 'to', e.recipient,
                                                 'subject', e.subject, 'text', e.text, 'state', e.state) ORDER BY e.id)
             FROM callback_mail e WHERE e.callback_id = c.id), '[]'::jsonb)) ORDER BY c.id)
  FROM callback c JOIN (${UNIT_TABLES}) ON u.id = c.unit_id WHERE c.owner_id = ${ownerId}::int), '[]'::jsonb)`;
