import { infiniteQueryOptions, queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  callbackPage,
  mailSetUp,
  writtenToOwners,
  type CallbackView,
  type WriteToOwners,
  type WrittenToOwners,
} from '../../../../../libs/contracts';
import { request, sendAct } from '../../lib/api-client';
import type { ActBelow } from '../../lib/api-routes';

export const CALLBACK_STATES = ['due', 'later', 'booked', 'settled', 'withdrawn'] as const;
export type CallbackState = (typeof CALLBACK_STATES)[number];

/** Callbacks of one list, stop use first, then by the day of the next try; a hundred at a time. */
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

/** Whether e-mails can be sent from here. */
export const mailSetUpQuery = queryOptions({
  queryKey: ['settings', 'mail'],
  queryFn: () => request(mailSetUp, 'GET', '/settings/mail'),
});

/** Letters or e-mails to the owners of these callbacks, in one go. */
export function useWriteToOwners() {
  const client = useQueryClient();
  return useMutation<WrittenToOwners, Error, { way: 'letters' | 'mails'; body: WriteToOwners }>({
    mutationFn: ({ way, body }) => request(writtenToOwners, 'POST', `/callbacks/${way}`, { body }),
    onSettled: () => client.invalidateQueries({ queryKey: ['callbacks'] }),
  });
}
