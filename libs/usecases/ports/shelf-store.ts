import type {
  OrderLine,
  PartWaitView,
  SetShelfItem,
  ShelfHolder,
  ShelfItem,
  ShelfOrder,
  ShelfPull,
  ShelfShare,
  ShelfWord,
} from '../../contracts';

/** The stock of one part at one location, held for the length of the transaction. */
export interface HeldStock {
  readonly id: number;
  readonly partId: number;
  readonly bin: string;
  readonly onHand: number;
  readonly reserved: number;
  readonly packSize: number;
}

/** What the shelf has of a part, on which version: that of its last movement, 0 before the first. */
export interface SeenStock {
  readonly bin: string;
  readonly onHand: number;
  readonly reserved: number;
  readonly version: number;
}

export type MovementKind = 'opening' | 'receive' | 'count' | 'pick' | 'return' | 'fit' | 'take-out' | 'give';

/** A change of the stock, in pieces. */
export interface NewMovement {
  readonly itemId: number;
  readonly locationId: number;
  readonly kind: MovementKind;
  readonly pieces: number;
  readonly reserved: number;
  readonly packs?: number | null;
  readonly packSize?: number | null;
  readonly reason?: string;
  readonly ticketId?: number | null;
  readonly pickId?: number | null;
  readonly orderId?: number | null;
  readonly personId: number;
}

export interface MovementRow {
  readonly id: number;
  readonly at: string;
  readonly by: string | null;
  readonly kind: MovementKind;
  readonly pieces: number;
  readonly reserved: number;
  readonly packs: number | null;
  readonly packSize: number | null;
  readonly reason: string;
  readonly ticket: { readonly id: number; readonly number: string } | null;
}

export interface ShelfFilter {
  readonly locationId: number;
  /** Part keys in the makers' own forms, for a number in any writing. */
  readonly keys: readonly string[];
  readonly text: string | null;
  readonly only: 'low' | 'reserved' | 'pull' | null;
  /** How many have been read already. */
  readonly offset: number;
  readonly limit: number;
}

/** Stock, orders and waits without what the bulletins say. */
export interface ShelfStore {
  /** The stock of the part, its row held until the transaction ends; null when the location has none of it. */
  hold(locationId: number, partId: number): Promise<HeldStock | null>;
  /** The same; an item is made when there is none. */
  holdOrMake(locationId: number, partId: number): Promise<HeldStock>;
  /** As it stands, held by nobody; null when the location has none of it. */
  stock(locationId: number, partId: number): Promise<SeenStock | null>;
  addMovement(movement: NewMovement): Promise<void>;
  /**
   * Brings the stock in step with the states of the ticket's picks: what lies on the bench is reserved, what is fitted
   * or given is gone, what is returned is free again. Picks that took nothing from the shelf move nothing. Answers the
   * parts of which more is free now.
   */
  followPicks(ticketId: number, personId: number | null): Promise<readonly number[]>;
  holders(itemId: number): Promise<readonly ShelfHolder[]>;
  list(filter: ShelfFilter): Promise<{ readonly total: number; readonly items: readonly ShelfItem[] }>;
  item(locationId: number, id: number): Promise<ShelfItem | null>;
  itemOfPart(locationId: number, partId: number): Promise<ShelfItem | null>;
  /** Newest first. */
  movements(itemId: number, limit: number): Promise<readonly MovementRow[]>;
  /** Sets what is given; false when the version has moved on. */
  set(id: number, version: number, change: SetShelfItem): Promise<boolean>;
  /** What the shelf has of some parts. */
  words(locationId: number, partKeys: readonly string[]): Promise<readonly ShelfWord[]>;
}

export interface NewOrder {
  readonly itemId: number;
  readonly pieces: number;
}

export interface OrderStore {
  /** Items at or below their reorder point once what is coming is counted in, or that tickets wait for. */
  toOrder(locationId: number): Promise<readonly Omit<OrderLine, 'order'>[]>;
  ofItem(itemId: number): Promise<readonly ShelfOrder[]>;
  open(locationId: number): Promise<readonly ShelfOrder[]>;
  find(locationId: number, id: number): Promise<ShelfOrder | null>;
  /** Adds an order for each item of the location; the others are passed over. Answers how many. */
  place(locationId: number, orders: readonly NewOrder[], expectedOn: string | null, personId: number): Promise<number>;
  /** Counts what came in towards the order, or, where none is named, towards the oldest open ones. */
  receive(itemId: number, orderId: number | null, pieces: number): Promise<void>;
  /** False when its version has moved on, or it is not open. */
  cancel(id: number, version: number): Promise<boolean>;
}

export interface WaitStore {
  ofTicket(ticketId: number): Promise<readonly PartWaitView[]>;
  ofItem(itemId: number): Promise<readonly (ShelfHolder & { since: string; wokenAt: string | null })[]>;
  /** Waits, or waits for so many; one wait per ticket and part. */
  put(
    ticketId: number,
    wait: { locationId: number; partId: number; positionId: number | null; pieces: number },
    personId: number,
  ): Promise<void>;
  end(ticketId: number, id: number): Promise<boolean>;
  /** The ticket has what it waited for. */
  endFor(ticketId: number, partIds: readonly number[] | null): Promise<void>;
  /** Wakes who waits for these parts, in the order in which they began to, as far as what is free reaches. */
  wake(
    locationId: number,
    partIds: readonly number[],
  ): Promise<readonly { ticketId: number; ticket: string; part: string; pieces: number; bin: string }[]>;
}

/** A part that a bulletin bars or ends. */
export interface NewNotice {
  readonly partId: number;
  readonly kind: 'barred' | 'ended';
  /** `YYYY-MM-DD`; null: at once. */
  readonly since: string | null;
  readonly stillGood: boolean;
  readonly sentences: readonly string[];
}

export interface NoticeStore {
  add(sourceId: number, notices: readonly NewNotice[]): Promise<void>;
  /** What lies on shelves of it; `locationId` null: everywhere. Still to be done first. */
  pulls(about: {
    locationId: number | null;
    sourceId?: number;
    itemId?: number;
    noticeId?: number;
  }): Promise<readonly Omit<ShelfPull, 'sentence'>[]>;
  /** False when it was marked already. */
  markPulled(noticeId: number, itemId: number, note: string, personId: number): Promise<boolean>;
  /** What lies on any shelf of some parts. */
  share(
    partIds: readonly number[],
  ): Promise<
    readonly (Pick<ShelfShare[number], 'part' | 'location' | 'bin' | 'onHand' | 'holders'> & { partId: number })[]
  >;
}
