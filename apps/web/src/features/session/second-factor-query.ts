import { queryOptions, useQueryClient } from '@tanstack/react-query';
import { secondFactorView } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';
import { sessionQuery } from '../../lib/session';

/** How one's own second factor stands. */
export const secondFactorQuery = queryOptions({
  queryKey: ['second-factor'],
  queryFn: () => request(secondFactorView, 'GET', '/session/second-factor'),
});

/** Looks again at the second factor, and at what the person may do now. */
export function useFactorChanged(): () => void {
  const client = useQueryClient();
  return () => {
    void client.invalidateQueries({ queryKey: secondFactorQuery.queryKey });
    void client.invalidateQueries({ queryKey: sessionQuery.queryKey });
  };
}
