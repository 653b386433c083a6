import { useMutation, useQueryClient } from '@tanstack/react-query';
import { ticketView, type StageName, type TicketCard } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export interface StageMove {
  card: TicketCard;
  to: StageName;
  reason?: string;
}

/** Moves a ticket from the board; a gate that is closed answers with what is missing. */
export function useStageMove() {
  const client = useQueryClient();
  return useMutation<unknown, Error, StageMove>({
    mutationFn: ({ card: { id, version }, to, reason }) =>
      request(ticketView, 'POST', `/tickets/${id}/stage`, { body: { to, reason }, version }),
    onSettled: (_done, _error, { card: { id } }) => {
      void client.invalidateQueries({ queryKey: ['board'] });
      void client.invalidateQueries({ queryKey: ['bench-lists'] });
      void client.invalidateQueries({ queryKey: ['ticket', id] });
    },
  });
}
