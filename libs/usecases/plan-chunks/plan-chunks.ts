import { lookBackFrom } from '../judge-installs';
import type { Ports } from '../run';

/** Units one worker judges in one transaction: small enough that a lost one costs little and its locks are short. */
export const UNITS_A_CHUNK = 1_000;
/** Chunks of one recheck that are under way at once, so that a small recheck is not stuck behind a huge one. */
export const CHUNKS_AT_ONCE = 16;

/**
 * Cuts a planned recheck into chunks of so many units and orders the first bells. Doing it twice does it once.
 */
export async function planChunks(
  { store, clock }: Ports,
  { recheckId }: { readonly recheckId: number },
  unitsAChunk = UNITS_A_CHUNK,
): Promise<void> {
  await store.transaction(async (tx) => {
    const recheck = await tx.rechecks.takePlanned(recheckId);
    if (!recheck) return;
    const from = recheck.scope.ignoresLookBack ? null : await lookBackFrom(tx, clock.today());
    await tx.rechecks.plan(recheckId, recheck.scope, { unitsAChunk, lookBackFrom: from });
    await tx.rechecks.ring(recheckId, CHUNKS_AT_ONCE);
    await tx.rechecks.finishIfAllDone(recheckId);
    await tx.live.tell('recheck', recheckId);
  });
}
