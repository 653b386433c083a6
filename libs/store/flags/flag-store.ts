import type { FlagRow, FlagStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from '../tickets/iso';
import { UNIT_NAME } from '../units/unit-name';

const FLAG = Prisma.sql`
  SELECT f.id, f.version, f.unit_id AS "unitId", f.position_id AS "positionId", f.place, f.verdict, f.severity, f.reason,
         f.state, ${iso('f.opened_at')} AS "openedAt", dp.name AS "decidedBy", ${iso('f.decided_at')} AS "decidedAt",
         f.decision_why AS "decisionWhy", f.accepted_until::text AS "acceptedUntil",
         json_build_object('id', t.id, 'number', t.number, 'stage', t.stage, 'bench', b.code) AS ticket,
         ${UNIT_NAME} AS unit, o.name AS owner,
         p.code AS position, p.name AS "positionName",
         place_word(p.place_names, f.place) AS "placeName",
         CASE WHEN a.id IS NULL THEN NULL
              ELSE json_build_object('id', a.id, 'key', a.key, 'number', a.number, 'name', a.name) END AS part,
         CASE WHEN r.id IS NULL THEN NULL
              ELSE json_build_object('key', r.key, 'number', r.number, 'name', r.name) END AS required
  FROM flag f
  JOIN ticket t ON t.id = f.ticket_id JOIN unit u ON u.id = f.unit_id JOIN owner o ON o.id = t.owner_id
  JOIN position p ON p.id = f.position_id
  LEFT JOIN bench b ON b.id = t.bench_id LEFT JOIN product_line l ON l.id = u.line_id
  LEFT JOIN maker k ON k.id = l.maker_id LEFT JOIN model m ON m.id = u.model_id
  LEFT JOIN part a ON a.id = f.part_id LEFT JOIN part r ON r.key = f.reason->>'required'
  LEFT JOIN person dp ON dp.id = f.decided_by`;

/** The flags of a ticket, worst first. */
export const flagsOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
  ${FLAG} WHERE f.ticket_id = ${ticketId} ORDER BY f.severity DESC, f.id`;

export function flagStore(db: Db): FlagStore {
  return {
    byId: async (id) => (await db.$queryRaw<FlagRow[]>`${FLAG} WHERE f.id = ${id}`)[0] ?? null,
    open: (locationId) => db.$queryRaw<FlagRow[]>`
      ${FLAG} WHERE f.state IN ('open', 'sent-back') AND t.closed_at IS NULL AND t.location_id = ${locationId}
      ORDER BY f.severity DESC, f.opened_at, f.id LIMIT 500`,
    decided: (locationId) => db.$queryRaw<FlagRow[]>`
      ${FLAG} WHERE f.state IN ('accepted', 'callback') AND t.location_id = ${locationId}
      ORDER BY f.decided_at DESC, f.id DESC LIMIT 500`,
    async decide(id, version, decision) {
      const count = await db.$executeRaw`
        UPDATE flag SET state = ${decision.state}, decision_why = ${decision.why},
               accepted_until = ${decision.until}::date, decided_by = ${decision.personId}, decided_at = now(),
               decided_revision = ${decision.revision}, version = version + 1
        WHERE id = ${id} AND version = ${version}`;
      return count === 1;
    },
    async acceptPicked(ticketId, pickId, { why, personId, revision }) {
      await db.$executeRaw`
        UPDATE flag SET state = 'accepted', decision_why = ${why}, decided_by = ${personId}, decided_at = now(),
               decided_revision = ${revision}, version = version + 1
        WHERE ticket_id = ${ticketId} AND place = ${-pickId} AND state = 'open'`;
    },
    putMismatches: putMismatches(db),
  };
}

const putMismatches =
  (db: Db): FlagStore['putMismatches'] =>
  async (ticketId, unitId, flags) => {
    const wanted = JSON.stringify(flags);
    await db.$executeRaw`
      UPDATE flag f SET state = 'cleared', version = version + 1
      WHERE f.ticket_id = ${ticketId} AND f.state = 'open' AND f.reason->>'kind' = 'mismatch'
        AND NOT EXISTS (
          SELECT FROM jsonb_to_recordset(${wanted}::jsonb) AS n("positionId" int, place int, "partId" int)
          WHERE n."positionId" = f.position_id AND n.place = f.place AND n."partId" IS NOT DISTINCT FROM f.part_id)`;
    await db.$executeRaw`
      INSERT INTO flag (ticket_id, unit_id, position_id, place, part_id, verdict, severity, reason)
      SELECT ${ticketId}, ${unitId}, n."positionId", n.place, n."partId", n.verdict, n.severity, n.reason
      FROM jsonb_to_recordset(${wanted}::jsonb)
        AS n("positionId" int, place int, "partId" int, verdict text, severity int, reason jsonb)
      WHERE NOT EXISTS (
        SELECT FROM flag f WHERE f.ticket_id = ${ticketId} AND f.position_id = n."positionId" AND f.place = n.place
          AND f.state = 'accepted' AND f.part_id IS NOT DISTINCT FROM n."partId" AND f.reason->>'kind' = 'mismatch')
      ON CONFLICT (ticket_id, position_id, place) WHERE state = 'open' DO NOTHING`;
  };
