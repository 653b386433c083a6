import type { TicketCard } from '../../contracts';
import type { BoardFilter } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { CARD, CARD_TABLES } from './card-columns';

/** The open tickets of one location: those promised first come first, those without a day last. */
export function readBoard(db: Db, filter: BoardFilter): Promise<TicketCard[]> {
  const { locationId, bench, owner, flagged, q } = filter;
  const like = q ? `%${escapeLike(q)}%` : null;
  const filters = [
    Prisma.sql`t.closed_at IS NULL AND t.location_id = ${locationId}`,
    bench === undefined ? null : Prisma.sql`t.bench_id = ${bench}`,
    owner === undefined ? null : Prisma.sql`t.owner_id = ${owner}`,
    flagged ? Prisma.sql`EXISTS (SELECT FROM flag f WHERE f.ticket_id = t.id AND f.state = 'open')` : null,
    like &&
      Prisma.sql`(o.name ILIKE ${like} OR t.number ILIKE ${like} OR u.serial ILIKE ${like}
                        OR l.name ILIKE ${like} OR m.name ILIKE ${like})`,
    promisedOn(filter),
  ].filter((one) => one !== null);
  return db.$queryRaw<TicketCard[]>`
    SELECT ${CARD} FROM ${CARD_TABLES} WHERE ${Prisma.join(filters, ' AND ')}
    ORDER BY t.promised_on NULLS LAST, t.id`;
}

/** Tickets promised for today, before it, within seven days from it, or without a day. */
function promisedOn({ promised, today }: BoardFilter): Prisma.Sql | null {
  if (promised === undefined) return null;
  const day = Prisma.sql`${today}::date`;
  if (promised === 'today') return Prisma.sql`t.promised_on = ${day}`;
  if (promised === 'late') return Prisma.sql`t.promised_on < ${day}`;
  if (promised === 'week') return Prisma.sql`t.promised_on >= ${day} AND t.promised_on < ${day} + 7`;
  return Prisma.sql`t.promised_on IS NULL`;
}

/** Owners with an open ticket at the location, by name. */
export function readOwnersOnBoard(db: Db, locationId: number): Promise<{ id: number; name: string }[]> {
  return db.$queryRaw`
    SELECT o.id, o.name FROM owner o
    WHERE EXISTS (SELECT FROM ticket t WHERE t.owner_id = o.id AND t.closed_at IS NULL AND t.location_id = ${locationId})
    ORDER BY o.name, o.id`;
}
