import type { Owner } from '../../contracts';
import type { OwnerStore } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';

export function ownerStore(db: Db): OwnerStore {
  return {
    async insert({ locationId, name, phone, email, address, consent }) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO owner (location_id, name, phone, email, address, consent)
        VALUES (${locationId}, ${name}, ${phone}, ${email}, ${address}, ${consent}) RETURNING id`;
      return rows[0]!.id;
    },
    async byId(id) {
      const rows = await db.$queryRaw<Owner[]>`
        SELECT id, name, phone, email, address, consent, version FROM owner WHERE id = ${id}`;
      return rows[0] ?? null;
    },
    search(text, most) {
      const digits = text.replace(/\D/g, '');
      const phone = digits.length >= 3 ? `%${digits}%` : null;
      const like = `%${escapeLike(text)}%`;
      return db.$queryRaw<Owner[]>`
        SELECT id, name, phone, email, address, consent, version FROM owner
        WHERE name ILIKE ${like} OR address ILIKE ${like}
           OR regexp_replace(phone, '[^0-9]', '', 'g') LIKE ${phone}::text
        ORDER BY name, id LIMIT ${most}`;
    },
  };
}
