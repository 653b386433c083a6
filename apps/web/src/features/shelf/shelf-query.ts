import { infiniteQueryOptions, queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  orderList,
  shelfItemDetail,
  shelfMoved,
  shelfPage,
  shelfPulls,
  stockView,
  type CountPart,
  type OrderList,
  type ReceivePart,
  type SetShelfItem,
  type ShelfItemDetail,
  type ShelfMoved,
} from '../../../../../libs/contracts';
import { request } from '../../lib/api-client';

export const ONLY = ['low', 'reserved', 'pull'] as const;
export type Only = (typeof ONLY)[number];

/** The shelf by bin, a hundred at a time. */
export const shelfQuery = (q: string, only: Only | undefined) =>
  infiniteQueryOptions({
    queryKey: ['shelf', 'list', q, only ?? 'all'],
    initialPageParam: 0,
    queryFn: ({ pageParam }) => request(shelfPage, 'GET', '/shelf', { query: { q, only, after: pageParam } }),
    getNextPageParam: ({ next }) => next,
  });

export const shelfItemQuery = (id: number) =>
  queryOptions({
    queryKey: ['shelf', 'item', id],
    queryFn: () => request(shelfItemDetail, 'GET', `/shelf/items/${id}`),
  });

/**
 * What the shelf has of a part, as it was seen before counting. It is asked once and not renewed behind the person's
 * back: the count is made on what was seen.
 */
export const stockQuery = (partText: string) =>
  queryOptions({
    queryKey: ['stock-seen', partText],
    queryFn: () => request(stockView, 'GET', '/shelf/stock', { query: { partText } }),
    staleTime: Infinity,
    gcTime: 0,
    retry: false,
  });

export const ordersQuery = queryOptions({
  queryKey: ['shelf', 'orders'],
  queryFn: () => request(orderList, 'GET', '/shelf/orders'),
});

/** What bulletins have pulled from the shelves; of one bulletin where it is named. */
export const pullsQuery = (bulletinId?: number) =>
  queryOptions({
    queryKey: ['shelf', 'pulls', bulletinId ?? 'all'],
    queryFn: () => request(shelfPulls, 'GET', bulletinId ? `/shelf/pulls/bulletins/${bulletinId}` : '/shelf/pulls'),
  });

/** Everything that was fetched of the shelf is old after any act on it. */
function useShelfRefresh(): () => Promise<void> {
  const client = useQueryClient();
  return () => client.invalidateQueries({ queryKey: ['shelf'] });
}

export type Movement =
  { readonly act: 'receive'; readonly body: ReceivePart } | { readonly act: 'count'; readonly body: CountPart };

export function useMoveStock() {
  const refresh = useShelfRefresh();
  const client = useQueryClient();
  return useMutation<ShelfMoved, Error, Movement>({
    mutationFn: async (moved) => {
      if (moved.act === 'receive') return request(shelfMoved, 'POST', '/shelf/receive', { body: moved.body });
      const { version } = await client.ensureQueryData(stockQuery(moved.body.partText));
      return request(shelfMoved, 'POST', '/shelf/count', { body: moved.body, version });
    },
    onSettled: (_, __, moved) => {
      void client.invalidateQueries(stockQuery(moved.body.partText));
      return refresh();
    },
  });
}

export function useSetShelfItem({ id, version }: Pick<ShelfItemDetail, 'id' | 'version'>) {
  const refresh = useShelfRefresh();
  return useMutation<ShelfItemDetail, Error, SetShelfItem>({
    mutationFn: (body) => request(shelfItemDetail, 'PATCH', `/shelf/items/${id}`, { body, version }),
    onSettled: refresh,
  });
}

export function useMarkPulled() {
  const refresh = useShelfRefresh();
  return useMutation<unknown, Error, { noticeId: number; itemId: number; note: string }>({
    mutationFn: ({ noticeId, ...body }) => request(shelfPulls, 'POST', `/shelf/pulls/${noticeId}`, { body }),
    onSettled: refresh,
  });
}

export type OrderAct =
  | { readonly act: 'place'; readonly expectedOn: string | null; readonly lines: { itemId: number; pieces: number }[] }
  | { readonly act: 'cancel'; readonly id: number; readonly version: number };

export function useOrderAct() {
  const refresh = useShelfRefresh();
  return useMutation<OrderList, Error, OrderAct>({
    mutationFn: (one) =>
      one.act === 'place'
        ? request(orderList, 'POST', '/shelf/orders', { body: { expectedOn: one.expectedOn, lines: one.lines } })
        : request(orderList, 'POST', `/shelf/orders/${one.id}/cancel`, { version: one.version }),
    onSettled: refresh,
  });
}
