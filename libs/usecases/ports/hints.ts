/** What can be listened to: pages that are open, and bells ordered in the outbox. */
export type HintChannel = 'live' | 'bell';

/**
 * Hints that something was written. They come soon after the commit or, when the line to the database was cut, not at
 * all: whoever needs to be sure also looks by the clock.
 */
export interface Hints {
  /** Calls `tell` with each hint's text until the answer is called. */
  follow(channel: HintChannel, tell: (text: string) => void): () => void;
}
