import type { CountPart, ShelfMoved } from '../../contracts';
import type { Actor } from '../actor';
import { sayHolders, wakeWaiting } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { readForShelf } from './read-for-shelf';
import { movedView, putInBin } from './receive-part';

/**
 * Sets right how many pieces there are, with a reason; the difference becomes a movement. Fewer than are reserved cannot
 * be: those lie on the benches and are counted with the rest.
 */
export function countPart(
  { store }: Ports,
  actor: Actor,
  { partText, pieces, bin, reason }: CountPart,
): Promise<Outcome<ShelfMoved>> {
  return store.transaction(async (tx) => {
    const { locationId } = actor;
    const read = await readForShelf(tx, locationId, partText);
    if (!read.ok) return read;
    const { part } = read.value;
    const stock = await tx.shelf.holdOrMake(locationId, part.id);
    if (pieces < stock.reserved) {
      const held = sayHolders(await tx.shelf.holders(stock.id));
      const detail = `${stock.reserved} of ${part.number} are reserved${held}, so there cannot be only ${pieces}; return what is not there first.`;
      return refused('conflict', detail, { field: 'pieces' });
    }
    const difference = pieces - stock.onHand;
    const about = { itemId: stock.id, locationId, reserved: 0, personId: actor.id };
    await tx.shelf.addMovement({ ...about, kind: 'count', pieces: difference, reason });
    if (bin !== null) await putInBin(tx, locationId, stock.id, bin);
    const woken = difference > 0 ? await wakeWaiting(tx, locationId, [part.id], actor.id) : [];
    const change = difference === 0 ? 'as it was' : difference > 0 ? `${difference} more` : `${-difference} fewer`;
    return done(await movedView(tx, actor, part, `Counted ${part.number}, ${change}`, woken));
  });
}
