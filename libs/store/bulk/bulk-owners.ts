import type { BulkOwner, BulkStore } from '../../usecases';
import type { Db } from '../db';
import { takeIds } from '../take-ids';

export function ownerActions(db: Db): Pick<BulkStore, 'owners' | 'insertOwners' | 'updateOwners'> {
  return {
    owners: (locationId) => db.$queryRaw<BulkOwner[]>`
      SELECT id, location_id AS "locationId", name, phone, email, address, consent FROM owner
      WHERE erased_at IS NULL AND (${locationId}::int IS NULL OR location_id = ${locationId}::int) ORDER BY id`,
    async insertOwners(rows) {
      if (rows.length === 0) return [];
      const ids = await takeIds(db, 'owner', rows.length);
      await db.$executeRaw`
        INSERT INTO owner (id, location_id, name, phone, email, address, consent)
        SELECT r.id, r."locationId", r.name, r.phone, r.email, r.address, r.consent
        FROM jsonb_to_recordset(${withIds(rows, ids)}::jsonb)
          AS r(id int, "locationId" int, name text, phone text, email text, address text, consent boolean)`;
      return ids;
    },
    async updateOwners(rows) {
      if (rows.length === 0) return;
      await db.$executeRaw`
        UPDATE owner o SET name = r.name, phone = r.phone, email = r.email, address = r.address, consent = r.consent,
               version = version + 1
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
          AS r(id int, name text, phone text, email text, address text, consent boolean)
        WHERE o.id = r.id AND o.erased_at IS NULL`;
    },
  };
}

export const withIds = (rows: readonly object[], ids: readonly number[]): string =>
  JSON.stringify(rows.map((row, at) => ({ ...row, id: ids[at] })));
