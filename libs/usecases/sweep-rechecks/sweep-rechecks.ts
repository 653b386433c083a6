import { judgeUnits } from '../judge-installs';
import { CHUNKS_AT_ONCE } from '../plan-chunks/plan-chunks';
import { StoreOutage } from '../ports/store';
import type { Ports } from '../run';
import { startDatedBulletins } from '../start-dated-bulletins/start-dated-bulletins';

const MOST_STALE_UNITS = 100;

/**
 * Brings back what was lost: rings again for chunks whose bell went missing, starts rechecks whose first bell did,
 * judges again units that were judged by papers already replaced, and begins the day's dated bulletins. Every few
 * seconds, by every worker; doing it twice does no harm.
 */
export async function sweepRechecks(ports: Ports): Promise<void> {
  const { store } = ports;
  await startDatedBulletins(ports);
  for (const { id, state } of await store.rechecks.unfinished()) {
    await store.transaction(async (tx) => {
      if (state === 'planned') return tx.outbox.add([{ topic: 'plan-chunks', payload: { recheckId: id } }]);
      await tx.rechecks.ring(id, CHUNKS_AT_ONCE);
      await tx.rechecks.finishIfAllDone(id);
    });
  }
  await judgeStale(ports, await store.rechecks.staleUnits(MOST_STALE_UNITS));
  await store.outbox.sweepRung();
}

/** All at once; where one of them cannot be judged, in halves, so that the others are. */
async function judgeStale(ports: Ports, unitIds: readonly number[]): Promise<void> {
  if (unitIds.length === 0) return;
  try {
    await ports.store.transaction((tx) => judgeUnits(tx, ports.clock, unitIds));
  } catch (error) {
    if (unitIds.length === 1 || error instanceof StoreOutage) throw error;
    const half = unitIds.length >> 1;
    await judgeStale(ports, unitIds.slice(0, half)).finally(() => judgeStale(ports, unitIds.slice(half)));
  }
}
