import type { PickPart, ShelfHolder } from '../../contracts';
import { done, refused, type Outcome } from '../outcome';
import type { HeldStock, PartRow, Tables, TicketRow } from '../ports/index';
import { shelfIsKept } from './shelf-is-kept';

/**
 * The stock from which a pick is served, held until the transaction ends, so that two benches cannot take the same last
 * piece. Null where nothing is taken from it: the shop keeps no shelf, or the part came from elsewhere.
 */
export async function takeFromShelf(
  tx: Tables,
  { locationId }: TicketRow,
  part: PartRow,
  { from, quantity }: Pick<PickPart, 'from' | 'quantity'>,
): Promise<Outcome<HeldStock | null>> {
  if (from !== 'shelf' || !(await shelfIsKept(tx))) return done(null);
  const stock = await tx.shelf.hold(locationId, part.id);
  const free = stock === null ? 0 : stock.onHand - stock.reserved;
  if (stock !== null && free >= quantity) return done(stock);
  const holders = stock === null ? [] : await tx.shelf.holders(stock.id);
  return refused('conflict', sayNotEnough(part.number, quantity, stock, holders), { field: 'from' });
}

/** How many there are, who holds them, and what can be done. */
export function sayNotEnough(
  number: string,
  wanted: number,
  stock: Pick<HeldStock, 'onHand' | 'reserved'> | null,
  holders: readonly ShelfHolder[],
): string {
  const what = 'Wait for it, receive it first, or say that the owner brought it or that it was bought for this ticket.';
  if (stock === null || stock.onHand === 0) return `There is no ${number} on the shelf. ${what}`;
  const { onHand, reserved } = stock;
  const who =
    reserved === 0 ? '' : `, and ${reserved} of them ${reserved === 1 ? 'is' : 'are'} held${sayHolders(holders)}`;
  const free = onHand - reserved;
  const have = `${onHand} of ${number} ${onHand === 1 ? 'lies' : 'lie'} on the shelf${who}`;
  return `${have}: ${free === 0 ? 'none is' : free === 1 ? '1 is' : `${free} are`} free, ${wanted} ${wanted === 1 ? 'is' : 'are'} wanted. ${what}`;
}

/** Which tickets hold how many, in brackets; nothing when none does. */
export function sayHolders(holders: readonly ShelfHolder[]): string {
  return holders.length === 0 ? '' : ` (${holders.map(({ ticket, pieces }) => `${pieces} for ${ticket}`).join(', ')})`;
}
