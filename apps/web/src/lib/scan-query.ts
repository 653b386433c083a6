import { queryOptions } from '@tanstack/react-query';
import { scanned } from '../../../../libs/contracts';
import { request } from './api-client';

/** Where a scan leads: a ticket, a unit, a part, nowhere; or that it is text to search for. */
export const scanQuery = (text: string) =>
  queryOptions({
    queryKey: ['search', 'scan', text],
    enabled: text !== '',
    queryFn: async () => (await request(scanned, 'GET', '/scan', { query: { text } })).found,
  });
