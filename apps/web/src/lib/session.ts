import { queryOptions, useQuery, type QueryClient } from '@tanstack/react-query';
import { me, type Me, type Permission } from '../../../../libs/contracts';
import { request } from './api-client';
import { draftsAreOf } from './draft';
import { ApiProblem } from './problem';
import { writeFor } from './say';

/** Who is signed in; null when nobody is. */
export const sessionQuery = queryOptions({
  queryKey: ['session'],
  staleTime: 5 * 60_000,
  // Who must add a second factor is shown recovery codes once; asking anew would end that view before they are kept.
  refetchOnWindowFocus: ({ state }) => state.data?.secondFactor !== 'missing',
  refetchOnReconnect: ({ state }) => state.data?.secondFactor !== 'missing',
  queryFn: async (): Promise<Me | null> => {
    try {
      const person = await request(me, 'GET', '/session');
      writeFor(person.reading);
      return person;
    } catch (error) {
      if (error instanceof ApiProblem && error.problem.status === 401) return null;
      throw error;
    }
  },
});

/** True when the person at the page may do it; the server decides again. */
export function useMay(permission: Permission): boolean {
  return useQuery(sessionQuery).data?.permissions.includes(permission) ?? false;
}

/** Someone comes or goes: whatever was fetched or typed for the one before is forgotten, and every view of the session knows. */
export function changePerson(client: QueryClient, person: Me | null): void {
  draftsAreOf(person?.id ?? null);
  client.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== sessionQuery.queryKey[0] });
  knowPerson(client, person);
}

/** What is told anew of the person at the page; the page writes as they read from now on. */
export function knowPerson(client: QueryClient, person: Me | null): void {
  writeFor(person?.reading);
  client.setQueryData(sessionQuery.queryKey, person);
}
