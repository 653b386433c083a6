import type { SettledNoteView, UnitNoteView } from '../../contracts';
import type { EvidenceRow, TouchedRow, UnitStore } from '../../usecases';
import type { Db } from '../db';
import { iso } from '../tickets/iso';
import { envelopeColumns, writeDaySet } from './day-set-text';
import { evidenceOf, NOTE, notesOf, touchedOf } from './questions';
import { readUnit } from './read-unit';
import { recomputeActions } from './recompute-many';
import { refreshInstalls } from './refresh-installs';

/** Upper case, letters and digits only: the form serials are searched in. */
export function squeeze(text: string): string {
  return text.toUpperCase().replace(/[^A-Z0-9]/g, '');
}

const searchable = (serial: string | null): string | null => (serial === null ? null : squeeze(serial));

export function unitStore(db: Db, zone: string): UnitStore {
  return {
    byId: (id) => readUnit(db, id),
    refreshInstalls: (id) => refreshInstalls(db, id, zone),
    async lock(id) {
      await db.$queryRaw`SELECT id FROM unit WHERE id = ${id} FOR NO KEY UPDATE`;
    },
    async insert(unit) {
      const { from, to } = envelopeColumns(unit.built);
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO unit (owner_id, line_id, model_id, serial, serial_absent, serial_search, serial_scheme, serial_key,
                          options, plate, built, built_from, built_to)
        VALUES (${unit.ownerId}, ${unit.lineId}, ${unit.modelId}, ${unit.serial}, ${unit.serialAbsent},
                ${searchable(unit.serial)}, ${unit.serialScheme}, ${unit.serialKey},
                ${JSON.stringify(unit.options)}::jsonb, ${unit.plate},
                ${writeDaySet(unit.built)}::int4multirange, ${from}, ${to})
        RETURNING id`;
      return rows[0]!.id;
    },
    async claim(id, version) {
      const count = await db.$executeRaw`
        UPDATE unit SET version = version + 1 WHERE id = ${id} AND version = ${version}`;
      return count === 1;
    },
    async setIdentity(id, unit) {
      await db.$executeRaw`
        UPDATE unit SET line_id = ${unit.lineId}, model_id = ${unit.modelId}, serial = ${unit.serial},
               serial_absent = ${unit.serialAbsent}, serial_search = ${searchable(unit.serial)},
               options = ${JSON.stringify(unit.options)}::jsonb, plate = ${unit.plate}
        WHERE id = ${id}`;
    },
    async setBuilt(id, { built, serialScheme, serialKey }) {
      const { from, to } = envelopeColumns(built);
      await db.$executeRaw`
        UPDATE unit SET built = ${writeDaySet(built)}::int4multirange, built_from = ${from}, built_to = ${to},
               serial_scheme = ${serialScheme}, serial_key = ${serialKey}
        WHERE id = ${id}`;
      await db.$executeRaw`UPDATE install SET built_from = ${from}, built_to = ${to} WHERE unit_id = ${id}`;
    },
    ...evidenceActions(db),
    ...recomputeActions(db),
    ...noteActions(db),
    ...questions(db),
  };
}

function evidenceActions(db: Db): Pick<UnitStore, 'evidence' | 'insertEvidence' | 'setAside'> {
  return {
    evidence: (id) => db.$queryRaw<EvidenceRow[]>(evidenceOf(id)),
    async insertEvidence(unitId, kind, data, personId) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO evidence (unit_id, kind, data, recorded_by)
        VALUES (${unitId}, ${kind}, ${JSON.stringify(data)}::jsonb, ${personId}) RETURNING id`;
      return rows[0]!.id;
    },
    async setAside(evidenceId, why, personId) {
      await db.$executeRaw`
        UPDATE evidence SET set_aside_why = ${why}::text,
               set_aside_by = CASE WHEN ${why}::text IS NULL THEN NULL ELSE ${personId}::int END,
               set_aside_at = CASE WHEN ${why}::text IS NULL THEN NULL ELSE now() END
        WHERE id = ${evidenceId}`;
    },
  };
}

function questions(
  db: Db,
): Pick<UnitStore, 'setWarranty' | 'touched' | 'isAt' | 'setOwner' | 'hasRecords' | 'openTicket'> {
  return {
    async isAt(id, locationId) {
      const rows = await db.$queryRaw<unknown[]>`
        SELECT 1 FROM unit u JOIN owner o ON o.id = u.owner_id WHERE u.id = ${id} AND o.location_id = ${locationId}`;
      return rows.length > 0;
    },
    async setOwner(id, ownerId) {
      await db.$executeRaw`UPDATE unit SET owner_id = ${ownerId} WHERE id = ${id} AND owner_id <> ${ownerId}`;
    },
    async hasRecords(id) {
      const rows = await db.$queryRaw<unknown[]>`SELECT 1 FROM place_record WHERE unit_id = ${id} LIMIT 1`;
      return rows.length > 0;
    },
    async setWarranty(id, warranty) {
      await db.$executeRaw`
        UPDATE unit SET bought_on = ${warranty?.boughtOn ?? null}::date, warranty_months = ${warranty?.months ?? null}::int
        WHERE id = ${id}`;
    },
    touched: (id, most) => db.$queryRaw<TouchedRow[]>(touchedOf(id, most)),
    async openTicket(id) {
      const rows = await db.$queryRaw<{ id: number; number: string }[]>`
        SELECT id, number FROM ticket WHERE unit_id = ${id} AND closed_at IS NULL`;
      return rows[0] ?? null;
    },
  };
}

function noteActions(db: Db): Pick<UnitStore, 'notes' | 'settledNotes' | 'settleNote'> {
  return {
    notes: (id) => db.$queryRaw<UnitNoteView[]>(notesOf(id)),
    settledNotes: (id, most) => db.$queryRaw<SettledNoteView[]>`
      SELECT ${NOTE}, n.closed_why AS why, w.name AS "by", ${iso('n.closed_at')} AS at
      FROM unit_note n JOIN source s ON s.id = n.source_id JOIN position p ON p.id = n.position_id
      LEFT JOIN person w ON w.id = n.closed_by
      WHERE n.unit_id = ${id} AND n.closed_by IS NOT NULL ORDER BY n.closed_at DESC, n.id LIMIT ${most}::int`,
    async settleNote(id, noteId, why, personId) {
      const rows = await db.$queryRaw<{ sentence: string }[]>`
        UPDATE unit_note n
        SET closed_at = now(), closed_why = ${why}, closed_by = ${personId}::int,
            settled_part_id = (SELECT i.part_id FROM install i
                               WHERE i.unit_id = n.unit_id AND i.position_id = n.position_id AND i.place = n.place)
        FROM source s
        WHERE s.id = n.source_id AND n.id = ${noteId} AND n.unit_id = ${id} AND n.closed_at IS NULL
        RETURNING coalesce(n.detail->>'sentence', s.title) AS sentence`;
      return rows[0] ?? null;
    },
  };
}
