import type { ChangeTag, TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Changes what the tag says: complaint, bench, promised day. */
export function changeTag(
  ports: Ports,
  actor: Actor,
  { id, version, ...tag }: OnTicket & ChangeTag,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, async (_whole, tx) => {
    const { benchId } = tag;
    if (typeof benchId === 'number' && !(await tx.catalogue.benches()).some((bench) => bench.id === benchId)) {
      return refused('bad-input', `There is no bench ${benchId}.`, { field: 'benchId' });
    }
    return done({ patch: tag, events: [{ kind: 'tag', data: tag, personId: actor.id }] });
  });
}
