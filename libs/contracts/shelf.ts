import { z } from 'zod';
import { dayText, instantText, line, reason, rowId, version } from './common';
import { partRef } from './ruling';

/** Most pieces that one act moves. */
const pieces = z.int().min(1, { error: 'expected at least 1' }).max(100_000);

/** Where a picked part came from: the shop's shelf, the unit's owner, or a shop down the road, for this ticket alone. */
export const CAME_FROM = ['shelf', 'owner', 'bought'] as const;
export const cameFrom = z.enum(CAME_FROM);
export type CameFrom = z.infer<typeof cameFrom>;

/** A ticket that holds pieces: picked for it, not fitted yet. */
export const shelfHolder = z.object({ ticketId: rowId, ticket: z.string(), pieces: z.int() });
export type ShelfHolder = z.infer<typeof shelfHolder>;

/** One part at one location, in pieces. */
export const shelfItem = z.object({
  id: rowId,
  part: partRef,
  bin: z.string(),
  onHand: z.int(),
  reserved: z.int(),
  free: z.int(),
  reorderPoint: z.int().nullable(),
  orderQuantity: z.int().nullable(),
  supplier: z.string(),
  packSize: z.int(),
  /** pieces ordered and not here yet, and the first day they are expected */
  coming: z.int(),
  expectedOn: dayText.nullable(),
  /** open tickets that wait for it */
  waiting: z.int(),
  /** bulletins that bar or end it for some units, and are not marked as seen to here */
  toPull: z.int(),
  version: z.int(),
});
export type ShelfItem = z.infer<typeof shelfItem>;

/** GET /api/shelf?q=&only=&after= : by bin, then number; keyset pages of 100. `q` is a number in any writing, a name or a bin. */
export const shelfQuery = z.object({
  q: z.string().trim().max(100).optional(),
  only: z.enum(['low', 'reserved', 'pull']).optional(),
  after: z.coerce.number().int().min(0).max(1_000_000).optional(),
});
export const shelfPage = z.object({
  kept: z.boolean(),
  total: z.int(),
  items: z.array(shelfItem),
  /** what to ask for next as `after`; null: that was all */
  next: z.int().nullable(),
});
export type ShelfPage = z.infer<typeof shelfPage>;

export const shelfMovement = z.object({
  id: rowId,
  at: instantText,
  by: z.string().nullable(),
  kind: z.string(),
  pieces: z.int(),
  reserved: z.int(),
  ticket: z.object({ id: rowId, number: z.string() }).nullable(),
  sentence: z.string(),
});
export type ShelfMovement = z.infer<typeof shelfMovement>;

export const shelfOrder = z.object({
  id: rowId,
  itemId: rowId,
  part: partRef,
  supplier: z.string(),
  pieces: z.int(),
  received: z.int(),
  expectedOn: dayText.nullable(),
  state: z.enum(['open', 'received', 'cancelled']),
  orderedAt: instantText,
  orderedBy: z.string().nullable(),
  version: z.int(),
});
export type ShelfOrder = z.infer<typeof shelfOrder>;

/** A part that a bulletin bars or ends, as far as it lies on this shelf. */
export const shelfPull = z.object({
  noticeId: rowId,
  bulletin: z.object({ id: rowId, number: z.string(), title: z.string() }),
  kind: z.enum(['barred', 'ended']),
  since: dayText.nullable(),
  stillGood: z.boolean(),
  sentences: z.array(z.string()),
  item: z.object({
    id: rowId,
    part: partRef,
    location: z.string(),
    bin: z.string(),
    onHand: z.int(),
    reserved: z.int(),
  }),
  holders: z.array(shelfHolder),
  /** 'pull 14 from C3' */
  sentence: z.string(),
  done: z.object({ at: instantText, by: z.string().nullable(), pieces: z.int(), note: z.string() }).nullable(),
});
export type ShelfPull = z.infer<typeof shelfPull>;
/** GET /api/shelf/pulls and GET /api/bulletins/:id/shelf: what is still to be done first. */
export const shelfPulls = z.array(shelfPull);

/** GET /api/shelf/items/:id: with who holds what, who waits, what is coming, and its newest movements. */
export const shelfItemDetail = shelfItem.extend({
  holders: z.array(shelfHolder),
  waits: z.array(shelfHolder.extend({ since: instantText, wokenAt: instantText.nullable() })),
  orders: z.array(shelfOrder),
  pulls: shelfPulls,
  movements: z.array(shelfMovement),
});
export type ShelfItemDetail = z.infer<typeof shelfItemDetail>;

