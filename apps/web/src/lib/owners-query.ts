import { queryOptions } from '@tanstack/react-query';
import { owners } from '../../../../libs/contracts';
import { request } from './api-client';

/** Owners by name, phone or e-mail. */
export const ownersQuery = (q: string) =>
  queryOptions({
    queryKey: ['owners', q.trim()],
    enabled: q.trim().length >= 2,
    queryFn: () => request(owners, 'GET', '/owners', { query: { q: q.trim() } }),
  });
