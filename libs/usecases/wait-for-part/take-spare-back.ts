import type { TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { picksChanged, shelfFollows } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/**
 * The owner hands back a spare of an earlier ticket while the unit is here: nobody is called for it any more, and what
 * came from the shelf lies there again.
 */
export function takeSpareBack(
  ports: Ports,
  actor: Actor,
  { pickId, ...on }: OnTicket & { pickId: number },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, async ({ ticket }, tx) => {
    const spare = (await tx.tickets.spares(ticket.unitId)).find((one) => one.pickId === pickId);
    if (!spare) return refused('not-found', `The owner has no spare ${pickId} of this unit.`);
    const { part, quantity, ticketId } = spare;
    return done({
      events: [{ kind: 'spare-back', data: { part: part.number, quantity }, personId: actor.id }],
      after: async (after) => {
        await after.tickets.setPickStates(ticketId, [{ id: pickId, state: 'returned' }]);
        await shelfFollows(after, { id: ticketId, locationId: ticket.locationId }, actor.id);
        await picksChanged(after, ports.clock, ticket, actor.id);
      },
    });
  });
}
