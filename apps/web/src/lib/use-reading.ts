import { useSyncExternalStore } from 'react';
import { onReading, readingNow } from './say';

/** Draws whatever uses it again when days, numbers and units are to be written otherwise; what is typed in it stays. */
export function useReading(): void {
  useSyncExternalStore(onReading, readingNow);
}
