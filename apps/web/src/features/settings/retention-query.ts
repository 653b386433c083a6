import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { retention, type Retention } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** The setting, and whom it would forget; with `years`, whom so many would, before anything is settled. */
export const retentionQuery = (years?: number) =>
  queryOptions({
    queryKey: ['retention', years ?? null],
    queryFn: () => request(retention, 'GET', '/retention', { query: { years } }),
  });

/** Settles it on the version that was seen. */
export function useSettleRetention(version: number) {
  const client = useQueryClient();
  return useMutation<Retention, Error, number | null>({
    mutationFn: (years) => request(retention, 'PUT', '/retention', { version, body: { years } }),
    onSettled: () => client.invalidateQueries({ queryKey: ['retention'] }),
  });
}
