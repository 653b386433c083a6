import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** How long the oldest work has waited, in seconds; 0 where none waits. */
export interface Readiness {
  readonly oldestWorkSeconds: number;
}

/**
 * Whether the shop gets its work done: the database answers (it throws when it does not), has every migration of this
 * program, and no recheck or bell waits for longer than `mostSeconds`. Bells count too: one that is not rung means that
 * the queue is away, and the work it asks for is not begun.
 */
export async function viewReadiness({ store }: Pick<Ports, 'store'>, mostSeconds: number): Promise<Outcome<Readiness>> {
  const missing = await store.missingMigrations();
  if (missing > 0)
    return refused(
      'not-ready',
      `The database wants ${missing} migrations; run npm run migrate, or start the program anew.`,
    );
  const { oldestWorkSeconds, oldestBellSeconds } = await store.rechecks.queue();
  const oldest = Math.max(oldestWorkSeconds, oldestBellSeconds);
  if (oldest <= mostSeconds) return done({ oldestWorkSeconds: oldest });
  return refused(
    'not-ready',
    `The oldest work has waited for ${Math.round(oldest)} s, and ${mostSeconds} s is the most: no worker runs, or none gets on.`,
  );
}
