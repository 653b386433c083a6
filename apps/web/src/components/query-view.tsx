import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { FailedView } from './failed-view';
import { LoadingView } from './loading-view';

interface QueryViewProps<T> {
  query: UseQueryResult<T>;
  /** names what is fetched, as in 'the board' */
  what: string;
  children: (data: T) => ReactNode;
}

/** Loading, failed or there. What was there before stays while it is fetched anew, and when that fails. */
export function QueryView<T>({ query, what, children }: QueryViewProps<T>) {
  if (query.data !== undefined) return <>{children(query.data)}</>;
  if (query.isError) return <FailedView what={what} error={query.error} retry={() => void query.refetch()} />;
  return <LoadingView what={what} />;
}
