import { useMutation, useQueryClient } from '@tanstack/react-query';
import { ticketView, type ChangePhoto, type PhotoView, type TicketView } from '../../../../../libs/contracts';
import { request, sendPhoto } from '../../lib/api-client';
import { ticketQuery } from './ticket-query';

/** Sends photos one after the other, so that a slow line is not asked for all of them at once. */
export function useTakePhotos(ticketId: number) {
  const client = useQueryClient();
  return useMutation<void, Error, { fields: Record<string, string>; files: readonly File[] }>({
    // What is dropped while others are on their way waits for them.
    scope: { id: `photos-${ticketId}` },
    mutationFn: async ({ fields, files }) => {
      for (const file of files) keep(await sendPhoto(ticketView, `/tickets/${ticketId}/photos`, fields, file));
    },
  });
  function keep(ticket: TicketView) {
    client.setQueryData(ticketQuery(ticketId).queryKey, ticket);
  }
}

/** Changes one photo, or takes it away. */
export function usePhotoAct(ticketId: number, { id: photoId, version }: Pick<PhotoView, 'id' | 'version'>) {
  const client = useQueryClient();
  const path = `/tickets/${ticketId}/photos/${photoId}` as const;
  return useMutation<TicketView, Error, ChangePhoto | { reason: string }>({
    mutationFn: (body) =>
      'reason' in body
        ? request(ticketView, 'POST', `${path}/remove` as const, { body, version })
        : request(ticketView, 'PATCH', path, { body, version }),
    onSuccess: (ticket) => client.setQueryData(ticketQuery(ticketId).queryKey, ticket),
    onError: () => client.invalidateQueries({ queryKey: ticketQuery(ticketId).queryKey }),
  });
}
