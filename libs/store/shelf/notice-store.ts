import type { NoticeStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { iso } from '../tickets/iso';
import { HOLDERS, PART } from './item-columns';

export function noticeStore(db: Db): NoticeStore {
  return {
    async add(sourceId, notices) {
      if (notices.length === 0) return;
      await db.$executeRaw`
        INSERT INTO part_notice (source_id, part_id, kind, since, still_good, sentences)
        SELECT ${sourceId}, n."partId", n.kind, n.since, n."stillGood", n.sentences
        FROM jsonb_to_recordset(${JSON.stringify(notices)}::jsonb)
          AS n("partId" int, kind text, since date, "stillGood" boolean, sentences text[])
        ON CONFLICT (source_id, part_id) DO UPDATE SET
          kind = EXCLUDED.kind, since = EXCLUDED.since, still_good = EXCLUDED.still_good, sentences = EXCLUDED.sentences`;
    },
    pulls: readPulls(db),
    async markPulled(noticeId, itemId, note, personId) {
      const count = await db.$executeRaw`
        INSERT INTO shelf_pull (notice_id, item_id, location_id, pieces, bin, note, done_by)
        SELECT ${noticeId}, i.id, i.location_id, i.on_hand, i.bin, ${note}, ${personId} FROM shelf_item i WHERE i.id = ${itemId}
        ON CONFLICT (notice_id, item_id) DO NOTHING`;
      return count === 1;
    },
    share: (partIds) => db.$queryRaw`
      SELECT i.part_id AS "partId", ${PART} AS part, l.name AS location, i.bin, i.on_hand AS "onHand", ${HOLDERS} AS holders
      FROM shelf_item i JOIN part p ON p.id = i.part_id JOIN location l ON l.id = i.location_id
      WHERE i.part_id = ANY(${[...partIds]}::int[]) AND i.on_hand > 0 ORDER BY p.number, l.id`,
  };
}

const readPulls =
  (db: Db): NoticeStore['pulls'] =>
  ({ locationId, sourceId, itemId, noticeId }) => {
    const about = [
      locationId === null ? null : Prisma.sql`i.location_id = ${locationId}`,
      sourceId === undefined ? null : Prisma.sql`n.source_id = ${sourceId}`,
      itemId === undefined ? null : Prisma.sql`i.id = ${itemId}`,
      noticeId === undefined ? null : Prisma.sql`n.id = ${noticeId}`,
    ].filter((one) => one !== null);
    return db.$queryRaw`
      SELECT n.id AS "noticeId", jsonb_build_object('id', s.id, 'number', s.number, 'title', s.title) AS bulletin, n.kind,
             n.since::text AS since, n.still_good AS "stillGood", n.sentences,
             jsonb_build_object('id', i.id, 'part', ${PART}, 'location', l.name, 'bin', i.bin, 'onHand', i.on_hand,
                                'reserved', i.reserved) AS item,
             ${HOLDERS} AS holders,
             CASE WHEN d.id IS NOT NULL THEN jsonb_build_object('at', ${iso('d.done_at')}, 'by', w.name, 'pieces', d.pieces,
                                                                'note', d.note) END AS done
      FROM part_notice n
      JOIN source s ON s.id = n.source_id AND s.state = 'published'
      JOIN part p ON p.id = n.part_id
      JOIN shelf_item i ON i.part_id = n.part_id
      JOIN location l ON l.id = i.location_id
      LEFT JOIN shelf_pull d ON d.notice_id = n.id AND d.item_id = i.id
      LEFT JOIN person w ON w.id = d.done_by
      WHERE ${Prisma.join([Prisma.sql`(i.on_hand > 0 OR d.id IS NOT NULL)`, ...about], ' AND ')}
      ORDER BY d.id IS NOT NULL, s.published_at DESC, i.bin, p.number LIMIT 500`;
  };
