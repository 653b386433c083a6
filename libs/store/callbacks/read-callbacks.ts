import type { CallbackPageRecord, CallbackQuery, CallbackRecord } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';

const IN_STATE: Record<CallbackQuery['state'], Prisma.Sql> = {
  open: Prisma.sql`c.state IN ('open', 'booked')`,
  booked: Prisma.sql`c.state = 'booked'`,
  settled: Prisma.sql`c.state = 'settled'`,
  withdrawn: Prisma.sql`c.state = 'withdrawn'`,
  closed: Prisma.sql`c.state IN ('settled', 'withdrawn')`,
  all: Prisma.sql`TRUE`,
};
/** An instant as ISO 8601 in UTC. */
const iso = (column: string) => Prisma.raw(`to_char(${column} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`);

/** Urgent first, then oldest. The cursor is `urgent.id` of the last one shown. */
export async function readCallbackPage(db: Db, query: CallbackQuery): Promise<CallbackPageRecord> {
  const inState = IN_STATE[query.state];
  const [urgent, id] = (query.after ?? '').split('.').map(Number);
  const after =
    query.after === null
      ? Prisma.sql`TRUE`
      : Prisma.sql`(NOT c.urgent, c.id) > (${urgent === 0}, ${Number.isInteger(id) ? id : 0}::int)`;
  const onlyUrgent = query.urgentOnly ? Prisma.sql`c.urgent` : Prisma.sql`TRUE`;
  const here = query.locationId === null ? Prisma.sql`TRUE` : Prisma.sql`o.location_id = ${query.locationId}::int`;
  const items = await readCallbacks(db, Prisma.sql`${here} AND ${inState} AND ${onlyUrgent} AND ${after}`, query.limit);
  const counts = await db.$queryRaw<{ total: number; urgent: number }[]>`
    SELECT count(*)::int AS total, count(*) FILTER (WHERE c.urgent)::int AS urgent
    FROM callback c JOIN owner o ON o.id = c.owner_id WHERE ${here} AND ${inState}`;
  const last = items.length === query.limit ? items[items.length - 1] : undefined;
  return { ...counts[0]!, items, next: last ? `${last.urgent ? 1 : 0}.${last.id}` : null };
}

export function readCallbacks(db: Db, where: Prisma.Sql, limit: number): Promise<CallbackRecord[]> {
  return db.$queryRaw<CallbackRecord[]>`
    SELECT c.id, c.state, c.urgent, ${iso('c.opened_at')} AS "openedAt", ${iso('c.closed_at')} AS "closedAt",
           c.closed_why AS "closedWhy", c.ticket_id AS "ticketId", c.version,
           jsonb_build_object('id', u.id, 'name', concat_ws(' ', l.name, m.number), 'serial', u.serial) AS unit,
           jsonb_build_object('id', o.id, 'name', o.name, 'phone', o.phone, 'email', o.email, 'consent', o.consent) AS owner,
           (SELECT jsonb_build_object('id', t.id, 'number', t.number, 'handedOverOn',
                   CASE WHEN t.handed_over THEN (t.closed_at AT TIME ZONE 'UTC')::date::text END)
            FROM ticket t WHERE t.unit_id = u.id ORDER BY t.id DESC LIMIT 1) AS "lastTicket",
           ${REASONS} AS reasons, ${ATTEMPTS} AS attempts
    FROM callback c
    JOIN unit u ON u.id = c.unit_id
    JOIN owner o ON o.id = c.owner_id
    LEFT JOIN product_line l ON l.id = u.line_id
    LEFT JOIN model m ON m.id = u.model_id
    WHERE ${where} ORDER BY NOT c.urgent, c.id LIMIT ${limit}::int`;
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
