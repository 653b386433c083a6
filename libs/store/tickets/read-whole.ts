import { CURRENCY, KEEP_SHELF, MONEY, type TicketPageRows, type WholeTicketRows } from '../../usecases';
import { MARK, markFrom, type MarkColumns } from '../catalogue/read-mark';
import type { Db } from '../db';
import { revisionsOf } from '../estimates/estimate-store';
import { flagsOf } from '../flags/flag-store';
import { Prisma } from '../generated/client';
import { rowOf, rowsOf, type Id } from '../nested';
import { photosOf } from '../photos/photo-store';
import { waitsOf } from '../shelf/wait-store';
import { evidenceOf, notesOf, touchedOf } from '../units/questions';
import { unitFrom, unitOf, type UnitColumns } from '../units/read-unit';
import { eventsOf, picksOf, sparesOf } from './picks-and-events';
import { recordsBefore, recordsOf } from './place-records';
import { ticketRowOf } from './ticket-row';

/** The ticket in the question around, by a name that no question within gives to a table of its own, and its unit. */
const ID = Prisma.sql`asked.id`;
const UNIT_ID = Prisma.sql`asked.unit_id`;

const SETTINGS = [CURRENCY, MONEY, KEEP_SHELF];

const WHOLE = Prisma.sql`
  ${rowOf(ticketRowOf(ID))} AS ticket, ${rowOf(unitOf(UNIT_ID))} AS unit, ${rowsOf(evidenceOf(UNIT_ID))} AS evidence,
  ${rowsOf(recordsOf(ID))} AS records, ${rowsOf(picksOf(ID))} AS picks, ${rowsOf(flagsOf(ID))} AS flags,
  (SELECT coalesce(json_object_agg(key, value), '{}') FROM setting WHERE key = ANY(${SETTINGS}::text[])) AS settings`;

type Columns<T extends WholeTicketRows> = Omit<T, 'unit' | 'mark'> & { readonly unit: UnitColumns };

/** A ticket and what its gates rest on. */
export async function readWhole(db: Db, id: number): Promise<WholeTicketRows | null> {
  const rows = await db.$queryRaw<Columns<WholeTicketRows>[]>`SELECT ${WHOLE} FROM ticket asked WHERE asked.id = ${id}`;
  return rows[0] ? { ...rows[0], unit: unitFrom(rows[0].unit) } : null;
}

/** The same with what its page shows beside it. */
export async function readPage(db: Db, id: number, most: { touched: number }): Promise<TicketPageRows | null> {
  const rows = await db.$queryRaw<(Columns<TicketPageRows> & { readonly mark: MarkColumns })[]>`
    SELECT ${WHOLE}, ${rowOf(MARK)} AS mark,
      ${rowsOf(recordsBefore(UNIT_ID, ID))} AS before, ${rowsOf(eventsOf(ID))} AS events,
      ${rowsOf(notesOf(UNIT_ID))} AS notes, ${rowsOf(earlierOf(UNIT_ID, ID))} AS earlier,
      ${rowsOf(revisionsOf(ID))} AS revisions, ${rowsOf(photosOf(ID))} AS photos, ${rowsOf(waitsOf(ID))} AS waits,
      ${rowsOf(sparesOf(UNIT_ID))} AS spares, ${rowsOf(touchedOf(UNIT_ID, most.touched))} AS touched
    FROM ticket asked WHERE asked.id = ${id}`;
  return rows[0] ? { ...rows[0], unit: unitFrom(rows[0].unit), mark: markFrom(rows[0].mark) } : null;
}

/** The other tickets of the unit, the newest first. */
export const earlierOf = (unitId: Id, ticketId: Id): Prisma.Sql => Prisma.sql`
  SELECT id, number, closed_at::date::text AS "closedOn", complaint
  FROM ticket WHERE unit_id = ${unitId} AND id <> ${ticketId} ORDER BY opened_at DESC, id DESC`;
