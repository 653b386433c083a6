import type { CountPart, ShelfMoved, StockView } from '../../contracts';
import type { Actor } from '../actor';
import { sayHolders, wakeWaiting } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow, SeenStock } from '../ports/index';
import type { Ports } from '../run';
import { readForShelf } from './read-for-shelf';
import { movedView, putInBin } from './receive-part';

/** What the shelf has of a part, to be seen before it is counted. */
export function stockOf({ store }: Ports, { locationId }: Actor, partText: string): Promise<Outcome<StockView>> {
  return store.transaction(async (tx) => {
    const read = await readForShelf(tx, locationId, partText);
    if (!read.ok) return read;
    const { part } = read.value;
    return done(stockView(part, await tx.shelf.stock(locationId, part.id)));
  });
}

const stockView = ({ key, number, name }: PartRow, stock: SeenStock | null): StockView => ({
  part: { key, number, name },
  onHand: stock?.onHand ?? 0,
  reserved: stock?.reserved ?? 0,
  bin: stock?.bin ?? '',
  version: stock?.version ?? 0,
});

/**
 * Sets right how many pieces there are, with a reason; the difference becomes a movement. Fewer than are reserved cannot
 * be: those lie on the benches and are counted with the rest. A count is made on the stock that was seen: what was
 * received, picked or counted since then makes it a count of something else.
 */
export function countPart(
  { store }: Ports,
  actor: Actor,
  { partText, pieces, bin, reason, version }: CountPart & { readonly version: number },
): Promise<Outcome<ShelfMoved>> {
  return store.transaction(async (tx) => {
    const { locationId } = actor;
    const read = await readForShelf(tx, locationId, partText);
    if (!read.ok) return read;
    const { part } = read.value;
    // Held before it is looked at, and made where nothing lay so far: else a bag received meanwhile were counted away.
    const stock = await tx.shelf.holdOrMake(locationId, part.id);
    const seen = await tx.shelf.stock(locationId, part.id);
    if ((seen?.version ?? 0) !== version)
      return refused('stale', `${part.number} was moved by somebody else meanwhile; count it again.`, {
        current: stockView(part, seen),
      });
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
