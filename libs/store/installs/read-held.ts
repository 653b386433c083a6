import type { Verdict } from '../../fit-rules';
import type { HeldInstall, HeldUnit, InstallChoice, JudgementRecord, LoosePart } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { readDaySet } from '../units/day-set-text';
import { chosen } from './choice-sql';

interface Row {
  readonly unitId: number;
  readonly positionId: number;
  readonly position: string;
  readonly place: number;
  readonly ticketId: number;
  readonly partId: number | null;
  readonly parts: readonly string[];
  readonly fittedOn: number | null;
  readonly verdict: Verdict | null;
  readonly judgement: JudgementRecord | null;
  readonly judgedRevision: number | null;
  readonly closedOn: number | null;
  readonly ownerId: number;
  readonly line: string;
  readonly model: string | null;
  readonly options: Record<string, boolean>;
  readonly serialScheme: string | null;
  readonly serialKey: string | null;
  readonly built: string;
  readonly openTicketId: number | null;
  readonly loose: LoosePart | null;
}

/** Locks the units in order of id; a fact or a part that changes meanwhile waits, or is waited for. */
export async function lockUnits(db: Db, choice: InstallChoice, zone: string): Promise<readonly number[]> {
  const rows = await db.$queryRaw<{ id: number }[]>`
    ${unitsOf(choice, zone)} ORDER BY id FOR NO KEY UPDATE`;
  return rows.map(({ id }) => id);
}

function unitsOf(choice: InstallChoice, zone: string): Prisma.Sql {
  // By their ids: what is joined to a table of thousands of places is sought by reading every unit of the shop.
  const named = (ids: readonly number[]) => Prisma.sql`SELECT id FROM unit WHERE id = ANY(${ids}::int[])`;
  if ('unitIds' in choice) return named([...choice.unitIds]);
  if ('places' in choice) return named([...new Set(choice.places.map(({ unitId }) => unitId))]);
  const { tables, where } = chosen(choice, zone);
  return Prisma.sql`${tables} wanted AS (SELECT DISTINCT i.unit_id FROM install i WHERE ${where})
    SELECT id FROM unit WHERE id IN (SELECT unit_id FROM wanted)`;
}

/**
 * The installs with the facts of their units, in order of unit, position and place. Units and tickets are looked up one
 * by one, behind a fence: how many installs there are is guessed too high, and both tables would be read whole. A row
 * comes as one text: read column by column by the client, thousands of them cost more than judging them.
 */
export async function readHeld(db: Db, choice: InstallChoice, zone: string): Promise<readonly HeldInstall[]> {
  const { tables, where } = chosen(choice, zone);
  const rows = await db.$queryRaw<{ row: string }[]>`
    ${tables} held AS MATERIALIZED (SELECT i.* FROM install i WHERE ${where})
    SELECT row_to_json(h)::text AS row FROM (
    SELECT i.unit_id AS "unitId", i.position_id AS "positionId", p.code AS position, i.place, i.ticket_id AS "ticketId",
           i.part_id AS "partId", i.fitted_on AS "fittedOn", i.verdict, i.judgement, i.judged_revision AS "judgedRevision",
           CASE WHEN i.part_id IS NULL THEN ARRAY(SELECT key FROM part WHERE id = ANY(i.candidates) ORDER BY key)
                ELSE ARRAY[pt.key] END AS parts,
           (t.closed_at AT TIME ZONE ${zone}::text)::date - DATE '1970-01-01' AS "closedOn",
           u.owner_id AS "ownerId", l.code AS line, u.model, u.options, u.serial_scheme AS "serialScheme",
           u.serial_key AS "serialKey", u.built::text AS built, o.id AS "openTicketId",
           CASE WHEN k.id IS NOT NULL THEN jsonb_build_object('pickId', k.id, 'purpose', k.purpose, 'quantity', k.quantity,
                                                              'given', k.state = 'given') END AS loose
    FROM held i
    JOIN LATERAL (SELECT u.*, (SELECT m.number FROM model m WHERE m.id = u.model_id) AS model
                  FROM unit u WHERE u.id = i.unit_id OFFSET 0) u ON TRUE
    JOIN position p ON p.id = i.position_id
    JOIN product_line l ON l.id = i.line_id
    JOIN LATERAL (SELECT t.closed_at FROM ticket t WHERE t.id = i.ticket_id OFFSET 0) t ON TRUE
    LEFT JOIN part pt ON pt.id = i.part_id
    LEFT JOIN pick k ON i.place < 0 AND k.id = -i.place
    LEFT JOIN LATERAL (SELECT o.id FROM ticket o WHERE o.unit_id = u.id AND o.closed_at IS NULL OFFSET 0) o ON TRUE
    ORDER BY i.unit_id, i.position_id, i.place) h`;
  return withUnits(rows.map(({ row }) => JSON.parse(row) as Row));
}

/** Rows of one unit share its facts. */
function withUnits(rows: readonly Row[]): readonly HeldInstall[] {
  let unit: HeldUnit | null = null;
  return rows.map((row) => {
    if (unit === null || unit.id !== row.unitId) unit = unitOf(row);
    const { positionId, position, place, ticketId, partId, parts, fittedOn, verdict, judgement, closedOn } = row;
    const { judgedRevision, loose } = row;
    return {
      unit,
      positionId,
      position,
      place,
      ticketId,
      partId,
      parts,
      fittedOn,
      verdict,
      judgement,
      judgedRevision,
      closedOn,
      loose,
    };
  });
}

function unitOf(row: Row): HeldUnit {
  const serial = row.serialScheme === null ? null : { scheme: row.serialScheme, key: row.serialKey };
  const { line, options } = row;
  return {
    id: row.unitId,
    ownerId: row.ownerId,
    openTicketId: row.openTicketId,
    facts: { line, model: row.model, options, serial, built: readDaySet(row.built) },
  };
}
