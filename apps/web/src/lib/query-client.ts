import { QueryCache, QueryClient } from '@tanstack/react-query';
import { ApiProblem } from './problem';

/** One cache for the page. Live events mark what is old; a refusal is never tried again by itself. */
export const queryClient: QueryClient = new QueryClient({
  queryCache: new QueryCache({
    // What the shop asks of a sign-in has changed meanwhile: the frame of the page is to know.
    onError: (error) => {
      if (error instanceof ApiProblem && error.problem.type === 'second-factor-needed')
        void queryClient.invalidateQueries({ queryKey: ['session'] });
    },
  }),
  defaultOptions: {
    queries: {
      staleTime: 15_000,
      retry: (count, error) => error instanceof ApiProblem && error.problem.status === 0 && count < 2,
    },
    mutations: { networkMode: 'always' },
  },
});
