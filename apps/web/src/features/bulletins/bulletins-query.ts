import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { bulletinDetail, bulletinRows, whatIf, type WhatIf } from '../../../../../libs/contracts';
import { request, sendAct } from '../../lib/api-client';
import type { ActBelow } from '../../lib/api-routes';

/** Every paper of the shop, newest first. */
export const bulletinsQuery = queryOptions({
  queryKey: ['bulletins'],
  queryFn: () => request(bulletinRows, 'GET', '/bulletins'),
});

/** One paper; while its recheck runs it is asked for every second. */
export const bulletinQuery = (id: number) =>
  queryOptions({
    queryKey: ['bulletin', id],
    queryFn: () => request(bulletinDetail, 'GET', `/bulletins/${id}`),
    refetchInterval: ({ state }) => {
      const recheck = state.data?.recheck;
      return recheck && recheck.state !== 'done' ? 1_000 : false;
    },
  });

/** What publishing would bring, from the code that would run. */
export function useWhatIf(id: number) {
  return useMutation<WhatIf, Error, void>({
    mutationFn: () => request(whatIf, 'POST', `/bulletins/${id}/what-if`),
  });
}

/** Publish or withdraw, with the version the paper was seen at. */
export function useBulletinAct(id: number, version: number) {
  const client = useQueryClient();
  return useMutation<unknown, Error, ActBelow<'/bulletins/{id}', 'POST'>>({
    mutationFn: (act) => sendAct(`/bulletins/${id}`, act, version),
    onSettled: async () => {
      await client.invalidateQueries({ queryKey: ['bulletin', id] });
      await client.invalidateQueries({ queryKey: ['bulletins'] });
    },
  });
}
