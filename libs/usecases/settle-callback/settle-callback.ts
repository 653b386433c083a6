import type { CallbackView, SettleCallback } from '../../contracts';
import type { Actor } from '../actor';
import { takeOpen } from '../attempt-callback/take-open';
import type { Clock } from '../clock';
import { judgeUnit } from '../judge-installs';
import { callbackView } from '../list-callbacks/list-callbacks';
import { done, refused, type Outcome } from '../outcome';
import type { CallbackHead } from '../ports/callback-store';
import type { Tables } from '../ports/store';
import type { Ports } from '../run';

const OUTCOME_WORDS: Record<Exclude<SettleCallback['outcome'], 'booked'>, string> = {
  'owner-declined': 'The owner declined',
  'part-sent': 'The part was sent to the owner',
  'unit-gone': 'The unit is no longer there',
  'done-elsewhere': 'It was put right elsewhere',
};

/**
 * Says how a callback ended. `booked` gives the unit an open ticket (or takes the one it has) and keeps the callback
 * until that ticket is handed over.
 */
export async function settleCallback(
  { store, clock }: Ports,
  actor: Actor,
  { id, version, outcome, reason }: SettleCallback & { readonly id: number; readonly version: number },
): Promise<Outcome<CallbackView>> {
  return store.transaction(async (tx) => {
    const taken = await takeOpen(tx, actor, { id, version });
    if (!taken.ok) return taken;
    if (outcome === 'booked') {
      if (taken.value.state === 'booked') return refused('already-done', 'The unit is booked in already.');
      await tx.callbacks.book(id, await ticketFor(tx, clock, actor, taken.value, reason));
    } else {
      await tx.callbacks.close(id, 'settled', `${OUTCOME_WORDS[outcome]}: ${reason}`);
    }
    await tx.live.tell('callback', id);
    return done(callbackView((await tx.callbacks.find(id))!));
  });
}

async function ticketFor(tx: Tables, clock: Clock, actor: Actor, head: CallbackHead, reason: string): Promise<number> {
  const { unitId, ownerId } = head;
  const complaint = `Callback: ${reason}`;
  await tx.units.lock(unitId);
  const opened = await tx.tickets.insert({
    locationId: actor.locationId,
    unitId,
    ownerId,
    complaint,
    promisedOn: null,
    at: clock.now(),
  });
  if (opened !== null) {
    await tx.tickets.addEvents(opened, [{ kind: 'opened', data: { complaint }, personId: actor.id }]);
    await judgeUnit(tx, clock, unitId);
    await tx.live.tell('ticket', opened);
    return opened;
  }
  return (await tx.units.openTicket(unitId))!.id;
}
