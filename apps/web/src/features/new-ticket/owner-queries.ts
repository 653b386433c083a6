import { queryOptions } from '@tanstack/react-query';
import { owners, unitRows } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** Owners by name, phone or e-mail. */
export const ownersQuery = (q: string) =>
  queryOptions({
    queryKey: ['owners', q.trim()],
    enabled: q.trim().length >= 2,
    queryFn: () => request(owners, 'GET', '/owners', { query: { q: q.trim() } }),
  });

/** The units of one owner. */
export const ownerUnitsQuery = (ownerId: number) =>
  queryOptions({
    queryKey: ['owner-units', ownerId],
    queryFn: () => request(unitRows, 'GET', `/owners/${ownerId}/units`),
  });
