import type { ChangeWebhook, WebhookDelivery, WebhookEventType, WebhookPayload, WebhookView } from '../../contracts';

/** An event that is to be posted now. */
export interface DueDelivery {
  readonly id: number;
  readonly webhookId: number;
  readonly url: string;
  /** What it is signed with, sealed. */
  readonly sealed: string;
  readonly eventId: number;
  readonly payload: WebhookPayload;
  /** How often it was posted, this time included. */
  readonly tries: number;
}

export interface WebhookStore {
  list(): Promise<readonly WebhookView[]>;
  byId(id: number): Promise<WebhookView | null>;
  /** The new id; the secret is put beside it with {@link seal}. */
  insert(webhook: {
    readonly url: string;
    readonly events: readonly WebhookEventType[];
    readonly personId: number;
  }): Promise<number>;
  seal(id: number, sealed: string): Promise<void>;
  /** Every secret as it is sealed, by webhook. */
  sealed(): Promise<readonly { readonly id: number; readonly sealed: string }[]>;
  /** Keeps a secret under another seal; false when it is no longer the one that was read. */
  reseal(id: number, was: string, sealed: string): Promise<boolean>;
  /** False when the version is no longer the webhook's. */
  change(id: number, version: number, patch: ChangeWebhook): Promise<boolean>;
  /** Keeps another secret from now on; false when the version is no longer the webhook's. */
  renewSecret(id: number, version: number, sealed: string): Promise<boolean>;
  /** With all that was on its way to it; false when there is none. */
  remove(id: number): Promise<boolean>;
  /** An event of the kind `trial` for this one alone; false when there is none any more. */
  tryOut(id: number): Promise<boolean>;
  deliveries(id: number, most: number): Promise<readonly WebhookDelivery[]>;
  /** Puts one back to be posted now, with all its tries before it; false when there is none at its end. */
  again(id: number, deliveryId: number): Promise<boolean>;
  /**
   * Takes the next one whose time has come, and lends it for so long. At most two are lent for one address, and none
   * while it is left in peace after a failure, so that a receiver that hangs keeps no other waiting.
   */
  claim(leaseSeconds: number): Promise<DueDelivery | null>;
  delivered(due: DueDelivery, status: number): Promise<void>;
  /** Not taken: tried again after so many seconds, or set aside when that is null. */
  failed(due: DueDelivery, status: number | null, problem: string, afterSeconds: number | null): Promise<void>;
  /** Forgets events older than so many days that are not on their way any more. */
  forgetOld(days: number): Promise<void>;
}
