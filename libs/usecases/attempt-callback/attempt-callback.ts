import type { CallbackView, NewAttempt } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import { callbackView } from '../list-callbacks/list-callbacks';
import type { Ports } from '../run';
import { wrongNextDay } from './next-day';
import { takeOpen } from './take-open';

/** Writes down a try to reach the owner. */
export async function attemptCallback(
  { store, clock }: Ports,
  actor: Actor,
  { id, version, ...attempt }: NewAttempt & { readonly id: number; readonly version: number },
): Promise<Outcome<CallbackView>> {
  const wrong = wrongNextDay(attempt.nextOn, clock.today());
  if (wrong !== null) return refused('bad-input', wrong, { field: 'nextOn' });
  return store.transaction(async (tx) => {
    const taken = await takeOpen(tx, actor, { id, version });
    if (!taken.ok) return taken;
    await tx.callbacks.addAttempt(id, attempt, actor.id);
    await tx.live.tell('callback', id);
    return done(callbackView((await tx.callbacks.find(id))!));
  });
}
