import { CHUNKS_AT_ONCE } from '../plan-chunks/plan-chunks';
import type { ChunkName } from '../ports/recheck-store';
import type { Store } from '../ports/store';

/** How often the judging of a chunk is tried. */
export const MOST_TRIES = 3;

/**
 * Counts a failed try. A chunk that has used its tries is split, down to single units; a single unit that has used them is
 * set aside with its problem, and the rest go on.
 */
export async function noteFailure(store: Store, { recheckId, n }: ChunkName, error: unknown): Promise<void> {
  await store.transaction(async (tx) => {
    const problem = (error instanceof Error ? error.message : String(error)).slice(0, 1_000);
    const chunk = await tx.rechecks.chunkFailed(recheckId, n, problem);
    if (!chunk) return;
    if (chunk.tries >= MOST_TRIES) {
      if (chunk.fromUnit < chunk.toUnit) await tx.rechecks.splitChunk(chunk);
      else await tx.rechecks.setChunkAside(recheckId, n);
    }
    await tx.rechecks.ring(recheckId, CHUNKS_AT_ONCE);
    await tx.rechecks.finishIfAllDone(recheckId);
    await tx.live.tell('recheck', recheckId);
  });
}
