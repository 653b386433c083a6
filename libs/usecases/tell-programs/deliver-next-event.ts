import type { Courier, DueDelivery, Seals } from '../ports/index';
import type { Ports } from '../run';
import { signedHeaders } from './sign-event';

/** Longer than any receiver is waited for. */
const LEASE_SECONDS = 60;
const [MINUTE, HOUR] = [60, 3_600];
/** How long after each failed try the next one is made, in seconds: a day in all, most of it for somebody to come in. */
const WAITS = [5, 30, 2 * MINUTE, 10 * MINUTE, 30 * MINUTE, HOUR, 2 * HOUR, 4 * HOUR, 8 * HOUR, 8 * HOUR];
const KEPT_DAYS = 30;

/** What the secret of a webhook is sealed as being about. */
export const aboutWebhook = (id: number): string => `webhook ${id}`;

/**
 * Posts one event whose time has come; false when there is none. It is posted until the receiver answers with a status of
 * the two hundreds, so it can arrive more than once, each time with the same id; and those after it need not wait for
 * it. After about a day of failures it is set aside, and goes on when somebody says so.
 */
export async function deliverNextEvent(
  { store, clock, seals }: Ports & { readonly seals: Seals },
  courier: Courier,
): Promise<boolean> {
  const due = await store.webhooks.claim(LEASE_SECONDS);
  if (!due) return false;
  const secret = seals.open(due.sealed, aboutWebhook(due.webhookId));
  if (secret === null) {
    await fail(
      store,
      due,
      null,
      'Its secret was sealed under another REVRIGHT_KEY; remove the webhook and add it anew.',
    );
    return true;
  }
  const body = JSON.stringify(due.payload);
  const headers = signedHeaders(secret, { id: `evt_${due.eventId}`, second: Math.floor(clock.now() / 1_000), body });
  const answer = await courier.post(due.url, body, headers);
  if (answer.kind === 'failed') await fail(store, due, null, answer.why);
  else if (answer.status >= 200 && answer.status < 300) await store.webhooks.delivered(due, answer.status);
  else await fail(store, due, answer.status, sayStatus(answer.status));
  return true;
}

/** Forgets events that ended a month ago. */
export function forgetOldEvents({ store }: Pick<Ports, 'store'>): Promise<void> {
  return store.webhooks.forgetOld(KEPT_DAYS);
}

const fail = (store: Ports['store'], due: DueDelivery, status: number | null, why: string): Promise<void> =>
  store.webhooks.failed(due, status, why, WAITS[due.tries - 1] ?? null);

function sayStatus(status: number): string {
  if (status >= 300 && status < 400)
    return `The receiver answered ${status} and sent us elsewhere; register the address it stands for, since none is followed.`;
  return `The receiver answered ${status}; a status from 200 to 299 is expected.`;
}
