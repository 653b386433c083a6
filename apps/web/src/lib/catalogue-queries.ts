import { queryOptions } from '@tanstack/react-query';
import { benches, lineDetail, lines, parts } from '../../../../libs/contracts';
import { request } from './api-client';

/** What seldom changes: fetched once a page life, shared by every page. */
const SELDOM = 10 * 60_000;

export const linesQuery = queryOptions({
  queryKey: ['lines'],
  staleTime: SELDOM,
  queryFn: () => request(lines, 'GET', '/lines'),
});

export const lineQuery = (code: string) =>
  queryOptions({
    queryKey: ['line', code],
    staleTime: SELDOM,
    enabled: code !== '',
    queryFn: () => request(lineDetail, 'GET', `/lines/${encodeURIComponent(code)}`),
  });

export const benchesQuery = queryOptions({
  queryKey: ['benches'],
  staleTime: SELDOM,
  queryFn: () => request(benches, 'GET', '/benches'),
});

/** Parts by any writing of the number or a word of the name. */
export const partsQuery = (q: string) =>
  queryOptions({
    queryKey: ['parts', q],
    staleTime: SELDOM,
    enabled: q.trim().length >= 2,
    queryFn: () => request(parts, 'GET', '/parts', { query: { q: q.trim() } }),
  });
