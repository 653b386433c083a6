import type { Owner, UnitRow as OwnedUnit } from '../../contracts';
import type { OwnerStore } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';
import { UNIT_NAME } from '../units/unit-name';

export function ownerStore(db: Db): OwnerStore {
  return {
    async insert({ locationId, name, phone, email, address, consent }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO owner (location_id, name, phone, email, address, consent)
        VALUES (${locationId}, ${name}, ${phone}, ${email}, ${address}, ${consent}) RETURNING id`;
      return rows[0]!.id;
    },
    async byId(id, locationId) {
      const rows = await db.$queryRaw<Owner[]>`
        SELECT id, name, phone, email, address, consent, version FROM owner
        WHERE id = ${id} AND location_id = ${locationId}::int`;
      return rows[0] ?? null;
    },
    async isErased(id) {
      const rows = await db.$queryRaw<object[]>`SELECT FROM owner WHERE id = ${id} AND erased_at IS NOT NULL`;
      return rows.length > 0;
    },
    async change(id, version, patch) {
      const count = await db.$executeRaw`
        UPDATE owner o SET name = coalesce(n.name, o.name), phone = coalesce(n.phone, o.phone),
               email = coalesce(n.email, o.email), address = coalesce(n.address, o.address),
               consent = coalesce(n.consent, o.consent), version = version + 1
        FROM jsonb_to_record(${JSON.stringify(patch)}::jsonb)
          AS n(name text, phone text, email text, address text, consent boolean)
        WHERE o.id = ${id} AND o.version = ${version} AND o.erased_at IS NULL`;
      return count === 1;
    },
    unitsOf: (id) => db.$queryRaw<OwnedUnit[]>`
      SELECT u.id, ${UNIT_NAME} AS name, u.serial,
             l.code AS "lineCode", t.number AS "openTicket"
      FROM unit u
      LEFT JOIN product_line l ON l.id = u.line_id LEFT JOIN maker k ON k.id = l.maker_id
      LEFT JOIN model m ON m.id = u.model_id LEFT JOIN ticket t ON t.unit_id = u.id AND t.closed_at IS NULL
      WHERE u.owner_id = ${id} ORDER BY u.id`,
    search(text, most, locationId) {
      const digits = text.replace(/\D/g, '');
      const phone = digits.length >= 3 ? `%${digits}%` : null;
      const like = `%${escapeLike(text)}%`;
      return db.$queryRaw<Owner[]>`
        SELECT id, name, phone, email, address, consent, version FROM owner
        WHERE location_id = ${locationId}::int AND erased_at IS NULL
          AND (name ILIKE ${like} OR address ILIKE ${like}
               OR regexp_replace(phone, '[^0-9]', '', 'g') LIKE ${phone}::text)
        ORDER BY name, id LIMIT ${most}`;
    },
  };
}
