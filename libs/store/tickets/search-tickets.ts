import type { SearchRow, SearchTerms } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';
import { CARD, CARD_TABLES } from './card-columns';

/**
 * Tickets by number, serial, owner, phone or part. Each way finds its newest ids through its own index, in the
 * database's `find_tickets` (the wall would keep a statement from using them); only those few are then read whole. A way whose term is
 * empty finds nothing.
 */
export function searchTickets(db: Db, terms: SearchTerms, locationId: number, most: number): Promise<SearchRow[]> {
  const name = `%${escapeLike(terms.text)}%`;
  const squeezed = terms.squeezed.length >= 2 ? terms.squeezed : null;
  const serial = squeezed === null ? null : `${escapeLike(squeezed)}%`;
  const digits = terms.digits.length >= 3 ? `%${terms.digits}%` : null;
  return db.$queryRaw<SearchRow[]>`
    WITH best AS (
      SELECT DISTINCT ON (f.id) f.id, f.matched
      FROM find_tickets(${squeezed}::text, ${terms.text.toUpperCase()}, ${serial}::text, ${name}, ${digits}::text,
                        ${[...terms.partKeys]}::text[], ${locationId}::int, ${most}::int) f
      ORDER BY f.id, f.rank)
    SELECT ${CARD}, t.closed_at::date::text AS "closedOn", best.matched
    FROM best JOIN ${CARD_TABLES} ON t.id = best.id
    ORDER BY t.id DESC LIMIT ${most}`;
}
