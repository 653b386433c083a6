import type { ChangeTag, TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, type Outcome } from '../outcome';
import { holdLists, refuseOtherBench } from '../plan-benches/put-on-list';
import type { Ports } from '../run';

/** Changes what the tag says: complaint, bench, promised day. On another bench the ticket comes last. */
export function changeTag(
  ports: Ports,
  actor: Actor,
  { id, version, ...tag }: OnTicket & ChangeTag,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, async ({ ticket }, tx) => {
    const { benchId, ...patch } = tag;
    const event = { kind: 'tag', data: tag, personId: actor.id };
    if (benchId === undefined || benchId === (ticket.bench?.id ?? null)) return done({ patch, events: [event] });
    const elsewhere = await refuseOtherBench(tx, benchId, actor.locationId, 'benchId');
    if (elsewhere) return elsewhere;
    // The lists are held before the ticket's row, as everybody who moves tickets does.
    await holdLists(tx, [ticket.bench?.id ?? null, benchId]);
    return done({ patch, events: [event], after: async (after) => void (await after.benches.put(id, benchId, null)) });
  });
}
