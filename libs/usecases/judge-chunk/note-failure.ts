import { CHUNKS_AT_ONCE } from '../plan-chunks/plan-chunks';
import type { ChunkName, ChunkRow } from '../ports/recheck-store';
import type { Store, Tables } from '../ports/store';

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
    if (chunk.tries >= MOST_TRIES) await takeOut(tx, chunk);
    await goOn(tx, recheckId);
  });
}

/** The same for a chunk that was begun as often and never came to an end: it has used its tries. */
export async function noteNoEnd(store: Store, { recheckId, n }: ChunkName): Promise<void> {
  await store.transaction(async (tx) => {
    const problem = `judging was begun ${MOST_TRIES} times and never came to an end`;
    const chunk = await tx.rechecks.chunkFailed(recheckId, n, problem);
    if (chunk) await takeOut(tx, chunk);
    await goOn(tx, recheckId);
  });
}

async function takeOut(tx: Tables, chunk: ChunkRow): Promise<void> {
  if (chunk.fromUnit < chunk.toUnit) await tx.rechecks.splitChunk(chunk);
  else await tx.rechecks.setChunkAside(chunk.recheckId, chunk.n);
}

async function goOn(tx: Tables, recheckId: number): Promise<void> {
  await tx.rechecks.ring(recheckId, CHUNKS_AT_ONCE);
  await tx.rechecks.finishIfAllDone(recheckId);
  await tx.live.tell('recheck', recheckId);
}
