import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  changedSettings,
  shopSettings,
  type ChangedSettings,
  type ChangeSettings,
} from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** What the shop has settled for itself. */
export const settingsQuery = queryOptions({
  queryKey: ['settings'],
  queryFn: () => request(shopSettings, 'GET', '/settings'),
});

/** Keeps what has changed; the server judges everything again. */
export function useChangeSettings(version: number) {
  const client = useQueryClient();
  return useMutation<ChangedSettings, Error, ChangeSettings>({
    mutationFn: (body) => request(changedSettings, 'PATCH', '/settings', { body, version }),
    onSuccess: ({ recheckId: _, ...kept }) => client.setQueryData(settingsQuery.queryKey, kept),
    onError: () => client.invalidateQueries({ queryKey: settingsQuery.queryKey, exact: true }),
  });
}
