/** How tries slow down: so many are free, then the wait doubles from the first to the longest, in milliseconds. */
export interface SlowingRule {
  readonly free: number;
  readonly firstMs: number;
  readonly longestMs: number;
}

/** Counts of tries, shared by every process. A key is a hash; an instant is epoch milliseconds. */
export interface TryStore {
  /** 0 when the try may be made now, and then it is counted; else how many milliseconds to wait. */
  slowed(key: string, now: number, rule: SlowingRule): Promise<number>;
  /** The same, where so many are allowed in each window of so many milliseconds. */
  windowed(key: string, now: number, rule: { readonly most: number; readonly windowMs: number }): Promise<number>;
  forget(key: string): Promise<void>;
  /** Forgets what was last tried before the instant. */
  forgetOlder(before: number): Promise<void>;
}

/** Browsers in which somebody has signed in before. */
export interface DeviceStore {
  /** One question whether or not anybody has that sign-in name. */
  isKnown(tokenHash: string, login: string): Promise<boolean>;
  /** Knows the browser for one more person, under a new token in place of the old. */
  renew(device: { oldHash: string | null; newHash: string; personId: number; at: number }): Promise<void>;
  forgetAll(personId: number): Promise<void>;
  removeOlder(before: number): Promise<void>;
}
