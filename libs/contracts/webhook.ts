import { z } from 'zod';
import { instantText, rowId } from './common';

/** What another program can be told of, by the event's name, and when that is. */
export const WEBHOOK_EVENTS = {
  'flag.raised': 'a flag is raised on a ticket',
  'flag.closed': 'a flag is accepted, sent back or cleared',
  'callback.opened': 'an owner is to be called',
  'callback.closed': 'a callback is done, declined or withdrawn',
  'recheck.finished': 'a recheck has judged everything it was to judge',
} as const;
export type WebhookEventType = keyof typeof WEBHOOK_EVENTS;
export const WEBHOOK_EVENT_TYPES = Object.keys(WEBHOOK_EVENTS) as WebhookEventType[];

const eventType = z.enum(WEBHOOK_EVENT_TYPES, { error: `expected events of ${WEBHOOK_EVENT_TYPES.join(', ')}` });
const events = z
  .array(eventType)
  .min(1, { error: 'expected at least one event' })
  .transform((all) => [...new Set(all)]);
const url = z
  .url({ protocol: /^https?$/, error: 'expected an address that starts with https://' })
  .max(2_000)
  .refine((text) => URL.canParse(text) && !new URL(text).username && !new URL(text).password && !new URL(text).hash, {
    error: 'expected an address without a name, a password or a part behind #',
  });

/** An address that is told of events. */
export const webhookView = z.object({
  id: rowId,
  url: z.string(),
  events: z.array(eventType),
  active: z.boolean(),
  createdAt: instantText,
  createdBy: z.string().nullable(),
  /** events on their way, those between two tries too */
  waiting: z.int(),
  /** events that were given up after about a day */
  setAside: z.int(),
  version: z.int(),
});
export type WebhookView = z.infer<typeof webhookView>;

/** GET /api/webhooks */
export const webhookList = z.array(webhookView);
export type WebhookList = z.infer<typeof webhookList>;

/** POST /api/webhooks */
export const newWebhook = z.object({ url, events });
export type NewWebhook = z.infer<typeof newWebhook>;

/** What adding one, and renewing its secret, answer: what its events are signed with, shown this once. */
export const webhookAdded = z.object({ webhook: webhookView, secret: z.string() });
export type WebhookAdded = z.infer<typeof webhookAdded>;

/** PATCH /api/webhooks/:id (If-Match): a field left out stays; what waits for an inactive one goes on once it is active. */
export const changeWebhook = z.object({
  url: url.optional(),
  events: events.optional(),
  active: z.boolean().optional(),
});
export type ChangeWebhook = z.infer<typeof changeWebhook>;

/** One event on its way to one address, or at its end. */
export const webhookDelivery = z.object({
  id: rowId,
  /** the `webhook-id` it is sent with, at every try the same */
  eventId: z.string(),
  type: z.string(),
  at: instantText,
  state: z.enum(['waiting', 'sending', 'delivered', 'set-aside']),
  tries: z.int(),
  /** of a waiting one */
  nextTryAt: instantText.nullable(),
  /** status of the last answer; null when there was none */
  status: z.int().nullable(),
  /** why the last try was not taken, in a sentence */
  problem: z.string().nullable(),
  endedAt: instantText.nullable(),
});
export type WebhookDelivery = z.infer<typeof webhookDelivery>;

/** GET /api/webhooks/:id/deliveries: the last hundred, newest first; those that were set aside before all others. */
export const webhookDeliveries = z.array(webhookDelivery);
export type WebhookDeliveries = z.infer<typeof webhookDeliveries>;

/**
 * What is posted to the address. Ids and words of this program alone, nothing about a person: who may know more asks the
 * API for it, with a token.
 */
export const webhookPayload = z.object({
  type: z.union([eventType, z.literal('trial')]),
  timestamp: instantText,
  data: z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()])),
});
export type WebhookPayload = z.infer<typeof webhookPayload>;
