import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { ticketView, type TicketView } from '../../../../../libs/contracts';
import { request, send } from '../../lib/api-client';
import { isStale } from '../../lib/problem';

export const ticketQuery = (id: number) =>
  queryOptions({ queryKey: ['ticket', id], queryFn: () => request(ticketView, 'GET', `/tickets/${id}`) });

export interface TicketAct {
  method: 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** below the ticket, such as `/stage`; empty for the ticket itself */
  path: string;
  body?: unknown;
}

/**
 * One change of a ticket. Changes of one ticket go out one after the other, each with the version the last one left
 * behind, so that quick scanning never meets itself; a change of somebody else is shown, never written over.
 */
export function useTicketAct(id: number) {
  const client = useQueryClient();
  const key = ticketQuery(id).queryKey;
  return useMutation<TicketView, Error, TicketAct>({
    scope: { id: `ticket-${id}` },
    mutationFn: ({ method, path, body }) =>
      request(ticketView, method, `/tickets/${id}${path}`, { body, version: client.getQueryData(key)?.version }),
    onSuccess: async (ticket) => {
      await client.cancelQueries({ queryKey: key });
      client.setQueryData(key, ticket);
      void client.invalidateQueries({ queryKey: ['board'] });
      void client.invalidateQueries({ queryKey: ['flags'] });
    },
    onError: (error) => (isStale(error) ? client.invalidateQueries({ queryKey: key }) : undefined),
  });
}

export interface UnitAct {
  method: 'POST' | 'PUT';
  /** below the unit, such as `/identity` */
  path: string;
  body: unknown;
}

/** One change of the unit on the ticket; the ticket is fetched anew, since its parts are judged again by it. */
export function useUnitAct(ticketId: number) {
  const client = useQueryClient();
  const key = ticketQuery(ticketId).queryKey;
  return useMutation<unknown, Error, UnitAct>({
    scope: { id: `ticket-${ticketId}` },
    mutationFn: ({ method, path, body }) => {
      const unit = client.getQueryData(key)?.unit;
      return send(method, `/units/${unit?.id}${path}`, { body, version: unit?.version });
    },
    onSettled: () => client.invalidateQueries({ queryKey: key }),
  });
}
