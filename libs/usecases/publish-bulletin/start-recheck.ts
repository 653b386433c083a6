import type { NewRecheck } from '../ports/recheck-store';
import type { Tables } from '../ports/store';

/** Records a recheck and orders the bell that starts it, in the transaction that made it needed. */
export async function startRecheck(tx: Tables, recheck: NewRecheck): Promise<number> {
  const id = await tx.rechecks.insert(recheck);
  await tx.outbox.add([{ topic: 'plan-chunks', payload: { recheckId: id } }]);
  await tx.live.tell('recheck', id);
  return id;
}
