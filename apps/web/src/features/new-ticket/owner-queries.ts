import { queryOptions } from '@tanstack/react-query';
import { unitRows } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** The units of one owner. */
export const ownerUnitsQuery = (ownerId: number) =>
  queryOptions({
    queryKey: ['owner-units', ownerId],
    queryFn: () => request(unitRows, 'GET', `/owners/${ownerId}/units`),
  });
