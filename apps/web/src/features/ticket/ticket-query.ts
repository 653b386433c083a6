import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { ticketView, type TicketView } from '../../../../../libs/contracts';
import { readAs, request, sendAct } from '../../lib/api-client';
import type { ActBelow } from '../../lib/api-routes';
import { isStale } from '../../lib/problem';

export const ticketQuery = (id: number) =>
  queryOptions({ queryKey: ['ticket', id], queryFn: () => request(ticketView, 'GET', `/tickets/${id}`) });

/** A change of the ticket: method, path below the ticket (empty for the ticket itself), body. */
export type TicketAct = ActBelow<'/tickets/{id}'>;

/**
 * One change of a ticket. Changes of one ticket go out one after the other, each with the version the last one left
 * behind, so that quick scanning never meets itself; a change of somebody else is shown, never written over.
 */
export function useTicketAct(id: number) {
  const client = useQueryClient();
  const key = ticketQuery(id).queryKey;
  return useMutation<TicketView, Error, TicketAct>({
    scope: { id: `ticket-${id}` },
    mutationFn: async (act) =>
      readAs(ticketView, await sendAct(`/tickets/${id}`, act, client.getQueryData(key)?.version)),
    onSuccess: async (ticket) => {
      await client.cancelQueries({ queryKey: key });
      client.setQueryData(key, ticket);
      void client.invalidateQueries({ queryKey: ['board'] });
      void client.invalidateQueries({ queryKey: ['flags'] });
    },
    onError: (error) => (isStale(error) ? client.invalidateQueries({ queryKey: key }) : undefined),
  });
}

/** A change of the unit: method, path below the unit, such as `/identity`, body; `version` where a form was filled earlier. */
export type UnitAct = ActBelow<'/units/{id}'> & { version?: number };

/** One change of the unit on the ticket; the ticket is fetched anew, since its parts are judged again by it. */
export function useUnitAct(ticketId: number) {
  const client = useQueryClient();
  const key = ticketQuery(ticketId).queryKey;
  return useMutation<unknown, Error, UnitAct>({
    scope: { id: `ticket-${ticketId}` },
    mutationFn: (act) => {
      const unit = client.getQueryData(key)?.unit;
      return sendAct(`/units/${unit?.id}`, act, act.version ?? unit?.version);
    },
    onSettled: () => client.invalidateQueries({ queryKey: key }),
  });
}
