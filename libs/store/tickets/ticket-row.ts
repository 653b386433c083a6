import type { LabourLine } from '../../contracts';
import type { TicketPatch, TicketRow, TicketStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from './iso';

/** The ticket's own columns. */
export async function readTicketRow(db: Db, id: number): Promise<TicketRow | null> {
  const rows = await db.$queryRaw<TicketRow[]>(ticketRowOf(id));
  return rows[0] ?? null;
}

export const ticketRowOf = (id: Id): Prisma.Sql => Prisma.sql`
    SELECT t.id, t.number, t.version, t.unit_id AS "unitId", t.owner_id AS "ownerId", t.location_id AS "locationId",
           t.stage, t.complaint, t.promised_on::text AS "promisedOn", t.hold_reason AS "holdReason",
           t.cancel_reason AS "cancelReason", ${iso('t.opened_at')} AS "openedAt", ${iso('t.closed_at')} AS "closedAt",
           t.handed_over AS "handedOver", t.labour_minutes AS "labourMinutes", t.labour_minor AS "labourMinor",
           t.labour_lines AS "labourLines", t.authorisation, t.safety_checks AS "safetyChecks",
           CASE WHEN b.id IS NULL THEN NULL ELSE json_build_object('id', b.id, 'code', b.code, 'name', b.name,
                'location', l.name) END AS bench
    FROM ticket t
    LEFT JOIN bench b ON b.id = t.bench_id LEFT JOIN location l ON l.id = b.location_id
    WHERE t.id = ${id}`;

/** Held while a number is given out, so that numbers follow each other. Any fixed number. */
const NUMBER_LOCK = 4_780_020;

/**
 * Numbers run within a year: `26-0671` follows `26-0670`, whichever of the year was written last, since tickets of
 * another book can be brought in under numbers of their own.
 */
export const insertTicket =
  (db: Db): TicketStore['insert'] =>
  async (ticket) => {
    await db.$queryRaw`SELECT 1 AS held FROM pg_advisory_xact_lock(${NUMBER_LOCK}::bigint)`;
    const prefix = `${new Date(ticket.at).toISOString().slice(2, 4)}-`;
    const rows = await db.$queryRaw<{ id: number }[]>`
      INSERT INTO ticket (number, location_id, unit_id, owner_id, complaint, promised_on, opened_at)
      VALUES (next_ticket_number(${prefix}), ${ticket.locationId}, ${ticket.unitId}, ${ticket.ownerId},
              ${ticket.complaint}, ${ticket.promisedOn}::date, ${new Date(ticket.at)})
      ON CONFLICT (unit_id) WHERE closed_at IS NULL DO NOTHING
      RETURNING id`;
    return rows[0]?.id ?? null;
  };

/** How each column of a patch is written. */
const COLUMNS: { [Key in keyof TicketPatch]-?: (value: never) => Prisma.Sql } = {
  stage: (value: string) => Prisma.sql`stage = ${value}`,
  complaint: (value: string) => Prisma.sql`complaint = ${value}`,
  promisedOn: (value: string | null) => Prisma.sql`promised_on = ${value}::date`,
  holdReason: (value: string | null) => Prisma.sql`hold_reason = ${value}::text`,
  cancelReason: (value: string | null) => Prisma.sql`cancel_reason = ${value}::text`,
  closedAt: (value: number | null) => Prisma.sql`closed_at = ${value === null ? null : new Date(value)}::timestamptz`,
  handedOver: (value: boolean) => Prisma.sql`handed_over = ${value}`,
  labourLines: (value: readonly LabourLine[]) => Prisma.sql`labour_lines = ${JSON.stringify(value)}::jsonb,
    labour_minutes = ${value.reduce((sum, { minutes }) => sum + minutes, 0)},
    labour_minor = ${value.reduce((sum, { minor }) => sum + minor, 0)}`,
  authorisation: (value: object) => Prisma.sql`authorisation = ${JSON.stringify(value)}::jsonb`,
  safetyChecks: (value: readonly string[]) => Prisma.sql`safety_checks = ${[...value]}::text[]`,
};

/** Compares and writes in one statement, so that two people cannot both have the last word. */
export const changeTicket =
  (db: Db): TicketStore['change'] =>
  async (id, version, patch) => {
    const sets = (Object.keys(patch) as (keyof TicketPatch)[])
      .filter((key) => patch[key] !== undefined)
      .map((key) => COLUMNS[key](patch[key] as never));
    const count = await db.$executeRaw`
      UPDATE ticket SET ${Prisma.join([Prisma.sql`version = version + 1`, ...sets])}
      WHERE id = ${id} AND version = ${version}`;
    return count === 1;
  };
