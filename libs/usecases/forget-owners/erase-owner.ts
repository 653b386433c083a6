import type { PersonalData } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/store';
import type { ErasableOwner } from '../ports/personal-data-store';
import type { Ports } from '../run';

/**
 * Erases what is known of an owner, on request. While the machine is in the shop, or a stop use is to be called about,
 * the person must be reachable, and it is refused. Once erased there is nothing left to erase.
 */
export async function eraseOwner(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { id, version, reason }: { readonly id: number; readonly version: number; readonly reason: string },
): Promise<Outcome<PersonalData>> {
  return store.transaction(async (tx) => {
    const sight = sightOf(actor);
    const owner = await tx.personal.lock(id, sight);
    if (!owner) return refused('not-found', `There is no owner ${id}.`);
    const why = whyNot(owner);
    if (why !== null) return refused('conflict', why, { current: await tx.personal.of(id, sight) });
    if (owner.version !== version)
      return refused('stale', 'The owner was changed by somebody else meanwhile; look again.', {
        current: await tx.personal.of(id, sight),
      });
    await forget(tx, id, reason, actor.id);
    return done((await tx.personal.of(id, sight))!);
  });
}

/** Why what is known of the owner must stay for now; null when it may go. */
export function whyNot({ erased, openTicket, urgentCall }: ErasableOwner): string | null {
  if (erased) return 'What was known of this owner is erased already.';
  if (openTicket !== null) return `The owner's unit is in the shop, on ticket ${openTicket}; close that first.`;
  if (urgentCall) return 'A call about a stop use waits for this owner; make it, or settle it, first.';
  return null;
}

/** Erases, and says so in the history of the owner's tickets. */
export async function forget(tx: Tables, ownerId: number, reason: string, personId: number | null): Promise<void> {
  const kept = await tx.personal.of(ownerId, null);
  await tx.personal.erase(ownerId);
  for (const ticket of kept?.tickets ?? [])
    await tx.tickets.addEvents(ticket.id, [{ kind: 'owner-erased', data: { reason }, personId }]);
}
