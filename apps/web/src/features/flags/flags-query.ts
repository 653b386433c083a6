import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { flags, type DecideFlag, type FlagView } from '../../../../../libs/contracts';
import { request, send } from '../../lib/api-client';

/** Flagged installs that wait for a manager, worst first. */
export const flagsQuery = queryOptions({
  queryKey: ['flags'],
  queryFn: () => request(flags, 'GET', '/flags', { query: { state: 'open' } }),
  refetchInterval: 60_000,
});

/** One decision on one or several equal flags; each is sent with the version it was seen at, and stops at the first refusal. */
export function useDecide() {
  const client = useQueryClient();
  return useMutation<void, Error, { on: readonly FlagView[]; decision: DecideFlag }>({
    mutationFn: async ({ on, decision }) => {
      for (const flag of on) {
        await send('POST', `/flags/${flag.id}/decide`, { body: decision, version: flag.version });
      }
    },
    onSettled: () =>
      client.invalidateQueries({
        predicate: ({ queryKey }) => ['flags', 'ticket', 'board', 'callbacks'].includes(String(queryKey[0])),
      }),
  });
}
