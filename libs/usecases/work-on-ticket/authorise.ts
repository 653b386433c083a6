import type { Authorise, TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Records the owner's yes: who said it, how, and to which amount. A later yes takes the place of an earlier one. */
export function authorise(
  ports: Ports,
  actor: Actor,
  { id, version, ...yes }: OnTicket & Authorise,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, () =>
    done({
      patch: {
        authorisation: { ...yes, at: new Date(ports.clock.now()).toISOString(), recordedBy: actor.name },
      },
      events: [{ kind: 'authorised', data: yes, personId: actor.id }],
    }),
  );
}
