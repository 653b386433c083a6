/** A bell that was ordered in a transaction and has still to be rung. */
export interface Bell {
  readonly id: number;
  readonly topic: string;
  readonly payload: unknown;
}

export interface OutboxStore {
  add(bells: readonly { readonly topic: string; readonly payload: unknown }[]): Promise<void>;
  /** Takes bells that nobody holds and keeps them for `leaseSeconds`: who dies with a bell gives it back by the clock. */
  claim(limit: number, leaseSeconds: number): Promise<readonly Bell[]>;
  markDispatched(ids: readonly number[]): Promise<void>;
  /** Gives bells back at once, after a failure that is known. */
  giveBack(ids: readonly number[]): Promise<void>;
  /** Deletes bells rung more than an hour ago. */
  sweepRung(): Promise<number>;
}
