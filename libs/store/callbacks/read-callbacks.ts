import { formatDay, parseDay } from '../../day';
import type { CallbackPageRecord, CallbackQuery, CallbackRecord } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';

const LISTS: Record<CallbackQuery['state'], (today: string) => Prisma.Sql> = {
  due: (today) => Prisma.sql`c.state = 'open' AND (c.next_on IS NULL OR c.next_on <= ${today}::date)`,
  later: (today) => Prisma.sql`c.state = 'open' AND c.next_on > ${today}::date`,
  open: () => Prisma.sql`c.state IN ('open', 'booked')`,
  booked: () => Prisma.sql`c.state = 'booked'`,
  settled: () => Prisma.sql`c.state = 'settled'`,
  withdrawn: () => Prisma.sql`c.state = 'withdrawn'`,
  closed: () => Prisma.sql`c.state IN ('settled', 'withdrawn')`,
  all: () => Prisma.sql`TRUE`,
};
/** No day of a next try is the earliest of all. */
const ORDER = Prisma.sql`NOT c.urgent, COALESCE(c.next_on, '0001-01-01'::date), c.id`;

/** The owner is of the location; null is any. */
export const atLocation = (locationId: number | null): Prisma.Sql =>
  locationId === null ? Prisma.sql`TRUE` : Prisma.sql`o.location_id = ${locationId}::int`;

/** An instant as ISO 8601 in UTC. */
const iso = (column: string) => Prisma.raw(`to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`);

/** Stop use first, then by the day of the next try, then oldest. The cursor is `urgent.day.id` of the last one shown. */
export async function readCallbackPage(db: Db, query: CallbackQuery): Promise<CallbackPageRecord> {
  const listed = LISTS[query.state](formatDay(query.today));
  const onlyUrgent = query.urgentOnly ? Prisma.sql`c.urgent` : Prisma.sql`TRUE`;
  const here = atLocation(query.locationId);
  const where = Prisma.sql`${here} AND ${listed} AND ${onlyUrgent} AND ${behind(query.after)}`;
  const items = await readCallbacks(db, where, query.limit);
  const counts = await db.$queryRaw<{ total: number; urgent: number }[]>`
    SELECT count(*)::int AS total, count(*) FILTER (WHERE c.urgent)::int AS urgent
    FROM callback c JOIN owner o ON o.id = c.owner_id WHERE ${here} AND ${listed}`;
  const last = items.length === query.limit ? items[items.length - 1] : undefined;
  const next = last ? `${last.urgent ? 1 : 0}.${last.nextOn ?? '0001-01-01'}.${last.id}` : null;
  return { ...counts[0]!, items, next };
}

/** What comes after the cursor; everything where there is none, or none that could be one. */
function behind(after: string | null): Prisma.Sql {
  const [urgent, next, id] = (after ?? '').split('.');
  if (id === undefined || parseDay(next!) === null) return Prisma.sql`TRUE`;
  return Prisma.sql`(${ORDER}) > (${urgent === '0'}, ${next}::date, ${Number(id)}::int)`;
}

export function readCallbacks(db: Db, where: Prisma.Sql, limit: number | null): Promise<CallbackRecord[]> {
  return db.$queryRaw<CallbackRecord[]>`
    SELECT c.id, c.state, c.urgent, ${iso('c.opened_at')} AS "openedAt", ${iso('c.closed_at')} AS "closedAt",
           c.closed_why AS "closedWhy", c.ticket_id AS "ticketId", c.version,
           jsonb_build_object('id', u.id, 'name', concat_ws(' ', l.name, m.number), 'serial', u.serial) AS unit,
           jsonb_build_object('id', o.id, 'name', o.name, 'phone', o.phone, 'email', o.email, 'address', o.address,
                              'consent', o.consent, 'declined', o.declined) AS owner, c.next_on::text AS "nextOn",
           (SELECT jsonb_build_object('id', t.id, 'number', t.number, 'handedOverOn',
                   CASE WHEN t.handed_over THEN (t.closed_at AT TIME ZONE 'UTC')::date::text END)
            FROM ticket t WHERE t.unit_id = u.id ORDER BY t.id DESC LIMIT 1) AS "lastTicket",
           ${REASONS} AS reasons, ${ATTEMPTS} AS attempts, ${MAILS} AS mails
    FROM callback c
    JOIN unit u ON u.id = c.unit_id
    JOIN owner o ON o.id = c.owner_id
    LEFT JOIN product_line l ON l.id = u.line_id
    LEFT JOIN model m ON m.id = u.model_id
    WHERE ${where} ORDER BY ${ORDER} LIMIT ${limit}::int`;
}

const PART = (alias: string) =>
  Prisma.raw(
    `CASE WHEN ${alias}.id IS NOT NULL THEN jsonb_build_object('key', ${alias}.key, 'number', ${alias}.number, 'name', ${alias}.name) END`,
  );

const REASONS = Prisma.sql`COALESCE((
  SELECT jsonb_agg(jsonb_build_object(
    'source', s.number, 'position', p.code, 'placeName', place_word(p.place_names, r.place),
    'part', ${PART('h')}, 'required', ${PART('q')}, 'verdict', r.verdict, 'action', r.action,
    'sentence', COALESCE(r.detail->>'sentence', ''), 'spare', r.place < 0,
    'withdrawn', CASE WHEN r.withdrawn_at IS NOT NULL
      THEN jsonb_build_object('at', ${iso('r.withdrawn_at')}, 'why', COALESCE(r.withdrawn_why, '')) END) ORDER BY r.place < 0, r.id)
  FROM callback_reason r
  JOIN source s ON s.id = r.source_id
  JOIN position p ON p.id = r.position_id
  LEFT JOIN part h ON h.id = r.part_id
  LEFT JOIN part q ON q.key = r.detail->>'required'
  WHERE r.callback_id = c.id), '[]'::jsonb)`;

const ATTEMPTS = Prisma.sql`COALESCE((
  SELECT jsonb_agg(jsonb_build_object('at', ${iso('a.at')}, 'by', w.name, 'how', a.how, 'outcome', a.outcome, 'note', a.note)
         ORDER BY a.id)
  FROM callback_attempt a LEFT JOIN person w ON w.id = a.person_id WHERE a.callback_id = c.id), '[]'::jsonb)`;

const MAILS = Prisma.sql`COALESCE((
  SELECT jsonb_agg(jsonb_build_object('at', ${iso('COALESCE(e.sent_at, e.queued_at)')}, 'state', e.state, 'problem', e.problem)
         ORDER BY e.id)
  FROM callback_mail e WHERE e.callback_id = c.id), '[]'::jsonb)`;
