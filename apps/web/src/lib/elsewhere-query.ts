import { queryOptions } from '@tanstack/react-query';
import { elsewhereOffered } from '../../../../libs/contracts';
import { request } from './api-client';

/** What the other way of signing in is called; null when the shop has none. */
export const elsewhereQuery = queryOptions({
  queryKey: ['elsewhere'],
  queryFn: () => request(elsewhereOffered, 'GET', '/session/elsewhere'),
});
