import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { personalData, type PersonalData } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** Everything that is kept of one owner. */
export const personalDataQuery = (id: number) =>
  queryOptions({
    queryKey: ['owners', 'personal-data', id],
    queryFn: () => request(personalData, 'GET', `/owners/${id}/personal-data`),
  });

/** Erases what is known of the owner, on the version that was seen; whatever shows the name is fetched anew. */
export function useEraseOwner({ id, version }: PersonalData['owner']) {
  const client = useQueryClient();
  return useMutation<PersonalData, Error, string>({
    mutationFn: (reason) => request(personalData, 'POST', `/owners/${id}/erase`, { version, body: { reason } }),
    onSettled: () => client.invalidateQueries(),
  });
}
