import { QueryClient } from '@tanstack/react-query';
import { ApiProblem } from './problem';

/** One cache for the page. Live events mark what is old; a refusal is never tried again by itself. */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 15_000,
      retry: (count, error) => error instanceof ApiProblem && error.problem.status === 0 && count < 2,
    },
    mutations: { networkMode: 'always' },
  },
});
