import type {
  ChangeWebhook,
  NewWebhook,
  WebhookAdded,
  WebhookDeliveries,
  WebhookList,
  WebhookView,
} from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Courier, Seals, Tables } from '../ports/index';
import type { Ports } from '../run';
import { aboutWebhook } from './deliver-next-event';
import { newWebhookSecret } from './sign-event';

const SHOWN = 100;

/** Every address that is told of events. */
export async function listWebhooks({ store }: Pick<Ports, 'store'>): Promise<WebhookList> {
  return [...(await store.webhooks.list())];
}

/** Adds an address; what its events are signed with is answered this once and kept sealed. */
export async function addWebhook(
  { store, seals, courier }: Pick<Ports, 'store'> & { readonly seals: Seals; readonly courier: Courier },
  actor: Actor,
  { url, events }: NewWebhook,
): Promise<Outcome<WebhookAdded>> {
  const why = courier.whyNot(url);
  if (why !== null) return refused('bad-input', `url: ${why}`, { field: 'url' });
  const secret = newWebhookSecret();
  return store.transaction(async (tx) => {
    const id = await tx.webhooks.insert({ url, events, personId: actor.id });
    await tx.webhooks.seal(id, seals.seal(secret, aboutWebhook(id)));
    return done({ webhook: (await tx.webhooks.byId(id))!, secret });
  });
}

/** Changes where to, what of, or whether an address is told. */
export async function changeWebhook(
  { store, courier }: Pick<Ports, 'store'> & { readonly courier: Courier },
  { id, version, ...patch }: ChangeWebhook & { readonly id: number; readonly version: number },
): Promise<Outcome<WebhookView>> {
  const why = patch.url === undefined ? null : courier.whyNot(patch.url);
  if (why !== null) return refused('bad-input', `url: ${why}`, { field: 'url' });
  return store.transaction(async (tx) => {
    const webhook = await tx.webhooks.byId(id);
    if (!webhook) return refused('not-found', `There is no webhook ${id}.`);
    if (!(await tx.webhooks.change(id, version, patch))) return changedMeanwhile(tx, webhook);
    return done((await tx.webhooks.byId(id))!);
  });
}

/**
 * Signs with another secret from now on, also what is already on its way; it is answered this once. The one before
 * signs nothing any more, so what its receiver does not know yet is refused there and tried again for about a day.
 */
export async function renewWebhookSecret(
  { store, seals }: Pick<Ports, 'store'> & { readonly seals: Seals },
  { id, version }: { readonly id: number; readonly version: number },
): Promise<Outcome<WebhookAdded>> {
  const secret = newWebhookSecret();
  return store.transaction(async (tx) => {
    const webhook = await tx.webhooks.byId(id);
    if (!webhook) return refused('not-found', `There is no webhook ${id}.`);
    if (!(await tx.webhooks.renewSecret(id, version, seals.seal(secret, aboutWebhook(id)))))
      return changedMeanwhile(tx, webhook);
    return done({ webhook: (await tx.webhooks.byId(id))!, secret });
  });
}

async function changedMeanwhile(tx: Tables, seen: WebhookView): Promise<Outcome<never>> {
  return refused('stale', `Webhook ${seen.id} was changed meanwhile; look again.`, {
    current: (await tx.webhooks.byId(seen.id)) ?? seen,
  });
}

/** Removes an address with all that was on its way to it. */
export async function removeWebhook({ store }: Pick<Ports, 'store'>, id: number): Promise<Outcome<null>> {
  return store.transaction(async (tx) =>
    (await tx.webhooks.remove(id)) ? done(null) : refused('not-found', `There is no webhook ${id}.`),
  );
}

/** The last events for an address, those set aside first. */
export async function listDeliveries({ store }: Pick<Ports, 'store'>, id: number): Promise<Outcome<WebhookDeliveries>> {
  if (!(await store.webhooks.byId(id))) return refused('not-found', `There is no webhook ${id}.`);
  return done([...(await store.webhooks.deliveries(id, SHOWN))]);
}

/** Sends a trial event to an address, signed as any other. */
export async function tryWebhook({ store }: Pick<Ports, 'store'>, id: number): Promise<Outcome<WebhookDeliveries>> {
  const webhook = await store.webhooks.byId(id);
  if (!webhook) return refused('not-found', `There is no webhook ${id}.`);
  if (!webhook.active) return refused('conflict', `Webhook ${id} is switched off; switch it on first.`);
  if (!(await store.webhooks.tryOut(id))) return refused('not-found', `There is no webhook ${id}.`);
  return listDeliveries({ store }, id);
}

/** Sends an event again that was delivered or set aside, with the same id. */
export async function deliverAgain(
  { store }: Pick<Ports, 'store'>,
  { id, deliveryId }: { readonly id: number; readonly deliveryId: number },
): Promise<Outcome<WebhookDeliveries>> {
  const known = (await store.webhooks.byId(id)) !== null;
  if (!known || !(await store.webhooks.again(id, deliveryId)))
    return refused('not-found', `Webhook ${id} has no event ${deliveryId} that was delivered or set aside.`);
  return listDeliveries({ store }, id);
}
