import { queryOptions } from '@tanstack/react-query';
import { scanned, searchHits } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** Tickets by number, serial, owner, phone or part in any writing; newest first, at most 50. */
export const searchQuery = (q: string) =>
  queryOptions({
    queryKey: ['search', q],
    enabled: q !== '',
    queryFn: () => request(searchHits, 'GET', '/search', { query: { q } }),
  });

/** Where a scan leads: a ticket, a unit, a part, nowhere; or that it is text to search for. */
export const scanQuery = (text: string) =>
  queryOptions({
    queryKey: ['search', 'scan', text],
    enabled: text !== '',
    queryFn: async () => (await request(scanned, 'GET', '/scan', { query: { text } })).found,
  });
