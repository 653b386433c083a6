import { queryOptions } from '@tanstack/react-query';
import { searchHits } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** Tickets by number, serial, owner, phone or part in any writing; newest first, at most 50. */
export const searchQuery = (q: string) =>
  queryOptions({
    queryKey: ['search', q],
    enabled: q !== '',
    queryFn: () => request(searchHits, 'GET', '/search', { query: { q } }),
  });
