import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { myBench, type MyBench } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export const myBenchQuery = queryOptions({
  queryKey: ['bench-lists', 'mine'],
  queryFn: () => request(myBench, 'GET', '/my-bench'),
  refetchInterval: 30_000,
});

/** Says at which bench one works. */
export function useChooseBench() {
  const client = useQueryClient();
  return useMutation<MyBench, Error, number | null>({
    mutationFn: (benchId) => request(myBench, 'PUT', '/my-bench', { body: { benchId } }),
    onSuccess: (mine) => client.setQueryData(myBenchQuery.queryKey, mine),
  });
}
