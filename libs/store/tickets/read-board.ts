import type { TicketCard } from '../../contracts';
import type { BoardFilter } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { CARD, CARD_TABLES } from './card-columns';

/** The open tickets of one location: those promised first come first, those without a day last. */
export function readBoard(db: Db, { locationId, bench, flagged, q }: BoardFilter): Promise<TicketCard[]> {
  const like = q ? `%${escapeLike(q)}%` : null;
  const filters = [
    Prisma.sql`t.closed_at IS NULL AND t.location_id = ${locationId}`,
    bench === undefined ? null : Prisma.sql`t.bench_id = ${bench}`,
    flagged ? Prisma.sql`EXISTS (SELECT FROM flag f WHERE f.ticket_id = t.id AND f.state = 'open')` : null,
    like &&
      Prisma.sql`(o.name ILIKE ${like} OR t.number ILIKE ${like} OR u.serial ILIKE ${like}
                        OR l.name ILIKE ${like} OR m.name ILIKE ${like})`,
  ].filter((one) => one !== null);
  return db.$queryRaw<TicketCard[]>`
    SELECT ${CARD} FROM ${CARD_TABLES} WHERE ${Prisma.join(filters, ' AND ')}
    ORDER BY t.promised_on NULLS LAST, t.id`;
}
