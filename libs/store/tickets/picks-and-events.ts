import type { TicketStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from './iso';

export const picksOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
    SELECT k.id, k.position_id AS "positionId", k.part_id AS "partId", k.quantity, k.purpose, k.state,
           k.price_minor AS "priceMinor", k.came_from AS "cameFrom", k.spare_for AS "spareFor", k.exception_reason AS "exceptionReason", p.name AS "exceptionBy"
    FROM pick k LEFT JOIN person p ON p.id = k.exception_by
    WHERE k.ticket_id = ${ticketId} ORDER BY k.id`;

export const insertPick =
  (db: Db): TicketStore['insertPick'] =>
  async (ticketId, pick, personId) => {
    const exceptionBy = pick.exceptionReason === null ? null : personId;
    const rows = await db.$queryRaw<{ id: number }[]>`
      INSERT INTO pick (ticket_id, position_id, part_id, quantity, purpose, price_minor, exception_reason,
                        exception_by, picked_by, came_from, spare_for)
      VALUES (${ticketId}, ${pick.positionId}::int, ${pick.partId}, ${pick.quantity}, ${pick.purpose},
              ${pick.priceMinor}, ${pick.exceptionReason}::text, ${exceptionBy}::int, ${personId}, ${pick.cameFrom},
              ${[...pick.spareFor]}::int[])
      RETURNING id`;
    return rows[0]!.id;
  };

export const setPickStates =
  (db: Db): TicketStore['setPickStates'] =>
  async (ticketId, states) => {
    if (states.length === 0) return;
    await db.$executeRaw`
      UPDATE pick SET state = n.state
      FROM unnest(${states.map(({ id }) => id)}::int[], ${states.map(({ state }) => state)}::text[]) AS n(id, state)
      WHERE pick.id = n.id AND pick.ticket_id = ${ticketId}`;
  };

/** A spare that belongs to several positions is as bad as it is at the worst of them. */
export const sparesOf = (unitId: Id): Prisma.Sql => Prisma.sql`
    SELECT k.id AS "pickId", t.id AS "ticketId", t.number AS ticket, k.quantity, t.closed_at::date::text AS "givenOn",
           jsonb_build_object('key', p.key, 'number', p.number, 'name', p.name) AS part,
           (SELECT (array['right', 'allowed', 'undecided', 'disputed', 'outdated', 'wrong'])[max(array_position(
                     array['right', 'allowed', 'undecided', 'disputed', 'outdated', 'wrong'], i.verdict))]
            FROM install i WHERE i.unit_id = t.unit_id AND i.place = -k.id) AS verdict
    FROM ticket t JOIN pick k ON k.ticket_id = t.id JOIN part p ON p.id = k.part_id
    WHERE t.unit_id = ${unitId} AND k.purpose = 'spare' AND k.state = 'given' ORDER BY k.id`;

export const eventsOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
    SELECT e.id, ${iso('e.at')} AS at, e.person_id AS "personId", p.name AS "personName", e.kind, e.data
    FROM ticket_event e LEFT JOIN person p ON p.id = e.person_id
    WHERE e.ticket_id = ${ticketId} ORDER BY e.id`;

export const addEvents =
  (db: Db): TicketStore['addEvents'] =>
  async (ticketId, events) => {
    if (events.length === 0) return;
    await db.$executeRaw`
      INSERT INTO ticket_event (ticket_id, person_id, kind, data)
      SELECT ${ticketId}, n."personId", n.kind, n.data
      FROM jsonb_to_recordset(${JSON.stringify(events)}::jsonb) AS n(kind text, data jsonb, "personId" int)`;
  };
