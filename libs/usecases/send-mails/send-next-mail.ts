import { whyNotWritten } from '../../papers';
import { callbackView } from '../list-callbacks/list-callbacks';
import type { Mailer, WaitingMail } from '../ports/mail';
import type { Ports } from '../run';

/** Longer than any mail server is waited for. */
const LEASE_SECONDS = 180;
const MOST_TRIES = 10;
const LONGEST_WAIT_SECONDS = 6 * 3_600;
const DIED = 'The program ended while it was being sent; whether it arrived is not known, and it is not sent again.';

/**
 * Sends one mail whose time has come; false when there is none. Before it goes, the owner's word is looked at once more.
 * A mail is marked before it is handed over and never handed over again unless the server certainly did not take it: at
 * most one arrives, and one of which nobody knows is shown as such.
 */
export async function sendNextMail({ store }: Pick<Ports, 'store'>, mailer: Mailer): Promise<boolean> {
  await store.mails.markUnclear(DIED);
  const mail = await store.mails.claim(LEASE_SECONDS);
  if (!mail) return false;
  const callback = await store.callbacks.find(mail.callbackId);
  const why = callback ? whyNotWritten(callbackView(callback), 'email') : 'The callback is gone.';
  if (why !== null) {
    await store.mails.end(mail.id, 'cancelled', why);
  } else {
    await handOver(store, mailer, mail);
  }
  await store.transaction((tx) => tx.live.tell('callback', mail.callbackId));
  return true;
}

async function handOver(store: Ports['store'], mailer: Mailer, mail: WaitingMail): Promise<void> {
  const answer = await mailer.send({ ...mail, id: `callback-${mail.callbackId}-${mail.id}` });
  switch (answer.kind) {
    case 'sent':
      return store.transaction(async (tx) => {
        await tx.mails.end(mail.id, 'sent', null);
        await tx.callbacks.addSentMail(mail.callbackId, mail.queuedBy);
      });
    case 'refused':
      return store.mails.end(mail.id, 'failed', answer.why);
    case 'unclear':
      return store.mails.end(mail.id, 'unclear', answer.why);
    case 'later':
      if (mail.tries >= MOST_TRIES) return store.mails.end(mail.id, 'failed', answer.why);
      return store.mails.later(mail.id, Math.min(LONGEST_WAIT_SECONDS, 30 * 2 ** mail.tries), answer.why);
  }
}
