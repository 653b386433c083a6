import type { ChangePhoto, RemovePhoto, TicketView } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/index';
import type { Ports } from '../run';
import { viewTicket } from '../view-ticket/index';
import { openTicketAt } from './take-photo';

/** Which photo of which ticket, and the version the person saw. */
interface OnPhoto {
  readonly id: number;
  readonly photoId: number;
  readonly version: number;
}

/** Changes what stands under a photo, and whether the owner's sheet shows it. */
export function changePhoto(
  ports: Ports,
  actor: Actor,
  { id, photoId, version, ...patch }: OnPhoto & ChangePhoto,
): Promise<Outcome<TicketView>> {
  return onOpenTicket(ports, actor, { id, photoId, version }, (tx) => tx.photos.change(id, photoId, version, patch));
}

/** Takes a photo away with a reason: the pictures are gone, that there was one stays in the history. */
export function removePhoto(
  ports: Ports,
  actor: Actor,
  { id, photoId, version, reason }: OnPhoto & RemovePhoto,
): Promise<Outcome<TicketView>> {
  return onOpenTicket(ports, actor, { id, photoId, version }, async (tx) => {
    const removed = await tx.photos.remove(id, photoId, version, reason, actor.id);
    if (removed) await tx.tickets.addEvents(id, [{ kind: 'photo-removed', data: { reason }, personId: actor.id }]);
    return removed;
  });
}

async function onOpenTicket(
  ports: Ports,
  actor: Actor,
  { id, photoId }: OnPhoto,
  act: (tx: Tables) => Promise<boolean>,
): Promise<Outcome<TicketView>> {
  const acted = await ports.store.transaction(async (tx): Promise<Outcome<null>> => {
    const open = await openTicketAt(tx, actor, id);
    if (!open.ok) return open;
    if (!(await tx.photos.ofTicket(id)).some((photo) => photo.id === photoId))
      return refused('not-found', `The ticket has no photo ${photoId}.`);
    if (!(await act(tx))) return refused('stale', 'The photo was changed by somebody else meanwhile; look again.');
    await tx.live.tell('ticket', id);
    return done(null);
  });
  const present = await viewTicket(ports, actor, id);
  if (acted.ok || acted.refusal.code !== 'stale' || !present.ok) return acted.ok ? present : acted;
  return { ok: false, refusal: { ...acted.refusal, current: present.value } };
}

/** A picture by its name, for those who may read the ticket it belongs to. */
export async function viewPhoto(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { name, size }: { readonly name: string; readonly size: 'full' | 'thumb' },
): Promise<Outcome<Uint8Array>> {
  const file = await store.photos.file(name, size);
  const sight = sightOf(actor);
  if (!file || (sight !== null && file.locationId !== sight)) return refused('not-found', 'There is no such photo.');
  return done(file.data);
}
