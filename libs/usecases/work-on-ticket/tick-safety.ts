import type { TicketView, TickSafety } from '../../contracts';
import { SAFETY_POINTS } from '../../ticket';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Keeps which safety points are ticked; the list given takes the place of the one before. */
export function tickSafety(
  ports: Ports,
  actor: Actor,
  { checks, ...on }: OnTicket & TickSafety,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, () => {
    const strange = checks.find((check) => !SAFETY_POINTS.some(({ id }) => id === check));
    if (strange !== undefined)
      return refused('bad-input', `There is no safety point '${strange}'.`, { field: 'checks' });
    const ticked = SAFETY_POINTS.map(({ id }) => id).filter((id) => checks.includes(id));
    return done({
      patch: { safetyChecks: ticked },
      events: [{ kind: 'safety', data: { ticked: ticked.length, of: SAFETY_POINTS.length }, personId: actor.id }],
    });
  });
}
