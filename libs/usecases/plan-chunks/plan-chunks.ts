import { lookBackFrom } from '../judge-installs';
import type { Ports } from '../run';

/**
 * Most units of a chunk. Reading them is quick; where many have to be written, the chunk is cut when it is judged. Half as
 * many would mean twice the short statements around the reading, and those cost as much as the judging.
 */
export const UNITS_A_CHUNK = 10_000;
/** Where build days are worked out again, everything that the units of a chunk hold is judged with its reasons. */
const UNITS_TO_RECOMPUTE = 1_000;
/** Fewer installs than this are looked up one by one, whatever the size of the shop. */
const WIDE_FROM = 20_000;
/** Chunks of one recheck that are under way at once, so that a small recheck is not stuck behind a huge one. */
export const CHUNKS_AT_ONCE = 16;

export interface PlanOptions {
  readonly unitsAChunk?: number;
  readonly wideFrom?: number;
  /** The caller judges the first chunk himself; no bell is ordered for it. */
  readonly keepFirst?: boolean;
}

/**
 * Cuts a planned recheck into chunks and orders the first bells; true when this call did. Doing it twice does it once.
 */
export async function planChunks(
  { store, clock }: Ports,
  { recheckId }: { readonly recheckId: number },
  { unitsAChunk = UNITS_A_CHUNK, keepFirst = false, wideFrom = WIDE_FROM }: PlanOptions = {},
): Promise<boolean> {
  return store.transaction(async (tx) => {
    const recheck = await tx.rechecks.takePlanned(recheckId);
    if (!recheck) return false;
    const most = recheck.scope.recompute ? Math.min(unitsAChunk, UNITS_TO_RECOMPUTE) : unitsAChunk;
    const from = recheck.scope.ignoresLookBack ? null : await lookBackFrom(tx, clock.today());
    const cut = { unitsAChunk: most, lookBackFrom: from, keepFirst, wideFrom };
    await tx.rechecks.plan(recheckId, recheck.scope, cut);
    await tx.rechecks.ring(recheckId, CHUNKS_AT_ONCE);
    await tx.rechecks.finishIfAllDone(recheckId);
    await tx.live.tell('recheck', recheckId);
    return true;
  });
}
