import type { DemoLine, DemoPart, DemoShelfItem, DemoTicket } from '../demo-shop';
import { makeChance, type Chance } from '../prng';
import { locations, type LocationCode } from '../shop/people';

const SUPPLIERS: Readonly<Record<string, string>> = {
  BRAKEN: 'Braken parts counter',
};
const USUAL_SUPPLIER = 'Landvik wholesale';

/** The plain auger pins that the kept bulletin bars: as one finds them before it is published. */
const KEPT = { part: '30-1127', bin: 'C3', free: 14 };

/**
 * What lies on the shelves of both locations: everything that rules speak of, and most sundries. The opening count is
 * what is free today and what open tickets took since; some items have fallen to their reorder points. A chance of its
 * own, so that the rest of the shop stays what it is.
 */
export function makeShelf(
  seed: number,
  lines: readonly DemoLine[],
  parts: readonly DemoPart[],
  tickets: readonly DemoTicket[],
): DemoShelfItem[] {
  const chance = makeChance(seed + 77);
  const ruled = new Set(lines.flatMap(({ positions }) => positions.flatMap((position) => [...position.parts])));
  const taken = takenByOpenTickets(tickets);
  return locations.flatMap(({ code: location }, at) =>
    parts.flatMap((part, index) => {
      const isRuled = ruled.has(part.key);
      if (!isRuled && chance.happens(at === 0 ? 0.2 : 0.5)) return [];
      const free = part.number === KEPT.part && at === 0 ? KEPT.free : freeOf(part, isRuled, chance);
      const packSize = part.fastener === null ? 1 : chance.oneOf([1, 5, 10]);
      const reorderPoint = isRuled ? chance.oneOf([4, 6, 8, 10]) : chance.happens(0.3) ? 2 : null;
      return [
        {
          location,
          part: part.key,
          bin: part.number === KEPT.part && at === 0 ? KEPT.bin : binOf(index, at),
          opening: free + (taken.get(`${location} ${part.key}`) ?? 0),
          received: free > 2 * packSize ? packSize * chance.whole(1, 2) : 0,
          packSize,
          reorderPoint,
          orderQuantity: reorderPoint === null ? null : packSize * Math.ceil((reorderPoint * 2) / packSize),
          supplier: SUPPLIERS[part.maker] ?? USUAL_SUPPLIER,
        },
      ];
    }),
  );
}

function freeOf({ fastener }: DemoPart, isRuled: boolean, chance: Chance): number {
  if (!isRuled) return chance.whole(0, 4);
  return fastener === null ? chance.whole(8, 14) : chance.whole(9, 40);
}

/** Racks by letter, bins by number, in the order of the catalogue. */
function binOf(index: number, at: number): string {
  const rack = String.fromCharCode(65 + (Math.floor(index / 24) % 12) + at * 12);
  return `${rack}${1 + (Math.floor(index / 3) % 8)}`;
}

/** Pieces by location and part. */
function takenByOpenTickets(tickets: readonly DemoTicket[]): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  const open = tickets.filter(({ closedAt }) => closedAt === null);
  for (const { location, picks } of open) {
    for (const { part, quantity, state } of picks) {
      if (state === 'returned') continue;
      const key = `${location satisfies LocationCode} ${part}`;
      taken.set(key, (taken.get(key) ?? 0) + quantity);
    }
  }
  return taken;
}
