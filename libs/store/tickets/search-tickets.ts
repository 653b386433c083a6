import type { SearchRow, SearchTerms } from '../../usecases';
import { escapeLike } from '../catalogue/catalogue-store';
import type { Db } from '../db';
import { CARD, CARD_TABLES } from './card-columns';

/**
 * Tickets by number, serial, owner, phone or part. Each way finds its newest ids through its own index; only those
 * few are then read whole. A way whose term is empty finds nothing.
 */
export function searchTickets(db: Db, terms: SearchTerms, locationId: number, most: number): Promise<SearchRow[]> {
  const name = `%${escapeLike(terms.text)}%`;
  const squeezed = terms.squeezed.length >= 2 ? terms.squeezed : null;
  const digits = terms.digits.length >= 3 ? `%${terms.digits}%` : null;
  return db.$queryRaw<SearchRow[]>`
    WITH found AS (
      (SELECT id, 'number' AS matched, 1 AS rank FROM ticket
       WHERE replace(number, '-', '') = ${squeezed}::text OR number = ${terms.text.toUpperCase()}
       LIMIT ${most})
      UNION ALL
      (SELECT t.id, 'serial', 2 FROM unit u JOIN ticket t ON t.unit_id = u.id
       WHERE u.serial_search LIKE ${squeezed}::text || '%' ORDER BY t.id DESC LIMIT ${most})
      UNION ALL
      (SELECT t.id, 'owner', 3 FROM owner o JOIN ticket t ON t.owner_id = o.id
       WHERE o.name ILIKE ${name} ORDER BY t.id DESC LIMIT ${most})
      UNION ALL
      (SELECT t.id, 'phone', 4 FROM owner o JOIN ticket t ON t.owner_id = o.id
       WHERE regexp_replace(o.phone, '[^0-9]', '', 'g') LIKE ${digits}::text ORDER BY t.id DESC LIMIT ${most})
      UNION ALL
      (SELECT DISTINCT r.ticket_id, 'part', 5 FROM part p JOIN place_record r ON r.part_id = p.id
       WHERE p.key = ANY(${[...terms.partKeys]}::text[]) ORDER BY r.ticket_id DESC LIMIT ${most})
    ),
    best AS (SELECT DISTINCT ON (id) id, matched FROM found ORDER BY id, rank)
    SELECT ${CARD}, t.closed_at::date::text AS "closedOn", best.matched
    FROM best JOIN ${CARD_TABLES} ON t.id = best.id
    WHERE t.location_id = ${locationId}
    ORDER BY t.id DESC LIMIT ${most}`;
}
