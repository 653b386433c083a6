import { setTimeout as pause } from 'node:timers/promises';
import type { ClientBase } from 'pg';

const LOOK_AGAIN_MS = 100;

/**
 * Takes a lock of the session, by asking again and again. Waiting for it inside the database would hold a snapshot, for
 * whose end an index that is made beside the work waits: each of the two for ever for the other.
 */
export async function takeSessionLock(client: ClientBase, key: number): Promise<void> {
  for (;;) {
    const { rows } = await client.query<{ mine: boolean }>('SELECT pg_try_advisory_lock($1) AS mine', [key]);
    if (rows[0]!.mine) return;
    await pause(LOOK_AGAIN_MS);
  }
}
