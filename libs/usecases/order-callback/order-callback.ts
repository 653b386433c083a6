import type { Actor } from '../actor';
import type { Clock } from '../clock';
import type { Tables } from '../ports/store';

/** A manager's order to call the owner about one place, from the review of a flag; answers the callback's id. */
export async function orderCallback(
  tx: Tables,
  _clock: Clock,
  actor: Actor,
  order: {
    readonly unitId: number;
    readonly flagId: number;
    readonly positionId: number;
    readonly place: number;
    readonly partId: number | null;
    readonly reason: string;
  },
): Promise<number> {
  const { unitId, positionId, place, partId, reason } = order;
  const flag = await tx.flags.byId(order.flagId);
  const sentence = `${actor.name} asks for a call: ${reason}`;
  const verdict = flag?.verdict ?? 'undecided';
  const id = await tx.callbacks.order({ unitId, positionId, place, partId, verdict, sentence });
  await tx.live.tell('callback', id);
  return id;
}
