import type { TicketView } from '../../contracts';
import { mayCancel, mayHold, mayResume } from '../../ticket';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { judgeUnit } from '../judge-installs';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { closedHow } from '../view-ticket/index';

/** Puts a ticket on hold with a reason; null resumes it. */
export function holdTicket(
  ports: Ports,
  actor: Actor,
  { reason, ...on }: OnTicket & { reason: string | null },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, (whole) => {
    const standing = { onHold: whole.ticket.holdReason !== null, closed: closedHow(whole) };
    const notNow = reason === null ? mayResume(standing) : mayHold(standing);
    if (notNow) return refused('already-done', notNow.sentence);
    const event = reason === null ? { kind: 'resumed', data: {} } : { kind: 'held', data: { reason } };
    return done({ patch: { holdReason: reason }, events: [{ ...event, personId: actor.id }] });
  });
}

/** Ends a ticket without a hand-over, with a reason. It stays on record. */
export function cancelTicket(
  ports: Ports,
  actor: Actor,
  { reason, ...on }: OnTicket & { reason: string },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, (whole) => {
    const notNow = mayCancel({ onHold: whole.ticket.holdReason !== null, closed: closedHow(whole) });
    if (notNow) return refused('wrong-stage', notNow.sentence);
    return done({
      patch: { cancelReason: reason, closedAt: ports.clock.now() },
      events: [{ kind: 'cancelled', data: { reason }, personId: actor.id }],
      after: (tx) => judgeUnit(tx, ports.clock, whole.unit.id),
    });
  });
}