/** What a number typed or scanned names: the part, and how many are in its bag. */
const partText = line(60).min(1, { error: 'expected a part number' });

/** POST /api/shelf/receive: so many bags or pieces. `packSize` is taken from the number's pack mark when left out. */
export const receivePart = z.object({
  partText,
  quantity: pieces.max(10_000),
  packSize: z.int().min(1).max(10_000).nullable().default(null),
  bin: line(20).nullable().default(null),
  orderId: rowId.nullable().default(null),
  note: line(200).default(''),
});
export type ReceivePart = z.infer<typeof receivePart>;

/** GET /api/shelf/stock?partText= : what the shelf has of a part before it is counted. */
export const stockQuery = z.object({ partText });
export const stockView = z.object({
  part: partRef,
  onHand: z.int(),
  reserved: z.int(),
  bin: z.string(),
  /** rises with every movement; 0 where the part has never lain here */
  version,
});
export type StockView = z.infer<typeof stockView>;

/** POST /api/shelf/count (If-Match: the version of the stock): how many pieces lie there, reserved ones among them. */
export const countPart = z.object({
  partText,
  pieces: z.int().min(0).max(1_000_000),
  bin: line(20).nullable().default(null),
  reason,
});
export type CountPart = z.infer<typeof countPart>;

/** What receiving and counting answer: the item as it stands, what to know about the part, and who was woken. */
export const shelfMoved = z.object({ item: shelfItem, sentence: z.string(), woken: z.array(z.string()) });
export type ShelfMoved = z.infer<typeof shelfMoved>;

/** PATCH /api/shelf/items/:id: a field left out stays as it is. */
export const setShelfItem = z.object({
  bin: line(20).optional(),
  reorderPoint: z.int().min(0).max(100_000).nullable().optional(),
  orderQuantity: z.int().min(1).max(100_000).nullable().optional(),
  supplier: line(100).optional(),
  packSize: z.int().min(1).max(10_000).optional(),
});
export type SetShelfItem = z.infer<typeof setShelfItem>;

/** GET /api/shelf/to-order: what has fallen to its reorder point, or a ticket waits for, by supplier. */
export const orderLine = z.object({
  itemId: rowId,
  part: partRef,
  supplier: z.string(),
  bin: z.string(),
  free: z.int(),
  coming: z.int(),
  reorderPoint: z.int().nullable(),
  orderQuantity: z.int().nullable(),
  /** pieces that open tickets wait for */
  waited: z.int(),
  packSize: z.int(),
  /** pieces to order, in whole packs */
  order: z.int(),
});
export const orderList = z.object({ lines: z.array(orderLine), open: z.array(shelfOrder) });
export type OrderList = z.infer<typeof orderList>;
export type OrderLine = z.infer<typeof orderLine>;

/** POST /api/shelf/orders: what was ordered, all together. */
export const placeOrders = z.object({
  expectedOn: dayText.nullable().default(null),
  lines: z
    .array(z.object({ itemId: rowId, pieces }))
    .min(1)
    .max(500),
});
export type PlaceOrders = z.infer<typeof placeOrders>;

/** POST /api/shelf/pulls/:noticeId: it was seen to on this shelf. */
export const markPulled = z.object({ itemId: rowId, note: line(300).default('') });
export type MarkPulled = z.infer<typeof markPulled>;

/** POST /api/tickets/:id/waits: the ticket waits for a part; DELETE ends it. */
export const waitForPart = z.object({
  position: z.string().nullable().default(null),
  partText,
  quantity: z.int().min(1).max(500),
});
export type WaitForPart = z.infer<typeof waitForPart>;

/** What the shelf says of a part on a ticket. */
export const shelfWord = z.object({
  key: z.string(),
  free: z.int(),
  onHand: z.int(),
  bin: z.string(),
  expectedOn: dayText.nullable(),
  coming: z.int(),
});
export type ShelfWord = z.infer<typeof shelfWord>;
export const partWait = z.object({
  id: rowId,
  part: partRef,
  position: z.string().nullable(),
  pieces: z.int(),
  since: instantText,
  /** when it came in; null while it is awaited */
  wokenAt: instantText.nullable(),
});
export type PartWaitView = z.infer<typeof partWait>;

/** The shelf's share of a "what if": parts a draft would bar or end that lie here. */
export const shelfShare = z.array(
  z.object({
    part: partRef,
    kind: z.enum(['barred', 'ended']),
    stillGood: z.boolean(),
    sentences: z.array(z.string()),
    location: z.string(),
    bin: z.string(),
    onHand: z.int(),
    holders: z.array(shelfHolder),
  }),
);
export type ShelfShare = z.infer<typeof shelfShare>;
