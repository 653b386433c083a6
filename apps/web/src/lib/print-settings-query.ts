import { queryOptions } from '@tanstack/react-query';
import { settledPrints } from '../../../../libs/contracts';
import { request } from './api-client';

/** Who the shop is on paper, on which paper, and in whose manner of writing. */
export const printSettingsQuery = queryOptions({
  queryKey: ['settings', 'prints'],
  queryFn: () => request(settledPrints, 'GET', '/settings/prints'),
});
