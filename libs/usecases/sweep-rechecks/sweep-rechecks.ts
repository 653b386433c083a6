import { judgeUnit } from '../judge-installs';
import { CHUNKS_AT_ONCE } from '../plan-chunks/plan-chunks';
import type { Ports } from '../run';
import { startDatedBulletins } from '../start-dated-bulletins/start-dated-bulletins';

const MOST_STALE_UNITS = 100;

/**
 * Brings back what was lost: rings again for chunks whose bell went missing, starts rechecks whose first bell did,
 * judges again units that were judged by papers already replaced, and begins the day's dated bulletins. Every few
 * seconds, by every worker; doing it twice does no harm.
 */
export async function sweepRechecks(ports: Ports): Promise<void> {
  const { store, clock } = ports;
  await startDatedBulletins(ports);
  for (const { id, state } of await store.rechecks.unfinished()) {
    await store.transaction(async (tx) => {
      if (state === 'planned') return tx.outbox.add([{ topic: 'plan-chunks', payload: { recheckId: id } }]);
      await tx.rechecks.ring(id, CHUNKS_AT_ONCE);
      await tx.rechecks.finishIfAllDone(id);
    });
  }
  for (const unitId of await store.rechecks.staleUnits(MOST_STALE_UNITS)) {
    await store.transaction((tx) => judgeUnit(tx, clock, unitId));
  }
  await store.outbox.sweepRung();
}
