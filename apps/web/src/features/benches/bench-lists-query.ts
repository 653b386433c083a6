import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { benchLists, type BenchLists, type MoveOnBench } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';
import { isStale } from '../../lib/problem';

/** Every bench with its list; live events mark it old. */
export const benchListsQuery = queryOptions({
  queryKey: ['bench-lists', 'all'],
  queryFn: () => request(benchLists, 'GET', '/bench-lists'),
  refetchInterval: 30_000,
});

export type BenchMove = MoveOnBench & { id: number };

/** Moves go out one after the other; what the server answers is what is shown. */
export function useBenchMove() {
  const client = useQueryClient();
  return useMutation<BenchLists, Error, BenchMove>({
    scope: { id: 'bench-moves' },
    mutationFn: ({ id, ...body }) => request(benchLists, 'POST', `/tickets/${id}/bench`, { body }),
    onSuccess: async (lists, { id }) => {
      await client.cancelQueries({ queryKey: benchListsQuery.queryKey });
      client.setQueryData(benchListsQuery.queryKey, lists);
      void client.invalidateQueries({ queryKey: ['board'] });
      void client.invalidateQueries({ queryKey: ['ticket', id] });
    },
    onError: (error) => (isStale(error) ? client.invalidateQueries({ queryKey: benchListsQuery.queryKey }) : undefined),
  });
}

export function useBenchDay() {
  const client = useQueryClient();
  return useMutation<BenchLists, Error, { id: number; version: number; dayMinutes: number }>({
    mutationFn: ({ id, version, ...body }) => request(benchLists, 'PATCH', `/benches/${id}`, { body, version }),
    onSuccess: (lists) => client.setQueryData(benchListsQuery.queryKey, lists),
    onError: () => client.invalidateQueries({ queryKey: benchListsQuery.queryKey }),
  });
}
