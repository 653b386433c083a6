import { infiniteQueryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { callbackPage, type CallbackView } from '../../../../../libs/contracts';
import { request, sendAct } from '../../lib/api-client';
import type { ActBelow } from '../../lib/api-routes';

export const CALLBACK_STATES = ['open', 'booked', 'settled', 'withdrawn'] as const;
export type CallbackState = (typeof CALLBACK_STATES)[number];

/** Callbacks of one state, urgent first, then oldest; a hundred at a time. */
export const callbacksQuery = (state: CallbackState) =>
  infiniteQueryOptions({
    queryKey: ['callbacks', state],
    initialPageParam: '',
    queryFn: ({ pageParam }) => request(callbackPage, 'GET', '/callbacks', { query: { state, after: pageParam } }),
    getNextPageParam: ({ next }) => next,
  });

/** An attempt, or how it ended. */
export function useCallbackAct(callback: CallbackView) {
  const client = useQueryClient();
  return useMutation<unknown, Error, ActBelow<'/callbacks/{id}', 'POST'>>({
    mutationFn: (act) => sendAct(`/callbacks/${callback.id}`, act, callback.version),
    onSettled: () => client.invalidateQueries({ queryKey: ['callbacks'] }),
  });
}
