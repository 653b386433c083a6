import type { CallbackList, CallbackPage, CallbackView, NewAttempt } from '../../contracts';
import type { Day } from '../../day';

export interface CallbackQuery {
  readonly state: CallbackList;
  /** What is due is due on this day. */
  readonly today: Day;
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
  /** Those of these ids at the location (null is any), in the order of the list. */
  some(ids: readonly number[], locationId: number | null): Promise<readonly CallbackRecord[]>;
  /** The callbacks that were written to together. */
  ofBatch(batch: string, locationId: number | null): Promise<readonly CallbackRecord[]>;
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
  /** One attempt for each, `sent`, under one batch. Answers the ids that were still open or booked. */
  addLetters(
    ids: readonly number[],
    about: { readonly batch: string; readonly nextOn: string | null; readonly personId: number },
  ): Promise<readonly number[]>;
  tryAgainOn(ids: readonly number[], day: string | null): Promise<void>;
  /** An e-mail that went out is an attempt of the person who asked for it. */
  addSentMail(id: number, personId: number | null): Promise<void>;
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
