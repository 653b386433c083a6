import type { PhotoView } from '../../contracts';
import type { PhotoStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { iso } from '../tickets/iso';

/** The photos of a ticket that were not taken away, in the order in which they came. */
export const photosOf = (ticketId: Id): Prisma.Sql => Prisma.sql`
  SELECT f.id, f.name, f.stage, p.code AS position, f.place, f.caption, f.width, f.height, f.sha256,
         f.on_sheet AS "onSheet", w.name AS "by", f.version, ${iso('f.taken_at')} AS at
  FROM photo f LEFT JOIN position p ON p.id = f.position_id LEFT JOIN person w ON w.id = f.taken_by
  WHERE f.ticket_id = ${ticketId} AND f.removed_at IS NULL ORDER BY f.id`;

/** Photos in PostgreSQL: scaled they are small, and one backup and one transaction hold row and pictures together. */
export function photoStore(db: Db): PhotoStore {
  return {
    ofTicket: (ticketId) => db.$queryRaw<PhotoView[]>(photosOf(ticketId)),
    insert: insertPhoto(db),
    async change(ticketId, id, version, { caption, onSheet }) {
      const count = await db.$executeRaw`
        UPDATE photo SET caption = coalesce(${caption ?? null}::text, caption),
                         on_sheet = coalesce(${onSheet ?? null}::boolean, on_sheet), version = version + 1
        WHERE id = ${id} AND ticket_id = ${ticketId} AND version = ${version}::int AND removed_at IS NULL`;
      return count === 1;
    },
    async remove(ticketId, id, version, why, personId) {
      const count = await db.$executeRaw`
        UPDATE photo SET removed_at = now(), removed_by = ${personId}::int, removed_why = ${why}, version = version + 1
        WHERE id = ${id} AND ticket_id = ${ticketId} AND version = ${version}::int AND removed_at IS NULL`;
      if (count === 1) await db.$executeRaw`DELETE FROM photo_file WHERE photo_id = ${id}`;
      return count === 1;
    },
    async file(name, size) {
      const rows = await db.$queryRaw<{ data: Uint8Array; locationId: number }[]>`
        SELECT d.data, t.location_id AS "locationId"
        FROM photo f JOIN ticket t ON t.id = f.ticket_id JOIN photo_file d ON d.photo_id = f.id
        WHERE f.name = ${name} AND d.size = ${size} AND f.removed_at IS NULL`;
      return rows[0] ?? null;
    },
  };
}

const insertPhoto =
  (db: Db): PhotoStore['insert'] =>
  async (ticketId, photo, personId) => {
    const { name, stage, positionId, place, caption, width, height, sha256, sentSha256 } = photo;
    const rows = await db.$queryRaw<{ id: number }[]>`
      INSERT INTO photo (name, ticket_id, stage, position_id, place, caption, width, height, sha256, sent_sha256, taken_by)
      VALUES (${name}, ${ticketId}, ${stage}, ${positionId}::int, ${place}::int, ${caption}, ${width}, ${height},
              ${sha256}, ${sentSha256}, ${personId})
      RETURNING id`;
    const id = rows[0]!.id;
    const [full, thumb] = [Buffer.from(photo.full), Buffer.from(photo.thumb)];
    await db.$executeRaw`
      INSERT INTO photo_file (photo_id, size, data) VALUES (${id}, 'full', ${full}), (${id}, 'thumb', ${thumb})`;
    return id;
  };
