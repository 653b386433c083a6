import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { figures } from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

/** Closed-open days; the server takes the last twelve months where they are left out. */
export interface ChosenSpan {
  from?: string;
  to?: string;
}

/** The figures of a span; those of the span before stay while new ones are fetched. */
export const figuresQuery = (span: ChosenSpan) =>
  queryOptions({
    queryKey: ['figures', span],
    queryFn: () => request(figures, 'GET', '/figures', { query: { ...span } }),
    placeholderData: keepPreviousData,
  });
