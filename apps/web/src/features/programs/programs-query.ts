import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import {
  apiTokenList,
  apiTokenMade,
  apiTokenView,
  webhookAdded,
  webhookDeliveries,
  webhookList,
  webhookView,
  type ApiTokenView,
  type ChangeWebhook,
  type NewApiToken,
  type NewWebhook,
  type WebhookView,
} from '../../../../../libs/contracts';
import { request, send } from '../../lib/api-client';

/** The tokens the person may see, and the scopes that person may give. */
export const tokensQuery = queryOptions({
  queryKey: ['tokens'],
  queryFn: () => request(apiTokenList, 'GET', '/tokens'),
});

/** How often what is on its way to an address is looked at anew while it is shown, in milliseconds. */
const LOOK_EVERY_MS = 3_000;

/** The addresses that are told of events, each with how many are on their way. */
export const webhooksQuery = queryOptions({
  queryKey: ['webhooks'],
  queryFn: () => request(webhookList, 'GET', '/webhooks'),
  refetchInterval: LOOK_EVERY_MS,
});

export const deliveriesQuery = ({ id }: WebhookView) =>
  queryOptions({
    queryKey: ['webhooks', id, 'deliveries'],
    queryFn: () => request(webhookDeliveries, 'GET', `/webhooks/${id}/deliveries`),
    refetchInterval: LOOK_EVERY_MS,
  });

/** Marks what was fetched under the key old when an act has ended, refused or not. */
function useOld(queryKey: readonly string[]) {
  const client = useQueryClient();
  return { onSettled: () => client.invalidateQueries({ queryKey }) };
}

export function useMakeToken() {
  return useMutation({
    mutationFn: (body: NewApiToken) => request(apiTokenMade, 'POST', '/tokens', { body }),
    ...useOld(tokensQuery.queryKey),
  });
}

export function useRevokeToken({ id }: ApiTokenView) {
  return useMutation({
    mutationFn: () => request(apiTokenView, 'DELETE', `/tokens/${id}`),
    ...useOld(tokensQuery.queryKey),
  });
}

export function useAddWebhook() {
  return useMutation({
    mutationFn: (body: NewWebhook) => request(webhookAdded, 'POST', '/webhooks', { body }),
    ...useOld(webhooksQuery.queryKey),
  });
}

export function useChangeWebhook({ id, version }: WebhookView) {
  return useMutation({
    mutationFn: (body: ChangeWebhook) => request(webhookView, 'PATCH', `/webhooks/${id}`, { body, version }),
    ...useOld(webhooksQuery.queryKey),
  });
}

export function useRenewSecret({ id, version }: WebhookView) {
  return useMutation({
    mutationFn: () => request(webhookAdded, 'POST', `/webhooks/${id}/secret`, { version }),
    ...useOld(webhooksQuery.queryKey),
  });
}

export function useRemoveWebhook({ id }: WebhookView) {
  return useMutation({ mutationFn: () => send('DELETE', `/webhooks/${id}`), ...useOld(webhooksQuery.queryKey) });
}

export function useTryWebhook({ id }: WebhookView) {
  return useMutation({
    mutationFn: () => request(webhookDeliveries, 'POST', `/webhooks/${id}/trial`),
    ...useOld(webhooksQuery.queryKey),
  });
}

export function useDeliverAgain({ id }: WebhookView) {
  return useMutation({
    mutationFn: (deliveryId: number) =>
      request(webhookDeliveries, 'POST', `/webhooks/${id}/deliveries/${deliveryId}/again`),
    ...useOld(webhooksQuery.queryKey),
  });
}
