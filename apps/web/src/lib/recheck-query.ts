import { queryOptions } from '@tanstack/react-query';
import { recheckView } from '../../../../libs/contracts';
import { request } from './api-client';

/** How far a recheck has come; asked for every second until it is done. */
export const recheckQuery = (id: number) =>
  queryOptions({
    queryKey: ['rechecks', id],
    queryFn: () => request(recheckView, 'GET', `/rechecks/${id}`),
    refetchInterval: ({ state }) => (state.data?.state === 'done' ? false : 1_000),
  });
