import type { RecomputeScope } from '../../contracts';
import type { Actor } from '../actor';
import type { Tables } from '../ports/index';
import { startRecheck } from '../publish-bulletin/start-recheck';

/**
 * Orders the build days of the touched units to be worked out again and all they hold to be judged, however long ago
 * they left: a wrong date is wrong whenever it was read. Answers the recheck's id.
 */
export async function startRecompute(tx: Tables, actor: Actor, recompute: RecomputeScope): Promise<number> {
  const { revision } = await tx.rulebook.latest();
  const scope = { everything: false, areas: [], ignoresLookBack: true, recompute };
  await tx.live.tell('shop-data', null);
  return startRecheck(tx, { cause: 'evidence', sourceId: null, revision, scope, requestedBy: actor.id });
}
