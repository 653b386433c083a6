import type { RecheckScope } from '../../contracts';
import type { Actor } from '../actor';
import { done, type Outcome } from '../outcome';
import { startRecheck } from '../publish-bulletin/start-recheck';
import type { Ports } from '../run';

export const EVERYTHING: RecheckScope = { everything: true, areas: [], ignoresLookBack: true };

/** A manager's order: everything the shop has ever left in a unit is judged again. */
export async function orderRecheck(
  { store }: Ports,
  actor: Actor | null,
  scope: RecheckScope = EVERYTHING,
): Promise<Outcome<{ readonly recheckId: number }>> {
  return store.transaction(async (tx) => {
    const { revision } = await tx.rulebook.latest();
    const requestedBy = actor?.id ?? null;
    return done({
      recheckId: await startRecheck(tx, { cause: 'order', sourceId: null, revision, scope, requestedBy }),
    });
  });
}
