import type { ReceivePart, ShelfMoved } from '../../contracts';
import type { Actor } from '../actor';
import { wakeWaiting } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow, Tables } from '../ports/index';
import type { Ports } from '../run';
import { readForShelf } from './read-for-shelf';

/**
 * Puts pieces on the shelf. A bag is so many pieces of the same part: as the number's pack mark says, or as typed. What
 * was ordered counts as come in, who waits for the part is woken, and what a bulletin says against it is said at once.
 */
export function receivePart(
  { store }: Ports,
  actor: Actor,
  { partText, quantity, packSize, bin, orderId, note }: ReceivePart,
): Promise<Outcome<ShelfMoved>> {
  return store.transaction(async (tx) => {
    const { locationId } = actor;
    const read = await readForShelf(tx, locationId, partText);
    if (!read.ok) return read;
    const { part, pack } = read.value;
    const stock = await tx.shelf.holdOrMake(locationId, part.id);
    const order = orderId === null ? null : await tx.orders.find(locationId, orderId);
    if (orderId !== null && (order?.itemId !== stock.id || order.state !== 'open')) {
      return refused('conflict', `There is no open order ${orderId} of ${part.number} here.`, { field: 'orderId' });
    }
    const size = packSize ?? pack;
    const pieces = quantity * size;
    await tx.shelf.addMovement({
      itemId: stock.id,
      locationId,
      kind: 'receive',
      pieces,
      reserved: 0,
      ...(size > 1 ? { packs: quantity, packSize: size } : {}),
      reason: note,
      orderId,
      personId: actor.id,
    });
    await tx.orders.receive(stock.id, orderId, pieces);
    if (bin !== null) await putInBin(tx, locationId, stock.id, bin);
    const woken = await wakeWaiting(tx, locationId, [part.id], actor.id);
    return done(await movedView(tx, actor, part, `Received ${pieces} of ${part.number}`, woken));
  });
}

/** The bin is where it was put last. */
export async function putInBin(tx: Tables, locationId: number, itemId: number, bin: string): Promise<void> {
  const item = await tx.shelf.item(locationId, itemId);
  if (item && item.bin !== bin) await tx.shelf.set(itemId, item.version, { bin });
}

/** The item as it stands, with what was done in a sentence that warns where a bulletin speaks against the part. */
export async function movedView(
  tx: Tables,
  { locationId }: Actor,
  part: PartRow,
  what: string,
  woken: readonly string[],
): Promise<ShelfMoved> {
  const item = (await tx.shelf.itemOfPart(locationId, part.id))!;
  const [notice] = (await tx.notices.pulls({ locationId, itemId: item.id })).filter(({ done: seen }) => seen === null);
  const where = item.bin === '' ? '' : ` in ${item.bin}`;
  const warning = notice
    ? ` Bulletin ${notice.bulletin.number}: ${notice.sentences[0] ?? 'it is no longer right everywhere.'}`
    : '';
  const wakes = woken.length === 0 ? '' : ` ${woken.join(', ')} waited for it.`;
  await tx.live.tell('shelf', item.id);
  return {
    item,
    sentence: `${what}: ${item.onHand} on hand${where}, ${item.free} free.${wakes}${warning}`,
    woken: [...woken],
  };
}
