import { setTimeout as sleep } from 'node:timers/promises';
import { StoreContended, StoreOutage } from '../usecases';
import type { Db } from './db';
import { isOutage, isRetryable } from './retryable';

const MOST_TRIES = 5;

/**
 * Runs the whole of a transaction again, with all it reads, when the database asks for that; five times at most, then
 * {@link StoreContended}. A database that is away is {@link StoreOutage}, at once.
 */
export async function retried<T>(run: () => Promise<T>): Promise<T> {
  for (let tries = 1; ; tries++) {
    try {
      return await run();
    } catch (error) {
      if (isOutage(error)) throw new StoreOutage(error);
      if (!isRetryable(error)) throw error;
      if (tries >= MOST_TRIES) throw new StoreContended(error);
      // Waiting a different time than the other transaction keeps the two from meeting again.
      await sleep(20 + Math.random() * 180);
    }
  }
}

/** A statement outside of a transaction is one of its own, so it is run again by itself. */
export function eachRetried(client: Db): Db {
  const again =
    <A extends unknown[], T>(ask: (...args: A) => Promise<T>) =>
    (...args: A): Promise<T> =>
      retried(() => ask(...args));
  return {
    $queryRaw: again(client.$queryRaw.bind(client)),
    $executeRaw: again(client.$executeRaw.bind(client)),
  } as Db;
}
