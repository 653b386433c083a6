import type { BulkOwner, BulkStore, BulkUnit, OwnerWithUnit } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { envelopeColumns, writeDaySet } from '../units/day-set-text';
import { squeeze } from '../units/unit-store';
import { takeIds } from '../take-ids';
import { withIds } from './bulk-owners';

type Actions = Pick<
  BulkStore,
  'unitsBySerials' | 'unitsByIds' | 'bareUnits' | 'insertUnits' | 'updateUnits' | 'addEvidence' | 'pageOfUnits'
>;

const UNIT = Prisma.sql`
  u.id, u.owner_id AS "ownerId", l.code AS line, m.number AS model, u.serial, u.serial_absent AS "serialAbsent",
  u.options, u.plate, o.location_id AS "locationId",
  EXISTS (SELECT 1 FROM place_record r WHERE r.unit_id = u.id) AS "hasRecords",
  coalesce((SELECT jsonb_agg(jsonb_build_object('kind', e.kind, 'data', e.data) ORDER BY e.id)
            FROM evidence e WHERE e.unit_id = u.id), '[]'::jsonb) AS evidence
  FROM unit u JOIN owner o ON o.id = u.owner_id
  LEFT JOIN product_line l ON l.id = u.line_id LEFT JOIN model m ON m.id = u.model_id`;

const sighted = (locationId: number | null) =>
  Prisma.sql`(${locationId}::int IS NULL OR o.location_id = ${locationId}::int)`;

export function unitActions(db: Db): Actions {
  return {
    unitsBySerials: (serials, locationId) => db.$queryRaw<BulkUnit[]>`
      SELECT ${UNIT} WHERE u.serial_search = ANY(${serials.map(squeeze)}::text[]) AND ${sighted(locationId)} ORDER BY u.id`,
    unitsByIds: (ids, locationId) => db.$queryRaw<BulkUnit[]>`
      SELECT ${UNIT} WHERE u.id = ANY(${[...ids]}::int[]) AND ${sighted(locationId)} ORDER BY u.id`,
    bareUnits: (ownerIds) => db.$queryRaw<BulkUnit[]>`
      SELECT ${UNIT} WHERE u.owner_id = ANY(${[...ownerIds]}::int[]) AND u.serial IS NULL ORDER BY u.id`,
    async insertUnits(rows) {
      if (rows.length === 0) return [];
      const ids = await takeIds(db, 'unit', rows.length);
      const full = rows.map(({ built, ...row }) => ({
        ...row,
        ...envelopeColumns(built),
        days: writeDaySet(built),
        search: row.serial === null ? null : squeeze(row.serial),
      }));
      await db.$executeRaw`
        INSERT INTO unit (id, owner_id, location_id, line_id, model_id, serial, serial_absent, serial_search,
                          serial_scheme, serial_key, options, plate, built, built_from, built_to)
        SELECT r.id, o.id, o.location_id, l.id, m.id, r.serial, r."serialAbsent", r.search, r."serialScheme",
               r."serialKey", r.options, r.plate, r.days, r."from", r."to"
        FROM jsonb_to_recordset(${withIds(full, ids)}::jsonb)
          AS r(id int, "ownerId" int, line text, model text, serial text, "serialAbsent" text, search text,
               "serialScheme" text, "serialKey" text, options jsonb, plate text, days int4multirange, "from" int, "to" int)
        JOIN owner o ON o.id = r."ownerId"
        LEFT JOIN product_line l ON l.code = r.line
        LEFT JOIN model m ON m.line_id = l.id AND m.number = r.model`;
      return ids;
    },
    async updateUnits(rows) {
      if (rows.length === 0) return;
      const full = rows.map((row) => ({ ...row, search: row.serial === null ? null : squeeze(row.serial) }));
      await db.$executeRaw`
        UPDATE unit u SET owner_id = r."ownerId", line_id = l.id, model_id = m.id, serial = r.serial,
               serial_absent = r."serialAbsent", serial_search = r.search, options = r.options, plate = r.plate,
               version = version + 1
        FROM jsonb_to_recordset(${JSON.stringify(full)}::jsonb)
          AS r(id int, "ownerId" int, line text, model text, serial text, "serialAbsent" text, search text,
               options jsonb, plate text)
        LEFT JOIN product_line l ON l.code = r.line
        LEFT JOIN model m ON m.line_id = l.id AND m.number = r.model
        WHERE u.id = r.id`;
    },
    async addEvidence(rows, personId) {
      if (rows.length === 0) return;
      await db.$executeRaw`
        INSERT INTO evidence (unit_id, kind, data, recorded_by)
        SELECT r."unitId", r.kind, r.data, ${personId}::int
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r("unitId" int, kind text, data jsonb)`;
    },
    pageOfUnits: (after, limit, locationId) => pageOfUnits(db, after, limit, locationId),
  };
}

/** Owners in order, each with its units in order; an owner without a unit stands once. */
async function pageOfUnits(
  db: Db,
  after: { owner: number; unit: number },
  limit: number,
  locationId: number | null,
): Promise<readonly OwnerWithUnit[]> {
  const places = await db.$queryRaw<(BulkOwner & { unitId: number | null })[]>`
    SELECT o.id, o.location_id AS "locationId", o.name, o.phone, o.email, o.address, o.consent, u.id AS "unitId"
    FROM owner o LEFT JOIN unit u ON u.owner_id = o.id
    WHERE ${sighted(locationId)} AND (o.id, coalesce(u.id, 0)) > (${after.owner}::int, ${after.unit}::int)
    ORDER BY o.id, coalesce(u.id, 0) LIMIT ${limit}::int`;
  const ids = places.flatMap(({ unitId }) => (unitId === null ? [] : [unitId]));
  const units = new Map((await unitActions(db).unitsByIds(ids, null)).map((unit) => [unit.id, unit]));
  return places.map(({ unitId, ...owner }) => ({ owner, unit: unitId === null ? null : (units.get(unitId) ?? null) }));
}
