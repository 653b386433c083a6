import type { Day } from '../day';

/** Where use cases take the time from, so that a test can hold it still and a dated bulletin can reach its day. */
export interface Clock {
  /** Milliseconds since 1970-01-01T00:00Z. */
  now(): number;
  /** The civil day at the shop. */
  today(): Day;
}
