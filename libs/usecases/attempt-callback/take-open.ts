import { sightOf, type Actor } from '../actor';
import { callbackView } from '../list-callbacks/list-callbacks';
import { done, refused, type Outcome } from '../outcome';
import type { CallbackHead } from '../ports/callback-store';
import type { Tables } from '../ports/store';

/** Locks a callback that is open or booked and still at this version; refuses with its present state otherwise. */
export async function takeOpen(
  tx: Tables,
  actor: Actor,
  { id, version }: { readonly id: number; readonly version: number },
): Promise<Outcome<CallbackHead>> {
  const head = (await tx.callbacks.isAt(id, sightOf(actor))) ? await tx.callbacks.lock(id) : null;
  if (!head) return refused('not-found', 'There is no callback with this number.');
  const current = async () => ({ current: callbackView((await tx.callbacks.find(id))!) });
  if (head.version !== version) return refused('stale', 'The callback was changed meanwhile.', await current());
  if (head.state !== 'open' && head.state !== 'booked')
    return refused('already-done', `The callback is ${head.state} already.`, await current());
  return done(head);
}
