import type { SetLabour, TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Sets the time worked and its price. */
export function setLabour(
  ports: Ports,
  actor: Actor,
  { minutes, minor, ...on }: OnTicket & SetLabour,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, () =>
    done({
      patch: { labourMinutes: minutes, labourMinor: minor },
      events: [{ kind: 'labour', data: { minutes, minor }, personId: actor.id }],
    }),
  );
}
