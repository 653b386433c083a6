import type { TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { picksChanged } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

const ALREADY = { fitted: 'is fitted in the unit', returned: 'was returned already', given: 'went out with the owner' };

/** Puts a picked part back on the shelf; only one that lies on the bench can go back. */
export function returnPart(
  ports: Ports,
  actor: Actor,
  { pickId, ...on }: OnTicket & { pickId: number },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, (whole) => {
    const pick = whole.picks.find((one) => one.id === pickId);
    if (!pick) return refused('not-found', `The ticket has no pick ${pickId}.`);
    const part = whole.partsById.get(pick.partId)!.number;
    if (pick.state !== 'picked') return refused('already-done', `${part} ${ALREADY[pick.state]}.`);
    return done({
      events: [{ kind: 'returned', data: { part, quantity: pick.quantity }, personId: actor.id }],
      after: async (tx) => {
        await tx.tickets.setPickStates(whole.ticket.id, [{ id: pickId, state: 'returned' }]);
        await picksChanged(tx, ports.clock, whole.ticket, actor.id);
      },
    });
  });
}
