import type { CallbackPage, CallbackView, NewAttempt } from '../../contracts';

export interface CallbackQuery {
  readonly state: 'open' | 'booked' | 'settled' | 'withdrawn' | 'closed' | 'all';
  readonly urgentOnly: boolean;
  readonly after: string | null;
  readonly limit: number;
  /** Only owners of this location; null is every location. */
  readonly locationId: number | null;
}

export interface CallbackHead {
  readonly id: number;
  readonly unitId: number;
  readonly ownerId: number;
  readonly state: 'open' | 'booked' | 'settled' | 'withdrawn';
  readonly ticketId: number | null;
  readonly version: number;
}

/** A callback as the store knows it; what to say on the phone is made from it. */
export type CallbackRecord = Omit<CallbackView, 'say'>;

export interface CallbackPageRecord extends Omit<CallbackPage, 'items'> {
  readonly items: readonly CallbackRecord[];
}

export interface CallbackStore {
  page(query: CallbackQuery): Promise<CallbackPageRecord>;
  find(id: number): Promise<CallbackRecord | null>;
  /** The unit's callback that is open or booked. */
  openOf(unitId: number): Promise<CallbackRecord | null>;
  /** True when the callback is for an owner of the location; null is any location. */
  isAt(id: number, locationId: number | null): Promise<boolean>;
  /** Locked until the transaction ends. */
  lock(id: number): Promise<CallbackHead | null>;
  /** The unit's callback that is open or booked, locked. */
  lockOfUnit(unitId: number): Promise<CallbackHead | null>;
  addAttempt(id: number, attempt: NewAttempt, personId: number): Promise<void>;
  book(id: number, ticketId: number): Promise<void>;
  close(id: number, state: 'settled' | 'withdrawn', why: string): Promise<void>;
  /** Opens a callback for the unit, or adds to the one that is open; answers its id. */
  order(order: {
    readonly unitId: number;
    readonly positionId: number;
    readonly place: number;
    readonly partId: number | null;
    readonly verdict: string;
    readonly sentence: string;
  }): Promise<number>;
}
