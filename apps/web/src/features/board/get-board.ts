import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { board, type PromisedFilter } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export interface BoardFilter {
  bench?: string;
  owner?: string;
  promised?: PromisedFilter;
  flagged?: 'yes';
  q?: string;
}

/** Open tickets by stage; live events mark it old, the clock does so every half minute. */
export const boardQuery = (filter: BoardFilter) =>
  queryOptions({
    queryKey: ['board', filter],
    queryFn: () => request(board, 'GET', '/board', { query: { ...filter } }),
    placeholderData: keepPreviousData,
    refetchInterval: 30_000,
  });
