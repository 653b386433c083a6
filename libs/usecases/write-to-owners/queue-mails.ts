import { createHash } from 'node:crypto';
import type { CallbackView, PrintSettings, WriteToOwners, WrittenToOwners } from '../../contracts';
import { callbackMail } from '../../papers';
import type { Actor } from '../actor';
import { wrongNextDay } from '../attempt-callback/next-day';
import { done, refused, type Outcome } from '../outcome';
import { printSettingsOf } from '../print-papers';
import type { Ports } from '../run';
import { chooseOwners, named } from './choose-owners';

const TWICE = 'An e-mail in these very words was written already.';

/**
 * Keeps an e-mail for each of these owners, to be sent by a worker; nothing is sent here. Who has not agreed, declines
 * e-mails, has no address or was written the same already is left out and named.
 */
export async function queueMails(
  { store, clock }: Ports,
  actor: Actor,
  { ids, nextOn }: WriteToOwners,
): Promise<Outcome<WrittenToOwners>> {
  const wrong = wrongNextDay(nextOn, clock.today());
  if (wrong !== null) return refused('bad-input', wrong, { field: 'nextOn' });
  return store.transaction(async (tx) => {
    const { may, leftOut } = await chooseOwners(tx, actor, ids, 'email');
    const settings = await printSettingsOf(tx);
    const queued = new Set(
      await tx.mails.queue(
        may.map((callback) => mailOf(callback, settings)),
        actor.id,
      ),
    );
    await tx.callbacks.tryAgainOn([...queued], nextOn);
    for (const id of queued) await tx.live.tell('callback', id);
    const twice = may.filter(({ id }) => !queued.has(id)).map((callback) => ({ ...named(callback), why: TWICE }));
    const written = may.filter(({ id }) => queued.has(id)).map(named);
    return done({ batch: null, written, leftOut: [...leftOut, ...twice] });
  });
}

function mailOf(callback: CallbackView, settings: PrintSettings) {
  const mail = callbackMail(callback, settings);
  const wording = createHash('sha256')
    .update(JSON.stringify([mail.recipient, mail.subject, mail.text]))
    .digest('hex');
  return { callbackId: callback.id, wording, ...mail };
}
